/** What stands between somebody and the work, or a tree, as the referee will say it. */

import type { Refusal } from '@/lib/events/answer'
import { missingForClaim, missingOfPerson, type Wish } from '@/lib/events/missing'
import type { DateOnly, Instant, State } from '@/lib/events/state'
import { dayIn } from '@/lib/util/day-in'

import type { View } from './view'

/** Everything that is missing before any claim: "before you start". */
export function myReadiness(view: View): Refusal[] {
  return view.me ? readinessOf(view, view.me.personId) : []
}

export function readinessOf(
  { state, ground, skewMs }: Pick<View, 'state' | 'ground' | 'skewMs'>,
  personId: string
): Refusal[] {
  return state ? missingOfPerson(state, personId, { ground, now: nowIn({ skewMs }) }) : []
}

/** Everything that stands between me and this tree. */
export function refusalsFor(view: View, tree: number, wish: Wish = {}): Refusal[] {
  const { state, ground, me } = view
  if (!state || !me) return []
  return missingForClaim(state, ground, tree, me.personId, { ...clockOf(view), ...wish })
}

/** What rules ask of the clock. */
export function clockOf(view: Pick<View, 'state' | 'skewMs'>): Pick<Wish, 'today' | 'now'> {
  return { ...(view.state && { today: todayIn(view.state) }), now: nowIn(view) }
}

/** The referee's clock, as near as this device knows it. */
export function nowIn({ skewMs }: Pick<View, 'skewMs'>): Instant {
  return new Date(Date.now() + skewMs).toISOString()
}

/** Skills run out at the orchard's midnight, also in the middle of a shift. */
function todayIn({ orchard }: State): DateOnly {
  return dayIn(orchard.timeZone, new Date())
}
