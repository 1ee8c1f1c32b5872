/** Who is here, on a break, gone: the head count is what is in `attendance`. */

import { isRest } from '@/lib/domain/safety/heat-duties'
import * as shape from '@/lib/util/shape'

import { type Folds, type Predictions, refuse, when } from './family'
import { claimOf, openShift, toolsOf } from './look-ups'
import { withEntry, withoutKeys } from './record'
import { attendance, id, instant } from './shapes'
import type { State } from './state'

/** `at` where the person said another time than the referee's. */
const moment = shape.object({ at: shape.optional(instant) })

/** Of who is here now. What was written of earlier hours changes nothing that phones carry. */
const entered = shape.object({ attendance: shape.optional(attendance) })

export const attendanceFolds: Folds = {
  person_arrived: when(moment, (state, body, { personId, at }) => ({
    ...state,
    attendance: withEntry(state.attendance, personId, {
      state: 'here',
      since: body.at ?? at,
      restedAt: body.at ?? at,
    }),
    notFound: withoutKeys(state.notFound, [personId]),
  })),
  person_found: when(shape.object({ person: id }), (state, { person }) => ({
    ...state,
    notFound: withoutKeys(state.notFound, [person]),
  })),
  break_started: when(moment, (state, body, { personId, at }) =>
    nowIn(state, personId, 'break', body.at ?? at)
  ),
  break_ended: when(moment, (state, body, { personId, at }) =>
    nowIn(state, personId, 'here', body.at ?? at)
  ),
  attendance_entered: when(entered, (state, { attendance }, { personId }) =>
    attendance ? { ...state, attendance: withEntry(state.attendance, personId, attendance) } : state
  ),
  person_left: (state, _, { personId }) => ({
    ...state,
    attendance: withoutKeys(state.attendance, [personId]),
  }),
}

function nowIn(state: State, personId: string, now: 'here' | 'break', since: string): State {
  const before = state.attendance[personId]
  if (!before) return state
  const hasRested = now === 'here' && isRest(Date.parse(before.since), Date.parse(since))
  const restedAt = hasRested ? since : before.restedAt
  return {
    ...state,
    attendance: withEntry(state.attendance, personId, { state: now, since, restedAt }),
  }
}

export const attendancePredictions: Predictions = {
  arrive: (state, { personId }) =>
    refuse(
      !openShift(state) && 'shift_not_open',
      state.people[personId]?.admitted === false && 'not_admitted',
      Object.hasOwn(state.attendance, personId) && 'already_here'
    ) ?? [{ kind: 'person_arrived', body: {} }],

  found_person: (_, { args }) => [{ kind: 'person_found', body: { person: args.subject } }],

  start_break: (state, { personId, args }, now) => {
    const there = state.attendance[personId]
    return (
      refuse(
        !openShift(state) && 'shift_not_open',
        !there && 'not_arrived',
        there?.state === 'break' && 'on_break',
        claimOf(state, personId) !== null && 'holds_another'
      ) ?? [{ kind: 'break_started', body: { at: args.at ?? now } }]
    )
  },

  end_break: (state, { personId, args }, now) => {
    const there = state.attendance[personId]
    return (
      refuse(
        !openShift(state) && 'shift_not_open',
        !there && 'not_arrived',
        there?.state === 'here' && 'not_on_break'
      ) ?? [{ kind: 'break_ended', body: { at: args.at ?? now } }]
    )
  },

  leave: (state, { personId }) =>
    refuse(
      !openShift(state) && 'shift_not_open',
      !state.attendance[personId] && 'not_arrived',
      claimOf(state, personId) !== null && 'holds_another',
      toolsOf(state, [personId]).length > 0 && 'tools_out'
    ) ?? [
      {
        kind: 'person_left',
        body: { left: [personId], dealsEnded: dealsOnlyTo(state, personId) },
      },
    ],
}

/** A pair keeps its trees while one of the two is there. */
function dealsOnlyTo(state: State, personId: string): number[] {
  return Object.keys(state.deals)
    .filter((tree) => {
      const people = state.deals[tree] ?? []
      return people.includes(personId) && people.every((other) => !isHereBut(other))
    })
    .map(Number)

  function isHereBut(other: string): boolean {
    return other !== personId && Object.hasOwn(state.attendance, other)
  }
}
