/**
 * Who counts as company at a tree that takes two, and which claims have lost theirs. The referee
 * asks at the claim (private.missing_of_buddy); people leave, so it is looked at again ever after.
 */

import type { Refusal } from './answer'
import type { Ground } from './ground'
import { holderOf } from './look-ups'
import type { Claim, State } from './state'

/** A buddy is an adult of the crew who is here and not on a break. */
export function buddyLacks(state: State, personId: string, buddy: string | null): Refusal[] {
  if (buddy === null) return []
  const detail = { person: buddy }
  if (buddy === personId || state.attendance[buddy]?.state !== 'here') {
    return [{ code: 'buddy_not_here', detail }]
  }
  const isFit = state.people[buddy]?.role !== 'visitor' && !Object.hasOwn(state.minors, buddy)
  return isFit ? [] : [{ code: 'buddy_not_fit', detail }]
}

/** alone: at a ladder or saw tree. minor_alone: the adult who answers for them is not here. */
export type ClaimLack =
  | { kind: 'alone'; person: string }
  | { kind: 'minor_alone'; person: string; guardian: string | null }

/** What a claim that was granted lacks by now. It ends nothing: it is said to who can mend it. */
export function claimLacks(state: State, ground: Ground, claim: Claim): ClaimLack[] {
  const holder = holderOf(claim)
  const tree = claim.tree === null ? undefined : ground.trees.get(claim.tree)
  const takesTwo = claim.kind === 'prune' && (claim.ladder || tree?.asksSaw === true)
  const people = Object.keys(claim.people)
  const isAlone = takesTwo && holder !== null && !hasCompany(state, claim, holder)
  return [
    ...(isAlone ? [{ kind: 'alone' as const, person: holder }] : []),
    ...people.flatMap((person) => {
      const minor = state.minors[person]
      if (!minor || isHere(state, minor.guardianId)) return []
      return [{ kind: 'minor_alone' as const, person, guardian: minor.guardianId }]
    }),
  ]
}

/** A learner looks on; a helper works along. */
function hasCompany(state: State, claim: Claim, holder: string): boolean {
  const helps = Object.entries(claim.people).some(([, part]) => part === 'helper')
  return helps || (claim.buddyId !== null && buddyLacks(state, holder, claim.buddyId).length === 0)
}

function isHere(state: State, personId: string | null): boolean {
  return personId !== null && Object.hasOwn(state.attendance, personId)
}
