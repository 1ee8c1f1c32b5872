/** Who needs somebody, and who waits for something. */

import type { State } from '@/lib/events/state'
import { stopInForce, type View, whoIsWhere } from '@/lib/hooks'
import { crewInOrder, isAtWork } from '../crew/crew-order'
import { lacksOf } from '../crew/readiness'
import { type DayClock, type DayFact, some } from './day-facts'

/** Where the signal is gone all phones fall silent at once: a wall of names would hide the danger below it. */
const mostNotHeard = 3

function linesOf(view: View, { now, heardAt, quietMinutes }: DayClock) {
  const flags = view.state?.flags ?? {}
  const people = view.state?.people ?? {}
  // A lead who flags knows what to do next.
  const raised = Object.values(flags).filter(
    ({ kind, raisedBy }) => kind === 'arborist' && people[raisedBy]?.role === 'volunteer'
  )
  return crewInOrder({
    where: whoIsWhere(view),
    now,
    heardAt,
    quietMinutes,
    // Calls are said of their own.
    isCalling: () => false,
    hazardBy: new Map(raised.map(({ raisedBy, tree }) => [raisedBy, tree])),
    lackOf: () => null,
    toGo: () => 0,
    isReady: () => true,
    nameOf: (id) => view.names[id] ?? '',
  })
}

export function peopleInNeed(view: View, state: State, clock: DayClock): DayFact[] {
  const waiting = Object.keys(state.people).filter((id) => state.people[id]?.admitted === false)
  const inNeed = linesOf(view, clock).flatMap(({ personId: person, need, tree }): DayFact[] => {
    if (need?.kind === 'hazard') return [{ code: 'waits_for_lead', person, tree: need.tree }]
    if (need?.kind === 'quiet') return [{ code: 'not_heard', person, minutes: need.minutes, tree }]
    return []
  })
  const notHeard = inNeed.flatMap((fact) => (fact.code === 'not_heard' ? [fact.person] : []))
  const told =
    notHeard.length > mostNotHeard
      ? [...inNeed.filter(({ code }) => code !== 'not_heard'), ...some('many_not_heard', notHeard)]
      : inNeed
  return [...told, ...some('not_let_in', waiting)]
}

export function longAtTree(view: View, clock: DayClock): DayFact[] {
  return linesOf(view, clock).flatMap(({ personId, need, minutes, tree }): DayFact[] =>
    need?.kind === 'long' ? [{ code: 'long_at_tree', person: personId, minutes, tree }] : []
  )
}

/** Each person stands under the first thing that they lack: the rest is on the people screen. */
export function lackingPeople(view: View, state: State): DayFact[] {
  const lacking = {
    not_answered: [],
    not_briefed: [],
    without_equipment: [],
    without_tool: [],
    lacks_other: [],
  } as Record<Lack, string[]>
  for (const [person, { state: there }] of Object.entries(state.attendance)) {
    // A lead who does not prune needs nothing of this.
    if (there === 'break' || state.people[person]?.role !== 'volunteer') continue
    const [first] = lacksOf(view, person)
    if (first !== undefined) lacking[lackOf[first] ?? 'lacks_other'].push(person)
  }
  return lacks.flatMap((code) => some(code, lacking[code]))
}

const lacks = [
  'not_answered',
  'not_briefed',
  'without_equipment',
  'without_tool',
  'lacks_other',
] as const
type Lack = (typeof lacks)[number]

const lackOf: Record<string, Lack> = {
  stop_not_answered: 'not_answered',
  briefing_not_given: 'not_briefed',
  briefing_not_signed: 'not_briefed',
  equipment_not_checked: 'without_equipment',
  no_tool_in_hand: 'without_tool',
  tool_failed: 'without_tool',
  tool_not_clean: 'without_tool',
}

/** Ready, here, at nothing, and nothing is kept for them. Leads teach and walk about; in a stop all wait. */
export function withoutTree(view: View, clock: DayClock): DayFact[] {
  if (stopInForce(view)) return []
  const dealtTo = new Set(Object.values(view.state?.deals ?? {}).flat())
  const free = linesOf(view, clock).filter(
    (one) =>
      one.need === null &&
      one.state === 'here' &&
      !isAtWork(one) &&
      view.state?.people[one.personId]?.role === 'volunteer' &&
      !dealtTo.has(one.personId) &&
      lacksOf(view, one.personId).length === 0
  )
  return some(
    'without_tree',
    free.map(({ personId }) => personId)
  )
}
