/** Rounds, and the shifts in them. */

import * as shape from '@/lib/util/shape'

import { type Folded, type Folds, type Predictions, when } from './family'
import { openShift } from './look-ups'
import { withChanged, withEntry, withoutKeys } from './record'
import { dateOnly, id, instant, offReason, orNull, round, shift, signal, text } from './shapes'
import type { OffReason, Shift, State } from './state'
import { newlyPutOff, toldToLeave, withLeaving } from './weather'

const roundOpened = shape.extend(round, { round: id })
const roundClosed = shape.object({
  round: id,
  calledOff: shape.withDefault(shape.array(id), []),
})
const scheduled = shape.extend(shift, { shift: id })
const changed = shape.object({
  shift: id,
  date: dateOnly,
  startsAt: instant,
  endsAt: instant,
  signal,
})
const cancelled = shape.object({ shift: id })
const opened = shape.object({
  shift: id,
  off: shape.withDefault(shape.record(text, offReason), {}),
})
const closed = shape.object({ shift: id, notFound: shape.withDefault(shape.array(id), []) })
const offChanged = shape.object({
  shift: id,
  what: text,
  reason: orNull(offReason),
  ...toldToLeave,
})

export const shiftFolds: Folds = {
  round_opened: when(roundOpened, (state, { round, ...facts }): Folded => {
    // Without an open shift, work goes to the round opened last.
    if (!openShift(state)) return 'fetch again'
    return { ...state, rounds: withEntry(state.rounds, round, facts) }
  }),
  round_closed: when(roundClosed, (state, { round, calledOff }): Folded => {
    if (round === state.workRoundId) return 'fetch again'
    return {
      ...state,
      rounds: withoutKeys(state.rounds, [round]),
      shifts: withoutKeys(state.shifts, calledOff),
    }
  }),
  // What was planned in it, and which round work goes to now, the referee knows.
  round_reopened: () => 'fetch again',
  shift_scheduled: when(scheduled, (state, { shift, ...facts }) => ({
    ...state,
    shifts: withEntry(state.shifts, shift, facts),
  })),
  shift_changed: when(changed, (state, { shift, ...facts }) => ({
    ...state,
    shifts: withChanged(state.shifts, shift, (known) => ({ ...known, ...facts })),
  })),
  shift_cancelled: when(cancelled, (state, { shift }) => ({
    ...state,
    shifts: withoutKeys(state.shifts, [shift]),
  })),
  shift_opened: when(opened, (state, { shift, off }): Folded => {
    if (state.shifts[shift]?.roundId !== state.workRoundId) return 'fetch again'
    return {
      ...withoutCrew(state),
      shifts: withChanged(state.shifts, shift, (known) => ({ ...known, state: 'open', off })),
    }
  }),
  shift_closed: when(closed, (state, { shift, notFound }): Folded => {
    // Work may now go to another round, and only the referee knows which was opened last.
    if (Object.keys(state.rounds).length > 1) return 'fetch again'
    return {
      ...withoutCrew(state),
      shifts: withoutKeys(state.shifts, [shift]),
      notFound: { ...state.notFound, ...Object.fromEntries(notFound.map((id) => [id, shift])) },
    }
  }),
  off_changed: when(offChanged, (state, { toLeave, ...changed }, { at }) =>
    withLeaving(withOff(state, changed), toLeave, at)
  ),
}

type OffChanged = { shift: string; what: string; reason: OffReason | null }

function withOff(state: State, { shift, what, reason }: OffChanged): State {
  const change = (known: Shift) => ({ ...known, off: offAfter(known.off, what, reason) })
  return { ...state, shifts: withChanged(state.shifts, shift, change) }
}

function offAfter(off: Record<string, OffReason>, what: string, reason: OffReason | null) {
  return reason === null ? withoutKeys(off, [what]) : withEntry(off, what, reason)
}

/** What belongs to one shift only. */
function withoutCrew(state: State): State {
  const crew = { attendance: {}, briefed: {}, equipped: {}, failedEquipment: {}, stops: {} }
  return { ...state, ...crew, exceptions: {}, toLeave: {} }
}

export const shiftPredictions: Predictions = {
  set_off_today: (state, { args: { what, reason } }, now, ground) => {
    const shift = openShift(state)
    if (!shift) return { refused: [{ code: 'shift_not_open' }] }
    // Out of season is off; a lead makes an exception, and says why.
    if (shift.off[what] === 'season' && reason !== 'season') {
      return { refused: [{ code: 'exception_needed', detail: { species: what } }] }
    }
    const changed = { shift: shift.id, what, reason }
    const toLeave = newlyPutOff(state, withOff(state, changed), { ground, now })
    return [{ kind: 'off_changed', body: { ...changed, toLeave } }]
  },
}
