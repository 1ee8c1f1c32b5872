/** Days and times on the orchard's clock, as the forms of a browser write them. */

import type { DateOnly, Instant } from '@/lib/events/state'

/** When the orchard's clock shows this day and time. Null: not a day, or not a time. */
export function instantAt(day: DateOnly, time: string, timeZone: string): Instant | null {
  const wanted = Date.parse(`${day}T${time}:00Z`)
  if (Number.isNaN(wanted)) return null
  // The offset there may be another one on the two sides of a change of the clocks, so it is asked twice.
  const near = wanted - offsetMs(wanted, timeZone)
  return new Date(wanted - offsetMs(near, timeZone)).toISOString()
}

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

/** What the orchard's clock shows then, as a form writes it. */
export function clockIn(timeZone: string, at: Instant): string {
  const { hour, minute } = partsIn(timeZone, new Date(at))
  return `${hour}:${minute}`
}

function dayAfter(day: DateOnly): DateOnly {
  const date = new Date(`${day}T12:00:00Z`)
  return Number.isNaN(date.getTime())
    ? day
    : new Date(date.getTime() + 24 * 3_600_000).toISOString().slice(0, 10)
}

/** How far that clock is ahead of UTC. */
function offsetMs(at: number, timeZone: string): number {
  const { year, month, day, hour, minute, second } = partsIn(timeZone, new Date(at))
  const shown = Date.parse(`${year}-${month}-${day}T${hour}:${minute}:${second}Z`)
  return shown - Math.floor(at / 1000) * 1000
}

type Parts = Record<'year' | 'month' | 'day' | 'hour' | 'minute' | 'second', string>

function partsIn(timeZone: string, at: Date): Parts {
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone,
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    second: '2-digit',
  })
  // The options above ask for exactly these.
  return Object.fromEntries(
    format.formatToParts(at).map(({ type, value }) => [type, value])
  ) as Parts
}
