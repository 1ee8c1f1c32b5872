/**
 * Join counts: of all pairs of trees beside each other, how many are both sick, one sick, none
 * sick, and what chance would give if the same number of sick trees were dealt out blindly
 * (non-free sampling). Cliff and Ord 1981, Spatial Processes; the moments from memory, checked by
 * enumeration in the tests.
 */

import { countJoinPairs, countJoins, type Neighbours } from './neighbours'

export type JoinCounts = { bothSick: number; oneSick: number; noneSick: number }

/** 1 for a sick tree, 0 for every other. */
export type Sick = Uint8Array

export function joinCounts(neighbours: Neighbours, sick: Sick): JoinCounts {
  const { starts, others } = neighbours
  let bothSick = 0
  let oneSick = 0
  for (let at = 0; at < neighbours.trees; at++) {
    if (!sick[at]) continue
    for (let place = starts[at] ?? 0; place < (starts[at + 1] ?? 0); place++) {
      if (sick[others[place] ?? 0]) bothSick++
      else oneSick++
    }
  }
  bothSick /= 2
  return { bothSick, oneSick, noneSick: countJoins(neighbours) - bothSick - oneSick }
}

export type Moments = { mean: number; variance: number }

/** What each count comes to, if `sick` of the trees are sick and chance alone says which. */
export function joinMoments(
  neighbours: Neighbours,
  sick: number
): Record<keyof JoinCounts, Moments> {
  const trees = neighbours.trees
  const healthy = trees - sick
  const joins = countJoins(neighbours)
  const sharing = 2 * countJoinPairs(neighbours)
  const apart = joins * (joins - 1) - sharing
  const alike = (own: number): Moments => {
    const mean = (joins * falling(own, 2)) / falling(trees, 2)
    const square =
      mean +
      (sharing * falling(own, 3)) / falling(trees, 3) +
      (apart * falling(own, 4)) / falling(trees, 4)
    return { mean, variance: square - mean * mean }
  }
  const mean = (2 * joins * sick * healthy) / falling(trees, 2)
  const square =
    mean +
    (sharing * sick * healthy * (trees - 2)) / falling(trees, 3) +
    (4 * apart * falling(sick, 2) * falling(healthy, 2)) / falling(trees, 4)
  return {
    bothSick: alike(sick),
    oneSick: { mean, variance: square - mean * mean },
    noneSick: alike(healthy),
  }
}

/** Null where the count cannot vary at all. */
export function zOf(count: number, { mean, variance }: Moments): number | null {
  return variance > 1e-12 ? (count - mean) / Math.sqrt(variance) : null
}

/** n (n - 1) … of so many factors. */
function falling(n: number, factors: number): number {
  let product = 1
  for (let factor = 0; factor < factors; factor++) product *= n - factor
  return product
}
