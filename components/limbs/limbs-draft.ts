/** The main limbs of a tree as they are noted on this phone. */

import { inCircle } from '@/lib/domain/pruning/circular'
import { type Condition, type MainLimb, mostLimbs } from '@/lib/domain/pruning/limb-balance'
import { measuredOrNull, measures, type Units } from '../tree/measure'

export type NotedLimb = { bearingDeg: number; condition: Condition; thick: string; angle: string }
export type LimbsDraft = { limbs: readonly NotedLimb[]; keep: number }

/** Three to four main limbs: a UC Master Gardener column (San Joaquin). */
export const noLimbs: LimbsDraft = { limbs: [], keep: 4 }
export const keepFrom = [2, 3, 4, 5, 6] as const

/** As exact as a finger or a needle is. */
const gradeDeg = 5

/** Full: nothing is added. */
export function withLimb({ limbs, keep }: LimbsDraft, bearingDeg: number): LimbsDraft {
  if (limbs.length >= mostLimbs) return { limbs, keep }
  const limb = { bearingDeg: graded(bearingDeg), condition: 'sound', thick: '', angle: '' } as const
  return { limbs: [...limbs, limb], keep }
}

export function graded(bearingDeg: number): number {
  return inCircle(Math.round(bearingDeg / gradeDeg) * gradeDeg)
}

export function limbsOf({ limbs }: LimbsDraft, units: Units): MainLimb[] {
  return limbs.map(({ bearingDeg, condition, thick, angle }) => ({
    bearingDeg,
    condition,
    thickCm: measuredOrNull(measures.limbCm, thick, units),
    angleDeg: measuredOrNull(measures.angle, angle, units),
  }))
}
