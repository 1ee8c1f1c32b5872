/** What the light asks of whoever is at a tree. Nobody sends it: each device knows the sun's hours by itself. */

import { isSunUp } from '@/lib/domain/safety/sun'
import { darkness, isTooDark, laddersLackLight } from '@/lib/events/dark'
import { type Ground, positionOf } from '@/lib/events/ground'
import { claimOf } from '@/lib/events/look-ups'
import type { State } from '@/lib/events/state'

import type { View } from './view'

/** In the order in which an evening brings them. */
export type LightCall = 'off_ladder' | 'last_cut' | 'come_in'

/** Common practice, no source: long enough to end a cut, close the blades and look for what lies on the ground. */
const lastCutMs = 15 * 60_000

type Seen = Pick<View, 'state' | 'ground' | 'me'>

export function lightCall({ state, ground, me }: Seen, at: Date): LightCall | null {
  const claim = state && me && claimOf(state, me.personId)
  if (!claim) return null
  const here = { ground, now: at.toISOString() }
  if (isTooDark(state, here)) return 'come_in'
  if (setsWithin(ground, at, lastCutMs) && !goesOnInTheDark(state)) return 'last_cut'
  return claim.ladder && laddersLackLight(state, here) ? 'off_ladder' : null
}

/** Who is still at a tree or a row though it is dark, and no lead lets work go on; less those who were told and are asked for. */
export function stillInTheDark(
  { state, ground }: Pick<View, 'state' | 'ground'>,
  at: Date
): { personId: string; tree: number | null }[] {
  if (!state || !isTooDark(state, { ground, now: at.toISOString() })) return []
  return Object.values(state.claims).flatMap(({ people, tree }) =>
    Object.keys(people)
      .filter((personId) => !Object.hasOwn(state.toLeave, personId))
      .map((personId) => ({ personId, tree }))
  )
}

/** A lead's exception counts for something: the sun is not up, or not for long. */
export function darknessMatters(ground: Ground, at: Date): boolean {
  const place = positionOf(ground)
  return place !== null && (!isSunUp(place, at.getTime()) || setsWithin(ground, at, 3_600_000))
}

export function goesOnInTheDark({ exceptions }: State): boolean {
  return exceptions[darkness]?.lifts.includes('dark') === true
}

function setsWithin(ground: Ground, at: Date, ms: number): boolean {
  const place = positionOf(ground)
  return place !== null && isSunUp(place, at.getTime()) && !isSunUp(place, at.getTime() + ms)
}
