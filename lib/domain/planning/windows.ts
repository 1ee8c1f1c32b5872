/** When in the coming hours one may prune: each hour by the rules of today, and the best runs of them. */

import { type Day, lightForLaddersMs, verdictFor } from '../safety/prune-today'
import type { Light } from '../safety/sun'
import { noRainInH, noWeather, type Reading, weatherAfter } from '../safety/weather'

const hourMs = 3_600_000

export type ForecastHour = Omit<Reading, 'measuredAt' | 'canopy' | 'thunder' | 'rainInH'> & {
  fromMs: number
  rainMm: number | null
}

/** `ground`: from the ground only. `unknown`: too little is said of that hour. */
export type HourSays = 'go' | 'ground' | 'off' | 'unknown'
export type HourJudged = { fromMs: number; says: HourSays; because: string[] }

/** What is the same for all hours, and what is asked of each. */
export type Conditions = Pick<Day, 'rules' | 'exceptions'> & {
  monthAt: (ms: number) => number
  daysToFirstRainAt: (ms: number) => number
  sunAt: (ms: number) => Light | null
}

/** Hours in order. Of rain the forecast knows only as far as it goes, and after that none is counted. */
export function judgeHours(
  species: string,
  hours: readonly ForecastHour[],
  conditions: Conditions
): HourJudged[] {
  let weather = noWeather
  return hours.map((hour, at) => {
    const reading = readingOf(hour, hours.slice(at))
    weather = weatherAfter(weather, reading)
    const sun = conditions.sunAt(hour.fromMs)
    const day: Day = {
      ...conditions,
      weather,
      // No lead puts off another day.
      off: {},
      nowMs: hour.fromMs,
      month: conditions.monthAt(hour.fromMs),
      daysToFirstRain: conditions.daysToFirstRainAt(hour.fromMs),
      sun: null,
    }
    const { says, reasons } = verdictFor(species, day)
    const because = reasons.filter(({ weight }) => weight !== 'note').map(({ code }) => code)
    const codes: string[] = reasons.map(({ code }) => code)
    const light = lightIn(hour.fromMs, sun, conditions.rules)
    if (light === 'dark') return { fromMs: hour.fromMs, says: 'off', because: ['dark'] }
    if (says !== 'go') return { fromMs: hour.fromMs, says: 'off', because }
    if (hour.rainMm === null || (hour.gustKmh ?? hour.windKmh) === null) {
      return { fromMs: hour.fromMs, says: 'unknown', because: ['weather_unknown'] }
    }
    if (codes.includes('ladders_wind')) {
      return { fromMs: hour.fromMs, says: 'ground', because: ['ladders_wind'] }
    }
    return light === 'low'
      ? { fromMs: hour.fromMs, says: 'ground', because: ['ladders_light'] }
      : { fromMs: hour.fromMs, says: 'go', because: [] }
  })
}

function readingOf(
  { fromMs, rainMm, ...facts }: ForecastHour,
  from: readonly ForecastHour[]
): Reading {
  const next = from.find((hour) => (hour.rainMm ?? 0) > 0)
  const inH = next ? Math.round((next.fromMs - fromMs) / hourMs) : noRainInH
  return {
    ...facts,
    measuredAt: new Date(fromMs).toISOString(),
    canopy: (rainMm ?? 0) > 0 ? 'wet' : null,
    thunder: false,
    rainInH: Math.min(inH, noRainInH),
  }
}

/** An hour counts as light only when all of it is. */
function lightIn(fromMs: number, sun: Light | null, rules: Day['rules']): 'light' | 'low' | 'dark' {
  if (sun === null || sun.state === 'up_all_day') return 'light'
  if (sun.state === 'down_all_day') return 'dark'
  const toMs = fromMs + hourMs
  if (fromMs < sun.times.from || toMs > sun.times.to) return 'dark'
  const laddersUntilMs = lightForLaddersMs({ sun, rules })
  return laddersUntilMs !== null && toMs > laddersUntilMs ? 'low' : 'light'
}

export type Window = {
  fromMs: number
  toMs: number
  /** Of its hours, how many also allow ladders. */
  hours: number
  withLadders: number
}

/** Runs of hours in which one may prune, at least so long; the best first. */
export function windowsOf(judged: readonly HourJudged[], leastHours = 2): Window[] {
  const windows: Window[] = []
  for (const { fromMs, says } of judged) {
    if (says !== 'go' && says !== 'ground') continue
    const last = windows.at(-1)
    const ladders = says === 'go' ? 1 : 0
    if (last?.toMs === fromMs) {
      last.toMs += hourMs
      last.hours += 1
      last.withLadders += ladders
    } else windows.push({ fromMs, toMs: fromMs + hourMs, hours: 1, withLadders: ladders })
  }
  return windows.filter(({ hours }) => hours >= leastHours).toSorted(byWorth)
}

/** Hours with ladders count most, then hours, then the earlier one. */
function byWorth(a: Window, b: Window): number {
  return b.withLadders - a.withLadders || b.hours - a.hours || a.fromMs - b.fromMs
}
