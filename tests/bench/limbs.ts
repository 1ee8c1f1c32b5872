/** Choosing which of twelve main limbs to keep, every choice looked at: at each press it must not be felt. */

import {
  chooseLimbs,
  conditions,
  type MainLimb,
  mostLimbs,
} from '../../lib/domain/pruning/limb-balance'
import { atMost, type Figure, ms, share } from './figures'

const mostMs = 50
const rounds = 50

export function benchLimbs(): Figure[] {
  const times = Array.from({ length: rounds }, (_, round) => {
    const limbs = twelve(round)
    const from = performance.now()
    chooseLimbs(limbs, mostLimbs / 2)
    return performance.now() - from
  })
  return [
    atMost('6 of 12 main limbs, 924 choices, median', share(times, 0.5), mostMs, ms),
    atMost('6 of 12 main limbs, 95 of 100', share(times, 0.95), mostMs, ms),
  ]
}

/** The same in every run. */
function twelve(round: number): MainLimb[] {
  return Array.from({ length: mostLimbs }, (_, at) => ({
    bearingDeg: (at * 137 + round * 29) % 360,
    condition: conditions[(at + round) % conditions.length] ?? 'sound',
    thickCm: 4 + ((at * 7 + round) % 9),
    angleDeg: 20 + ((at * 31 + round * 3) % 60),
  }))
}
