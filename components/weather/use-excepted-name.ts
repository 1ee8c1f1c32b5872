'use client'

import { darkness } from '@/lib/events/dark'
import { speciesWords } from '@/lib/text/species'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'

/** What a lead excepts: a species, or work in the dark. */
export function useExceptedName(): (what: string) => string {
  const words = useWords()
  const { weather: text } = useLeadWords()
  return (what) => (what === darkness ? text.workInTheDark : speciesWords(words, what).many)
}
