/** Questions about me: my tree, what is dealt to me, what I hold, what I have to answer. */

import { claimOf, holderOf, openShift } from '@/lib/events/look-ups'
import type { Claim, Instant, Shift, Stop, Tool } from '@/lib/events/state'

import type { Membership, View } from './view'

export type MyTree =
  | { state: 'none' }
  /** `tree` is null where the claim is of a whole row. */
  | { state: 'held'; claimId: string; claim: Claim; tree: number | null; isHolder: boolean }
  /** Begun without signal. */
  | { state: 'not_confirmed'; tree: number; begunAt: Instant }

export function myTree({ state, me, begun }: View): MyTree {
  const claim = state && me && claimOf(state, me.personId)
  if (claim) {
    const { id, ...facts } = claim
    const isHolder = holderOf(claim) === me.personId
    return { state: 'held', claimId: id, claim: facts, tree: claim.tree, isHolder }
  }
  return begun ? { state: 'not_confirmed', tree: begun.tree, begunAt: begun.at } : { state: 'none' }
}

/** Trees kept for me that I can still take, in the order of the plates. */
export function myDealtTrees({ state, me, ground }: View): number[] {
  if (!state || !me) return []
  const held = new Set(Object.values(state.claims).map((claim) => claim.tree))
  return Object.keys(state.deals)
    .map(Number)
    .filter(
      (tree) =>
        state.deals[tree]?.includes(me.personId) &&
        state.work[tree]?.state !== 'done' &&
        !held.has(tree)
    )
    .toSorted((a, b) => {
      const [one, other] = [ground.trees.get(a), ground.trees.get(b)]
      if (!one || !other) return a - b
      return one.block - other.block || one.row - other.row || one.place - other.place
    })
}

export function toolsInHand(view: View, personId = view.me?.personId): (Tool & { no: number })[] {
  return Object.entries(view.state?.tools ?? {})
    .filter(([, tool]) => tool.heldBy !== null && tool.heldBy === personId)
    .map(([no, tool]) => ({ ...tool, no: Number(no) }))
}

export function openShiftOf({ state }: View): (Shift & { id: string }) | null {
  return state && openShift(state)
}

export function isLeadView({ state, me }: Pick<View, 'state' | 'me'>): boolean {
  const role = state?.me.role ?? me?.role
  return role === 'lead' || role === 'manager'
}

/** The stop that is in force, the earliest first; of one block or of the whole orchard. */
export function stopInForce({ state }: View): (Stop & { id: string }) | null {
  return byTime(state?.stops ?? {}).find((stop) => !stop.resumed) ?? null
}

export type StopToAnswer = { stop: Stop & { id: string }; answer: 'stopped' | 'resumed' }

/** A stop that wants my answer: that I came down, or that I know that work goes on. */
export function stopToAnswer(view: View): StopToAnswer | null {
  return view.me && stopToAnswerBy(view, view.me.personId)
}

/** The same for somebody else: a lead answers for who has no phone. */
export function stopToAnswerBy({ state }: View, personId: string): StopToAnswer | null {
  const there = state?.attendance[personId]
  if (!there) return null
  const stops = byTime(state.stops)
  const inForce = stops.find((stop) => !stop.resumed && !stop.answers[personId])
  if (inForce) return { stop: inForce, answer: 'stopped' }
  const last = stops.findLast((stop) => stop.resumed)
  const heardIt = last && there.since < last.calledAt
  return heardIt && last.answers[personId] !== 'resumed' ? { stop: last, answer: 'resumed' } : null
}

/** Who else uses this device and has not answered a stop: the screen of whoever holds it now does not ask them. */
export function otherToAnswer(view: View): Membership | null {
  const { me, memberships } = view
  const others = memberships.filter(
    ({ orchardId, personId }) => orchardId === me?.orchardId && personId !== me.personId
  )
  return others.find(({ personId }) => stopToAnswerBy(view, personId)?.answer === 'stopped') ?? null
}

function byTime(stops: Record<string, Stop>): (Stop & { id: string })[] {
  return Object.entries(stops)
    .map(([id, stop]) => ({ ...stop, id }))
    .toSorted((a, b) => (a.calledAt < b.calledAt ? -1 : 1))
}
