'use client'

import { useFormat } from '../layout/use-format'
import { type LastHeard, longerThanAnyShift } from './crew-order'
import { useLeadWords } from './use-lead-words'

/** How long ago a phone was heard, in words. */
export function useHeardWords(): (heard: LastHeard) => string {
  const { people: text } = useLeadWords()
  const format = useFormat()
  return (heard) => {
    if (heard === 'no_phone') return text.noPhone
    if (heard < 2) return text.heardNow
    return heard < longerThanAnyShift ? text.heard(format.duration(heard)) : text.notHeard
  }
}
