/** Claims that were granted and by now lack the company they asked for. */

import { type ClaimLack, claimLacks } from '@/lib/events/company'

import type { View } from './view'
import { fromParts } from './view-memo'

export type { ClaimLack }

/** Person → what the claim they are in lacks. */
export const lacksByPerson = fromParts(
  ['state', 'ground'] as const,
  ({ state, ground }): ReadonlyMap<string, ClaimLack> => {
    const lacks = new Map<string, ClaimLack>()
    if (!state) return lacks
    for (const claim of Object.values(state.claims)) {
      for (const lack of claimLacks(state, ground, claim)) lacks.set(lack.person, lack)
    }
    return lacks
  }
)

/** What the tree I am at lacks: said to me, and to whoever leads. */
export function myClaimLacks(view: View): ClaimLack | null {
  return view.me ? (lacksByPerson(view).get(view.me.personId) ?? null) : null
}
