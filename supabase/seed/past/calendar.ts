/** The last winter that is wholly over, whenever the demo is looked at. */

import type { DateOnly } from '@/lib/events/state'
import { instantAt } from '@/lib/util/clock-in'

/** The year in which it began. */
export function lastWinter(today: DateOnly): number {
  const [year = 0, month = 0] = today.split('-').map(Number)
  return month <= 3 ? year - 2 : year - 1
}

/** So many weeks after the first Saturday on or after that day. */
export function saturdayAfter(day: DateOnly, weeks: number): DateOnly {
  const untilSaturday = (13 - new Date(`${day}T12:00:00Z`).getUTCDay()) % 7
  return daysAfter(day, untilSaturday + 7 * weeks)
}

export function daysAfter(day: DateOnly, days: number): DateOnly {
  return new Date(Date.parse(`${day}T12:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10)
}

/** "09:40" of that day there. */
export function timeOn(timeZone: string): (day: DateOnly, clock: string) => Date {
  return (day, clock) => new Date(instantAt(day, clock, timeZone) ?? Number.NaN)
}
