/**
 * Which main limbs to keep: those that stand most evenly around the trunk, worse ones counting less. Seen from
 * above an open-centre tree is a bowl whose limbs stand like the spokes of a wheel. Common practice, no source;
 * a lead decides, and no winter takes more than a few.
 */

import { gapsOf } from './circular'

export const conditions = ['sound', 'worn', 'poor'] as const
export type Condition = (typeof conditions)[number]

export type MainLimb = {
  bearingDeg: number
  condition: Condition
  thickCm: number | null
  /** Out of the upright: 0 stands, 90 lies. */
  angleDeg: number | null
}

/** Every choice is looked at, which more limbs would make long. No fruit tree has so many. */
export const mostLimbs = 12

export type Choice = {
  /** Places in the list, in its order. */
  kept: number[]
  smallestGapDeg: number
  /** The smallest gap times what the kept limbs are worth on average. */
  score: number
}

/** Null: there are not so many, or too many to look at. */
export function chooseLimbs(limbs: readonly MainLimb[], keep: number): Choice | null {
  if (keep < 1 || keep > limbs.length || limbs.length > mostLimbs) return null
  const order = limbs.map((_, at) => at)
  let best: Choice | null = null
  for (const kept of subsetsOf(order, keep)) {
    const choice = choiceOf(limbs, kept)
    if (best === null || isBetter(limbs, choice, best)) best = choice
  }
  return best
}

/** In the order of the list, so that of equals the first is found first. */
function* subsetsOf(order: readonly number[], count: number): Generator<number[]> {
  if (count === 0) {
    yield []
    return
  }
  for (let at = 0; at + count <= order.length; at++)
    for (const rest of subsetsOf(order.slice(at + 1), count - 1)) yield [order[at] ?? 0, ...rest]
}

function choiceOf(limbs: readonly MainLimb[], kept: number[]): Choice {
  const those = limbsAt(limbs, kept)
  const smallestGapDeg = Math.min(...gapsOf(those.map(({ bearingDeg }) => bearingDeg)))
  const worth = those.reduce((sum, limb) => sum + worthOf(limb), 0) / those.length
  return { kept, smallestGapDeg, score: smallestGapDeg * worth }
}

/** Of equals the one with more wood already grown. */
function isBetter(limbs: readonly MainLimb[], one: Choice, other: Choice): boolean {
  if (Math.abs(one.score - other.score) > tiny) return one.score > other.score
  return woodOf(limbsAt(limbs, one.kept)) > woodOf(limbsAt(limbs, other.kept)) + tiny
}

function limbsAt(limbs: readonly MainLimb[], places: readonly number[]): MainLimb[] {
  return places.flatMap((place) => limbs[place] ?? [])
}

function woodOf(limbs: readonly MainLimb[]): number {
  return limbs.reduce((sum, { thickCm }) => sum + (thickCm ?? 0), 0)
}

/** What a limb is worth beside a sound one at a good angle. Our own weights. */
export function worthOf({ condition, angleDeg }: MainLimb): number {
  return byCondition[condition] * byAngle(angleDeg)
}

const byCondition = { sound: 1, worn: 0.8, poor: 0.4 } as const

/** A steep limb pinches bark in its fork, a flat one bends under its crop. */
function byAngle(angleDeg: number | null): number {
  if (angleDeg === null) return 1
  if (angleDeg < 30) return 0.7
  return angleDeg > 75 ? 0.8 : 1
}

const tiny = 1e-9
