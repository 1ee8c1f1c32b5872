/** The day so far as facts to be said in plain sentences: what needs somebody first, then what goes on. */

import { holderOf } from '@/lib/events/look-ups'
import type { Claim, Flag, State } from '@/lib/events/state'
import type { View } from '@/lib/hooks'
import { type DayClock, type DayFact, some } from './day-facts'
import { lackingPeople, longAtTree, peopleInNeed, withoutTree } from './day-people'

/** Most urgent first: danger, then people, then trees. */
export function daySoFar(view: View, clock: DayClock): DayFact[] {
  const { state } = view
  if (!state) return []
  return [
    ...stops(state),
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

function onBrush({ claims }: State): DayFact[] {
  const people = Object.values(claims)
    .filter(({ kind }) => kind === 'brush')
    .flatMap((claim) => Object.keys(claim.people))
  return some('on_brush', people)
}
