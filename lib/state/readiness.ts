/** What stands between somebody and the work, or a tree, as the referee will say it. */

import type { Refusal } from '@/lib/events/answer'
import { missingForClaim, missingOfPerson, type Wish } from '@/lib/events/missing'

import type { View } from './view'

/** Everything that is missing before any claim: "before you start". */
export function myReadiness(view: View): Refusal[] {
  return view.me ? readinessOf(view, view.me.personId) : []
}

export function readinessOf({ state }: View, personId: string): Refusal[] {
  return state ? missingOfPerson(state, personId) : []
}

/** Everything that stands between me and this tree. */
export function refusalsFor({ state, ground, me }: View, tree: number, wish: Wish = {}): Refusal[] {
  return state && me ? missingForClaim(state, ground, tree, me.personId, wish) : []
}
