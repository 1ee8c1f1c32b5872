/** The day so far as facts to be said in plain sentences: what needs somebody first, then what goes on. */

import { holderOf } from '@/lib/events/look-ups'
import type { Call, Claim, Flag, State } from '@/lib/events/state'
import { isGrave, isToLookOver, type View } from '@/lib/hooks'
import { type DayClock, type DayFact, some } from './day-facts'
import { lackingPeople, longAtTree, peopleInNeed, withoutTree } from './day-people'

/** Most urgent first: danger, then people, then trees. */
export function daySoFar(view: View, clock: DayClock): DayFact[] {
  const { state } = view
  if (!state) return []
  return [
    ...stops(state),
    ...calls(state),
    ...stillInside(state),
    ...hazards(state),
    ...aloneWithLadder(state),
    ...peopleInNeed(view, state, clock),
    ...lackingPeople(view, state),
    ...longAtTree(view, clock),
    ...some(
      'disease_to_judge',
      treesFlagged(state, (flag) => flag.state === 'suspected')
    ),
    ...withoutTree(view, clock),
    ...some('for_arborist', treesFlagged(state, isForArborist)),
    ...some('half_done', halfDone(state)),
    ...some('to_look_over', toLookOver(state)),
    ...onBrush(state),
  ]
}

function stops(state: State): DayFact[] {
  return Object.values(state.stops)
    .filter((stop) => !stop.resumed)
    .map(({ block, calledBy, answers }) => ({
      code: 'stopped',
      block,
      by: calledBy,
      notAnswered: Object.keys(state.attendance).filter((id) => !answers[id]),
    }))
}

/** Grave ones first, then those that nobody has answered, then the oldest. */
function calls(state: State): DayFact[] {
  const rank = ({ kind, answeredBy }: Call) =>
    (isGrave(kind) ? 0 : 2) + (answeredBy === null ? 0 : 1)
  return Object.values(state.calls)
    .toSorted((a, b) => rank(a) - rank(b) || (a.calledAt < b.calledAt ? -1 : 1))
    .map((call) => ({ code: 'called', call }))
}

/** At a tree inside a keep-out when it was set, and not known to have come out. */
function stillInside({ flags, attendance }: State): DayFact[] {
  const inside = Object.values(flags).flatMap((flag) =>
    Object.keys(flag.inside).filter((id) => !flag.inside[id]?.out && attendance[id])
  )
  return some('still_inside', [...new Set(inside)])
}

function hazards({ flags }: State): DayFact[] {
  return Object.values(flags)
    .filter(({ kind, severity }) => kind === 'arborist' && severity === 'danger_now')
    .toSorted((a, b) => (a.raisedAt < b.raisedAt ? 1 : -1))
    .map(({ tree, sign, raisedBy, raisedAt }) => ({
      code: 'hazard',
      tree,
      sign,
      by: raisedBy,
      at: raisedAt,
    }))
}

/** The buddy went on a break or home, or the helper left: the referee asked only when it was claimed. */
function aloneWithLadder({ claims, attendance }: State): DayFact[] {
  const isThere = (id: string | null) => id !== null && attendance[id]?.state === 'here'
  const alone = ({ people, buddyId }: Claim) =>
    !isThere(buddyId) && Object.keys(people).filter(isThere).length < 2
  return Object.values(claims).flatMap((claim): DayFact[] => {
    const person = holderOf(claim)
    return claim.ladder && claim.tree !== null && person && alone(claim)
      ? [{ code: 'alone_with_ladder', person, tree: claim.tree }]
      : []
  })
}

function isForArborist({ kind, severity }: Flag): boolean {
  return kind === 'arborist' && severity !== 'danger_now'
}

function treesFlagged({ flags }: State, wanted: (flag: Flag) => boolean): number[] {
  return [
    ...new Set(
      Object.values(flags)
        .filter(wanted)
        .map(({ tree }) => tree)
    ),
  ]
}

/** Begun, and nobody is at it. */
function halfDone({ work, claims }: State): number[] {
  const held = new Set(Object.values(claims).map(({ tree }) => tree))
  return Object.keys(work)
    .map(Number)
    .filter((tree) => work[tree]?.state === 'begun' && !held.has(tree))
}

function toLookOver(state: State): number[] {
  return Object.keys(state.work)
    .map(Number)
    .filter((tree) => isToLookOver(state, tree))
}

function onBrush({ claims }: State): DayFact[] {
  const people = Object.values(claims)
    .filter(({ kind }) => kind === 'brush')
    .flatMap((claim) => Object.keys(claim.people))
  return some('on_brush', people)
}
