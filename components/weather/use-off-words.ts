'use client'

import { speciesWords } from '@/lib/text/species'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { type Off, offByReason } from './off-by-reason'

/** What is off and what a lead lets be pruned all the same, each in a sentence at most. */
export function useOffWords() {
  const words = useWords()
  const { list } = useFormat()
  const { conditions: text, things } = words
  const nameOf = (what: string) =>
    what === 'ladders' ? text.ladders : speciesWords(words, what).many
  const reasonOf = (why: string) => things.offReason[why as keyof typeof things.offReason] ?? why
  return {
    offWords: (offs: readonly Off[]) => {
      const groups = offByReason(offs).map(({ why, whats }) =>
        text.offBecause(list(whats.map(nameOf)), reasonOf(why))
      )
      return groups.length > 0 ? [text.off(list(groups))] : []
    },
    exceptedWords: (whats: readonly string[]) =>
      whats.length > 0 ? [text.excepted(list(whats.map(nameOf)))] : [],
  }
}
