/** The round that is worked in, and the shift that comes next. */

import type { DateOnly, Round, Shift } from '@/lib/events/state'
import type { View } from '@/lib/hooks'

export function workRoundOf({ state }: Pick<View, 'state'>): (Round & { id: string }) | null {
  const id = state?.workRoundId ?? null
  const round = id === null ? undefined : state?.rounds[id]
  return round && id !== null ? { ...round, id } : null
}

/** Planned and not opened, the earliest first. */
export function plannedShifts({ state }: Pick<View, 'state'>): (Shift & { id: string })[] {
  return Object.entries(state?.shifts ?? {})
    .filter(([, shift]) => shift.state === 'scheduled')
    .toSorted(([, a], [, b]) => (a.startsAt < b.startsAt ? -1 : 1))
    .map(([id, shift]) => ({ ...shift, id }))
}

/** Of those that are planned the earliest; a day that went by without opening, rained out, is over. */
export function nextShiftOf(
  view: Pick<View, 'state'>,
  today: DateOnly
): (Shift & { id: string }) | null {
  return plannedShifts(view).find(({ date }) => date >= today) ?? null
}
