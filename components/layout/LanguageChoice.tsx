import type { Language } from '@/lib/text/language'
import type { DoorMessages } from '@/lib/text/messages'
import { Segmented } from '../ui/Segmented'

type LanguageChoiceProps = {
  value: Language
  onChange: (language: Language) => void
  text: DoorMessages['common']
}

/** English or Spanish, each in its own words. */
export function LanguageChoice({ value, onChange, text }: LanguageChoiceProps) {
  return (
    <Segmented
      label={text.language}
      options={[
        { value: 'en', label: text.english, lang: 'en' },
        { value: 'es', label: text.spanish, lang: 'es' },
      ]}
      value={value}
      onChange={onChange}
    />
  )
}
