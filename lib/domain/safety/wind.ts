/**
 * Wind by its effect on trees: Beaufort's numbers with the bands in mph of the National Weather Service (Tampa
 * Bay). No published speed was found at which hand pruning must stop: an orchard's limits are its house rules.
 */

import { mphOf } from './units'

/** The highest mph of each force; the bands are printed in whole numbers. */
const highestMph = [0, 3, 7, 12, 18, 24, 31, 38, 46, 54, 63, 73] as const

export type Force = 0 | 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10 | 11 | 12

/** Half a mile rounds up, to the stronger one. */
export function beaufortOf(kmPerH: number): Force {
  // Twice rounded, since 19 mph is kept as 30.58 km/h.
  const mph = Math.round(Number(mphOf(kmPerH).toFixed(2)))
  const force = highestMph.findIndex((highest) => mph <= highest)
  // The index of a band is its force.
  return (force === -1 ? 12 : force) as Force
}

/** A gust throws somebody off a ladder, not the mean. Without one the mean is all that is known. */
export function strongest(windKmh: number | null, gustKmh: number | null): number | null {
  if (windKmh === null) return gustKmh
  return gustKmh === null ? windKmh : Math.max(windKmh, gustKmh)
}
