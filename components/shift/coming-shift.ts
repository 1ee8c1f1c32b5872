/** The round that is worked in, and the shift that comes next. */

import type { DateOnly, Round, Shift } from '@/lib/events/state'
import type { View } from '@/lib/hooks'

export function workRoundOf({ state }: Pick<View, 'state'>): (Round & { id: string }) | null {
  const id = state?.workRoundId ?? null
  const round = id === null ? undefined : state?.rounds[id]
  return round && id !== null ? { ...round, id } : null
}

/** Of those that are planned the earliest; a day that went by without opening, rained out, is over. */
export function nextShiftOf(
  { state }: Pick<View, 'state'>,
  today: DateOnly
): (Shift & { id: string }) | null {
  const [next] = Object.entries(state?.shifts ?? {})
    .filter(([, shift]) => shift.state === 'scheduled' && shift.date >= today)
    .toSorted(([, a], [, b]) => (a.startsAt < b.startsAt ? -1 : 1))
  return next ? { ...next[1], id: next[0] } : null
}
