'use client'

import type { Shift } from '@/lib/events/state'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'

/** "Saturday 28 February, 9:00 to 13:00" */
export function useHoursWords(): (shift: Shift) => string {
  const { shift: text } = useLeadWords()
  const format = useFormat()
  return ({ startsAt, endsAt }) => {
    const [from, to] = [new Date(startsAt), new Date(endsAt)]
    const day = `${format.day(from)}, ${format.date(from)}`
    return text.planned(day, format.clock(from), format.clock(to))
  }
}
