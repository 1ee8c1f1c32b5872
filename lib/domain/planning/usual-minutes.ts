/** What a tree is expected to take before this orchard has times of its own. */

import type { SizeClass } from '../orchard/types'

/**
 * Minutes of one trained person at a tree. Medium: 567 hours for 1,000 mature trees, standard apple (New
 * Hampshire Agricultural Experiment Station, Bulletin 257, Woodworth and Potter 1931). The others are common
 * practice, no source: in training, a small bearing tree, and one that is higher than people reach.
 */
export const usualMinutes: Readonly<Record<SizeClass, number>> = {
  young: 8,
  small: 20,
  medium: (567 / 1000) * 60,
  large: 50,
}

/** Of a tree nobody measured: as the medium ones, which are what was published. */
export function usualMinutesOf(size: SizeClass | null): number {
  return usualMinutes[size ?? 'medium']
}

/** What newcomers take compared with trained people: one and a half to two. Common practice, no source. */
export const newcomersTake = 1.75

/** Hauling the cut wood takes about a third of pruning on top (the same bulletin). */
export const brushShare = 1 / 3
