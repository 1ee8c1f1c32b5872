'use client'

import { headCount, openShiftOf, useSelect } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useLeadWords } from './use-lead-words'

/** "Saturday shift", "9:00 to 13:00, 14 people". */
export function useShiftLine(): { title: string; sub: string } {
  const { common } = useWords()
  const { leadMap, shift } = useLeadWords()
  const format = useFormat()
  const orchard = useSelect((view) => view.state?.orchard.name ?? '')
  const open = useSelect(openShiftOf)
  const here = useSelect(headCount)
  if (!open) return { title: orchard, sub: leadMap.noShift }

  const [from, to] = [open.startsAt, open.endsAt].map((at) => format.clock(new Date(at)))
  return {
    title: shift.named(format.day(new Date(open.startsAt))),
    sub: leadMap.hoursAndPeople(from ?? '', to ?? '', common.people(here)),
  }
}
