/** What stands between somebody and the work, or a tree, as the referee will say it. */

import type { Refusal } from '@/lib/events/answer'
import { missingForClaim, missingOfPerson, type Wish } from '@/lib/events/missing'
import type { DateOnly, State } from '@/lib/events/state'
import { dayIn } from '@/lib/util/day-in'

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
  if (!state || !me) return []
  return missingForClaim(state, ground, tree, me.personId, { today: todayIn(state), ...wish })
}

/** Skills run out at the orchard's midnight, also in the middle of a shift. */
export function todayIn({ orchard }: State): DateOnly {
  return dayIn(orchard.timeZone, new Date())
}
