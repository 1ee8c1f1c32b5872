/** Questions about what the weather puts off: whom it tells to come out, and who has not said so yet. */

import type { Position } from '@/lib/domain/orchard/types'
import { positionOf } from '@/lib/events/ground'
import type { Leaving, State } from '@/lib/events/state'

import type { View } from './view'

/** I am told to come out of a tree that I am still in, and have not said that I am down. */
export function toLeaveNow({ state, me }: Pick<View, 'state' | 'me'>): Leaving | null {
  return state && me ? leavingOf(state, me.personId) : null
}

export type StillIn = Leaving & { personId: string }

/** Whom a lead goes to look for: told, still in that claim, and not heard. */
export function stillToLeave({ state }: Pick<View, 'state'>): StillIn[] {
  return Object.keys(state?.toLeave ?? {}).flatMap((personId) => {
    const leaving = state && leavingOf(state, personId)
    return leaving ? [{ ...leaving, personId }] : []
  })
}

/** Whoever is no longer in that claim has left the tree. */
function leavingOf(state: State, personId: string): Leaving | null {
  const leaving = state.toLeave[personId]
  const claim = leaving && state.claims[leaving.claim]
  return claim && Object.hasOwn(claim.people, personId) ? leaving : null
}

/** Where the orchard is, for the sun; null while nobody knows. */
export function orchardPosition({ ground }: Pick<View, 'ground'>): Position | null {
  return positionOf(ground)
}
