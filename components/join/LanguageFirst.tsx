'use client'

import { useRouter } from 'next/navigation'

import { chooseLanguage } from '../layout/device-choices'
import { LanguageChoice } from '../layout/LanguageChoice'
import { useDoorWords, useLanguage } from '../layout/Words'

/** The language before anything else: the rest follows in it. */
export function LanguageFirst() {
  const router = useRouter()
  const language = useLanguage()
  const { common } = useDoorWords()
  return (
    <LanguageChoice
      value={language}
      text={common}
      onChange={(wanted) => {
        chooseLanguage(wanted)
        router.refresh()
      }}
    />
  )
}
