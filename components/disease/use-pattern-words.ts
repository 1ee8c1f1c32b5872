'use client'

import type { Survey } from '@/lib/domain/disease/survey'
import { useLeadWords } from '../crew/use-lead-words'

/** Under so many a tree more or less changes the sentence. */
const fewSick = 5

/** The one plain sentence, and the caution that belongs to it. */
export function usePatternWords(): (survey: Survey) => {
  headline: string
  caution: string | null
} {
  const { disease } = useLeadWords()
  const { headline } = disease
  return ({ pattern }) => {
    if (pattern.state === 'not_defined') {
      const { why } = pattern
      const isNone = why === 'no_trees' || why === 'none_sick'
      return { headline: isNone ? headline.none : headline[why], caution: null }
    }
    const { verdict, sick, ratio } = pattern
    const caution = sick < fewSick && verdict !== 'too_few' ? disease.fewSick : null
    switch (verdict) {
      case 'clustered':
        return { headline: headline.clustered(ratio), caution }
      case 'too_few':
        return { headline: headline.too_few(sick), caution }
      case 'spread_out':
      case 'chance':
        return { headline: headline[verdict], caution }
    }
  }
}
