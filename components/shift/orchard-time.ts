/** The hours of a shift as a form has them: a day and two times on the orchard's clock. */

import type { DateOnly, Instant } from '@/lib/events/state'
import { instantAt } from '@/lib/util/clock-in'

/** From and to of a shift; one that ends before it begins ends on the next day. */
export function hoursOf(
  { day, from, to }: { day: DateOnly; from: string; to: string },
  timeZone: string
): { startsAt: Instant; endsAt: Instant } | null {
  const startsAt = instantAt(day, from, timeZone)
  const endsAt = instantAt(to > from ? day : dayAfter(day), to, timeZone)
  return startsAt && endsAt && from !== to ? { startsAt, endsAt } : null
}

/** A working day is shorter; one that is longer is a slip of the finger. Common practice, no source. */
const longestShiftMs = 14 * 3_600_000

export function isTooLong({ startsAt, endsAt }: { startsAt: Instant; endsAt: Instant }): boolean {
  return Date.parse(endsAt) - Date.parse(startsAt) > longestShiftMs
}

function dayAfter(day: DateOnly): DateOnly {
  const date = new Date(`${day}T12:00:00Z`)
  return Number.isNaN(date.getTime())
    ? day
    : new Date(date.getTime() + 24 * 3_600_000).toISOString().slice(0, 10)
}
