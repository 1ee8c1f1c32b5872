'use client'

import { useId } from 'react'

import { useDraft, useSend } from '@/lib/hooks'
import type { Language } from '@/lib/text/language'
import { useLanguage, useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { Segmented } from '../ui/Segmented'
import { Why } from '../ui/Why'
import { AskedNote } from './AskedNote'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

type SignForProps = {
  open: boolean
  id: string
  name: string
  version: number
  onClose: () => void
}

type Signing = { language: Language; how: 'heard' | 'read_to_me' | null }

/** Signs the briefing for somebody without a phone: in which language, and how it came to them. */
export function SignFor({ open, id, name, version, onClose }: SignForProps) {
  const { common } = useWords()
  const { shift: text } = useLeadWords()
  const send = useSend()
  const whyId = useId()
  const draft = useDraft<Signing>(`sign|${id}|${version}`, { language: useLanguage(), how: null })
  const { asked, ask } = useAsk()
  const { language, how } = draft.value

  const sign = () => {
    if (how === null) return
    void ask(send('sign_briefing', { version, language, how }, { personId: id }), () => {
      void draft.drop()
      onClose()
    })
  }
  return (
    <Dialog open={open} title={text.signFor(name)} onClose={onClose} closeLabel={common.close}>
      <p>{text.signForNote(name)}</p>
      <Segmented
        label={text.inLanguage}
        options={[
          { value: 'en', label: common.english, lang: 'en' },
          { value: 'es', label: common.spanish, lang: 'es' },
        ]}
        value={language}
        onChange={(next) => draft.write({ language: next, how })}
      />
      <Segmented
        label={text.chooseHow}
        options={[
          { value: 'heard', label: text.theyHeard },
          { value: 'read_to_me', label: text.readToThem },
        ]}
        value={how}
        onChange={(next) => draft.write({ language, how: next })}
      />
      <AskedNote asked={asked} whose={name} />
      {how === null && <Why id={whyId}>{text.chooseHow}</Why>}
      {how === null ? (
        <Button kind="call" state="off" describedBy={whyId}>
          {text.signFor(name)}
        </Button>
      ) : (
        <Button kind="call" onPress={sign}>
          {text.signFor(name)}
        </Button>
      )}
    </Dialog>
  )
}
