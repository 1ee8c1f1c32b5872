/**
 * What heat asks of whoever leads, from California's rules for outdoor work (Cal. Code Regs. Title 8 §3395).
 * Volunteers are not always employees: here these are rules that an orchard takes on. Local rules win.
 */

import { fahrenheitOf, toTenth } from './units'

/** The rule says "exceeds 80", the state's page "reach or exceed": the earlier one. */
const shadeFromF = 80
const highHeatFromF = 95
/** One who watches, to so many. */
const mostWatched = 20

const everyDay = ['water', 'rest_on_need'] as const
const inHeat = [...everyDay, 'shade'] as const
/** All of them, as high heat asks. */
const heatDutyCodes = [
  ...inHeat,
  'contact',
  'watch',
  'who_calls',
  'water_reminders',
  'meeting',
  'rests',
] as const
export type HeatDuty = (typeof heatDutyCodes)[number]

/** An unknown temperature asks what every day asks. */
export function heatDuties(temperatureC: number | null): readonly HeatDuty[] {
  if (temperatureC === null || !isHot(temperatureC)) return everyDay
  return isHighHeat(temperatureC) ? heatDutyCodes : inHeat
}

/** Shade is up, and there is room in it for everybody who rests. */
export function isHot(temperatureC: number): boolean {
  return toTenth(fahrenheitOf(temperatureC)) >= shadeFromF
}

export function isHighHeat(temperatureC: number): boolean {
  return toTenth(fahrenheitOf(temperatureC)) >= highHeatFromF
}

const litresPerQuart = 0.946352946

/** A quart for each person and hour, fresh and cool. */
export function waterQuarts(people: number, hours: number): number {
  return Math.ceil(people * hours)
}

export function litresOf(quarts: number): number {
  return Math.ceil(quarts * litresPerQuart)
}

/** In high heat somebody looks at everybody: one to 20 or fewer, or everybody has a buddy. */
export function isWatched(
  people: number,
  { watching, buddies }: { watching: number; buddies: boolean }
) {
  return buddies || people <= watching * mostWatched
}

const minuteMs = 60_000
/** Agriculture, in high heat: at least ten minutes net, after every two hours. */
const restMinutes = 10
const restEveryMs = 120 * minuteMs

/** A shorter break is good, and is not the rest that is due. As private.rested_at. */
export function isRest(fromMs: number, toMs: number): boolean {
  return toMs - fromMs >= restMinutes * minuteMs
}

/** When somebody who has worked since then rests next, in high heat. */
export function restDueMs(workedSinceMs: number): number {
  return workedSinceMs + restEveryMs
}

/** The rests of a shift in high heat that nobody has begun. One at its very end is due if work goes on. */
export function restsOf(fromMs: number, toMs: number): number[] {
  const count = Math.floor((toMs - fromMs) / restEveryMs)
  return Array.from(
    { length: Math.max(0, count) },
    (_, index) => fromMs + (index + 1) * restEveryMs
  )
}

/** NIOSH 2017-126: a cup every 15 to 20 minutes, and never over 48 oz in an hour. */
export const cup = { everyMinutes: 20, atLeastEveryMinutes: 15, ounces: 8, mostOuncesAnHour: 48 }

export function ouncesAnHour(everyMinutes: number): number {
  return (60 / everyMinutes) * cup.ounces
}

/** When the next cup is due, counted from when the shift began. */
export function cupDueMs(shiftFromMs: number, nowMs: number): number {
  const everyMs = cup.everyMinutes * minuteMs
  const passed = Math.max(0, nowMs - shiftFromMs)
  return shiftFromMs + (Math.floor(passed / everyMs) + 1) * everyMs
}
