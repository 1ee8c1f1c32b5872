/**
 * Index of dispersion over quadrats of equally many trees: whether some have many sick trees and
 * others none, against what blind chance deals (binomial). Madden and Hughes 1995, Annual Review
 * of Phytopathology 33:529-564; C(alpha) by Tarone 1979, Biometrika 66:585-590. From memory.
 */

import { chiSquareTail } from './tails'

export type Dispersion = {
  quadrats: number
  treesEach: number
  share: number
  variance: number
  binomialVariance: number
  /** Over 1: sick trees gather in some quadrats. */
  index: number
  chiSquare: number
  pAtLeast: number
  /** C(alpha): large where the beta-binomial fits better than chance. */
  zAlpha: number
  /** How alike two trees of a quadrat are, from 0 to 1. */
  alike: number
}

/** Fewer quadrats say nothing. Common practice, no source. */
const fewestQuadrats = 5

/** `counts`: sick trees of each quadrat. Null where it is not defined. */
export function dispersionOf(counts: readonly number[], treesEach: number): Dispersion | null {
  const quadrats = counts.length
  if (quadrats < fewestQuadrats || treesEach < 2) return null
  const mean = counts.reduce((sum, count) => sum + count, 0) / quadrats
  const share = mean / treesEach
  if (share === 0 || share === 1) return null

  const squares = counts.reduce((sum, count) => sum + (count - mean) ** 2, 0)
  const variance = squares / (quadrats - 1)
  const binomialVariance = treesEach * share * (1 - share)
  const index = variance / binomialVariance
  const chiSquare = (quadrats - 1) * index
  return {
    quadrats,
    treesEach,
    share,
    variance,
    binomialVariance,
    index,
    chiSquare,
    pAtLeast: chiSquareTail(chiSquare, quadrats - 1),
    zAlpha:
      (squares / (share * (1 - share)) - quadrats * treesEach) /
      Math.sqrt(2 * quadrats * treesEach * (treesEach - 1)),
    // By moments it may leave its range where quadrats are few.
    alike: Math.min(1, Math.max(0, (index - 1) / (treesEach - 1))),
  }
}
