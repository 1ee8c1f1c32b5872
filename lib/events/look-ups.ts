/** Small questions that several families ask the state. */

import type { Briefed, Claim, Shift, State } from './state'

export function openShift(state: State): (Shift & { id: string }) | null {
  for (const [id, shift] of Object.entries(state.shifts)) {
    if (shift.state === 'open') return { ...shift, id }
  }
  return null
}

const notBriefed: Briefed = { givenVersion: 0, signedVersion: 0 }

export function briefedOf(state: State, personId: string): Briefed {
  return state.briefed[personId] ?? notBriefed
}

/** Told by a person, and again since everybody had to come down. */
export function isTold({ givenVersion }: Briefed, shift: Pick<Shift, 'comeDownVersion'>): boolean {
  return givenVersion > 0 && givenVersion >= shift.comeDownVersion
}

/** The open claim this person is in, as holder, helper or learner. */
export function claimOf(state: State, personId: string): (Claim & { id: string }) | null {
  for (const [id, claim] of Object.entries(state.claims)) {
    if (Object.hasOwn(claim.people, personId)) return { ...claim, id }
  }
  return null
}

export function claimOnTree(state: State, tree: number): (Claim & { id: string }) | null {
  for (const [id, claim] of Object.entries(state.claims)) {
    if (claim.tree === tree) return { ...claim, id }
  }
  return null
}

export function holderOf(claim: Claim): string | null {
  return Object.keys(claim.people).find((personId) => claim.people[personId] === 'holder') ?? null
}

/** Numbers of the tools that these people have in hand. */
export function toolsOf(state: State, personIds: readonly string[]): number[] {
  return Object.keys(state.tools)
    .filter((no) => personIds.includes(state.tools[no]?.heldBy ?? ''))
    .map(Number)
}

export function isLead(state: State): boolean {
  return state.me.role === 'lead' || state.me.role === 'manager'
}

/** Consent, age and skills of others are for leads; what is unknown is not missing. */
export function knowsAbout(state: State, personId: string): boolean {
  return isLead(state) || personId === state.me.personId
}

export function hasFlag(state: State, tree: number, kind: 'disease' | 'arborist'): boolean {
  return Object.values(state.flags).some((flag) => flag.tree === tree && flag.kind === kind)
}

/** Tools in these people's hands that are not clean once they have worked at this tree. */
export function soiledAt(
  state: State,
  tree: number | null,
  personIds: readonly string[]
): { dirty?: number[] } {
  const isDiseased = tree !== null && hasFlag(state, tree, 'disease')
  const dirty = isDiseased ? toolsOf(state, personIds) : []
  return dirty.length > 0 ? { dirty } : {}
}

/** Where nobody pruned nothing lies. */
export function pruned(state: State, trees: readonly number[]): number[] {
  return trees.filter((tree) => ['begun', 'done'].includes(state.work[tree]?.state ?? ''))
}
