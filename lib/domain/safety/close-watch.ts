/**
 * Who is watched closely in heat, after California's rules for outdoor work (Cal. Code Regs. Title 8 §3395 (g)): new
 * people for their first 14 days, and everybody in a heat wave. The 14 days are known from an older text of the
 * section, the heat wave's two numbers from memory: check them. A rule that an orchard takes on; local rules win.
 */

import { isHot } from './heat-duties'
import { fahrenheitOf, toTenth } from './units'

export const newForDays = 14
/** How many days before today its high is compared with. */
export const daysBefore = 5
const hotterByF = 10

/** °C; null: not known. */
export type Highs = {
  /** What today is forecast to reach, if its afternoon was brought in. */
  expected: number | null
  /** The highest of today that was written down, or brought in for any hour. */
  reached: number | null
  /** Of each of the five days before. */
  before: readonly (number | null)[]
}

export type HeatWave = 'yes' | 'no' | 'unknown'

/**
 * Any day forecast to reach 80 °F and at least 10 °F above the average high of the five days before. What is written
 * down already counts as well; a day of which only a cool morning was written down makes one sooner, not later.
 * Where a number is missing the answer is unknown, and never no.
 */
export function heatWaveOf(highs: Highs): HeatWave {
  const high = highOf(highs)
  const usual = usualHighOf(highs)
  const isJump =
    high !== null &&
    usual !== null &&
    toTenth(fahrenheitOf(high) - fahrenheitOf(usual)) >= hotterByF
  if (high !== null && isHot(high) && isJump) return 'yes'
  if (highs.expected === null || high === null) return 'unknown'
  if (!isHot(high)) return 'no'
  return usual === null ? 'unknown' : 'no'
}

export function highOf({ expected, reached }: Highs): number | null {
  const known = [expected, reached].filter((high) => high !== null)
  return known.length === 0 ? null : Math.max(...known)
}

export function usualHighOf({ before }: Highs): number | null {
  const known = before.filter((high) => high !== null)
  if (known.length < daysBefore) return null
  return known.reduce((sum, high) => sum + high, 0) / known.length
}

/** The hours in which a day is usually hottest: without one of them a forecast does not say how hot it gets. */
const afternoon = { from: '14:00', to: '17:59' }

export type HourOfDay = { day: string; clock: string; temperatureC: number | null }

/** `written`: the highest that leads wrote down, by day. `hours`: as they were brought in, on the orchard's clock. */
export function highsOf(
  today: string,
  written: readonly (readonly [string, number])[],
  hours: readonly HourOfDay[]
): Highs {
  const highs = new Map<string, number>()
  const reach = (day: string, c: number) => highs.set(day, Math.max(c, highs.get(day) ?? c))
  for (const [day, c] of written) reach(day, c)
  for (const { day, temperatureC } of hours) if (temperatureC !== null) reach(day, temperatureC)

  const reached = highs.get(today) ?? null
  const isForecast = hours.some(
    ({ day, clock, temperatureC }) =>
      day === today && temperatureC !== null && clock >= afternoon.from && clock <= afternoon.to
  )
  return {
    expected: isForecast ? reached : null,
    reached,
    before: daysUpTo(today).map((day) => highs.get(day) ?? null),
  }
}

const dayMs = 86_400_000

function daysUpTo(today: string): string[] {
  return Array.from({ length: daysBefore }, (_, at) =>
    new Date(Date.parse(today) - (at + 1) * dayMs).toISOString().slice(0, 10)
  )
}

export type NewPerson = { id: string; day: number }

/** Who is in their first days, newest first. `worked`: on how many days before today; nobody in it: none. */
export function newPeople(
  here: readonly string[],
  worked: Readonly<Record<string, number>>
): NewPerson[] {
  return here
    .map((id) => ({ id, day: (worked[id] ?? 0) + 1 }))
    .filter(({ day }) => day <= newForDays)
    .toSorted((a, b) => a.day - b.day)
}
