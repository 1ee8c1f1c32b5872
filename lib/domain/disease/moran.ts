/**
 * Moran's I: whether trees beside each other are alike. Every join weighs the same. Moments under
 * normality and under randomisation by Cliff and Ord 1981, Spatial Processes, from memory; checked in the tests by
 * enumeration and against another library.
 */

import { countNeighbours, type Neighbours, neighboursAt } from './neighbours'

export type Moran = {
  i: number
  mean: number
  varianceNormality: number
  varianceRandomisation: number
}

/** Null where it is not defined: under four trees, no join, or all values alike. */
export function moranOf(neighbours: Neighbours, values: ArrayLike<number>): Moran | null {
  const n = neighbours.trees
  const s0 = neighbours.others.length
  const from = centred(values, n)
  const m2 = from.reduce((sum, z) => sum + z ** 2, 0) / n
  if (n < 4 || s0 === 0 || m2 < 1e-12) return null

  const m4 = from.reduce((sum, z) => sum + z ** 4, 0) / n
  const k = m4 / m2 ** 2
  let cross = 0
  let s2 = 0
  for (let at = 0; at < n; at++) {
    for (const other of neighboursAt(neighbours, at)) cross += (from[at] ?? 0) * (from[other] ?? 0)
    s2 += (2 * countNeighbours(neighbours, at)) ** 2
  }
  // Half the sum over ordered pairs of (w + w)^2, all weights being one.
  const s1 = 2 * s0
  const mean = -1 / (n - 1)
  const normal = (n ** 2 * s1 - n * s2 + 3 * s0 ** 2) / ((n ** 2 - 1) * s0 ** 2)
  const shuffled =
    (n * ((n ** 2 - 3 * n + 3) * s1 - n * s2 + 3 * s0 ** 2) -
      k * ((n ** 2 - n) * s1 - 2 * n * s2 + 6 * s0 ** 2)) /
    ((n - 1) * (n - 2) * (n - 3) * s0 ** 2)
  return {
    i: cross / (s0 * m2),
    mean,
    varianceNormality: normal - mean ** 2,
    varianceRandomisation: shuffled - mean ** 2,
  }
}

function centred(values: ArrayLike<number>, n: number): Float64Array {
  const from = Float64Array.from(values)
  const mean = from.reduce((sum, value) => sum + value, 0) / n
  return from.map((value) => value - mean)
}
