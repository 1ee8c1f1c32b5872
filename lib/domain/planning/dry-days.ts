/** How many days were dry, counted from hours that somebody brought in. */

import type { HourlyRow } from '../safety/hourly-csv'
import type { Month } from '../safety/species-season'

export type DryDays = { days: number; dry: number }

/** Less is no measurable rain: a hundredth of an inch, as weather services in the United States count. From memory. */
const measurableMm = 0.25
/** While people prune. */
const [fromHour, toHour] = [6, 18]

/** By month; hours at night and hours without a figure say nothing. */
export function dryDaysIn(rows: readonly HourlyRow[]): ReadonlyMap<Month, DryDays> {
  const rainOf = new Map<string, number>()
  for (const { day, time, rainMm } of rows) {
    const hour = Number(time.slice(0, 2))
    if (rainMm === null || hour < fromHour || hour >= toHour) continue
    rainOf.set(day, (rainOf.get(day) ?? 0) + rainMm)
  }
  const months = new Map<Month, DryDays>()
  for (const [day, rainMm] of rainOf) {
    const month = Number(day.slice(5, 7))
    const { days, dry } = months.get(month) ?? { days: 0, dry: 0 }
    months.set(month, { days: days + 1, dry: dry + (rainMm < measurableMm ? 1 : 0) })
  }
  return months
}

/** Fewer days of a month say little about it. */
const leastDays = 5

/** The share of a month's days that are dry: as counted, else as somebody supposes. */
export function dryShareOf(
  counted: ReadonlyMap<Month, DryDays>,
  supposed: number
): (month: Month) => number {
  return (month) => {
    const own = counted.get(month)
    return own && own.days >= leastDays ? own.dry / own.days : supposed
  }
}
