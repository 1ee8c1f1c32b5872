/** Who holds which tree. */

import type { Claim } from '@/lib/events/state'
import type { View } from '@/lib/hooks'

export type OpenClaim = Claim & { id: string }

export function claimAt({ state }: Pick<View, 'state'>, tree: number): OpenClaim | null {
  return claimWhere(state, (claim) => claim.tree === tree)
}

/** Where this person is holder, helper or learner. */
export function claimWith({ state }: Pick<View, 'state'>, personId: string): OpenClaim | null {
  return claimWhere(state, (claim) => Object.hasOwn(claim.people, personId))
}

export function holderIn(claim: Claim): string | null {
  return Object.keys(claim.people).find((id) => claim.people[id] === 'holder') ?? null
}

function claimWhere(state: View['state'], isMeant: (claim: Claim) => boolean): OpenClaim | null {
  const found = Object.entries(state?.claims ?? {}).find(([, claim]) => isMeant(claim))
  return found ? { ...found[1], id: found[0] } : null
}
