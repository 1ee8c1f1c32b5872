/** Stop work: called by anyone on the shift, answered person by person, ended by a lead. */

import * as shape from '@/lib/util/shape'

import { type Folds, type Predictions, refuse, when } from './family'
import { openShift } from './look-ups'
import { withChanged, withEntry, withoutKeys } from './record'
import { id, stop, stopAnswer } from './shapes'
import type { Stop } from './state'

const called = shape.extend(stop, { stop: id })
const answered = shape.object({ stop: id, answer: stopAnswer, person: shape.optional(id) })
const resumed = shape.object({ stop: id })

export const stopFolds: Folds = {
  stop_called: when(called, (state, { stop, ...facts }, { personId, at }) => ({
    ...state,
    stops: withEntry(state.stops, stop, {
      ...facts,
      calledBy: facts.calledBy ?? personId,
      calledAt: facts.calledAt ?? at,
    }),
  })),
  stop_answered: when(answered, (state, { stop, answer, person }, { personId, byPersonId }) => ({
    ...state,
    stops: withChanged(state.stops, stop, (known) =>
      withAnswer(known, person ?? personId, answer, byPersonId)
    ),
  })),
  work_resumed: when(resumed, (state, { stop }) => ({
    ...state,
    stops: withChanged(state.stops, stop, (known) => ({ ...known, resumed: true })),
  })),
}

/** The first who says it counts: what a lead has seen stays seen, though the phone wakes later. */
function withAnswer(stop: Stop, person: string, answer: 'stopped' | 'resumed', by: string): Stop {
  const before = stop.answers[person]
  // Who knows that work goes on has also come down.
  if (before === 'resumed' || before === answer) return stop
  return {
    ...stop,
    answers: withEntry(stop.answers, person, answer),
    seenBy: by === person ? withoutKeys(stop.seenBy, [person]) : withEntry(stop.seenBy, person, by),
  }
}

export const stopPredictions: Predictions = {
  stop_work: (state, { id, personId, args }, now) =>
    refuse(!openShift(state) && 'shift_not_open') ?? [
      {
        kind: 'stop_called',
        body: { stop: id, block: args.block, calledBy: personId, calledAt: now },
      },
    ],
  answer_stop: (state, { personId, args }) => {
    const stop = state.stops[args.stop]
    if (!stop) return 'asking'
    const answer = stop.resumed && args.answer !== 'stopped' ? 'resumed' : 'stopped'
    return [{ kind: 'stop_answered', body: { stop: args.stop, answer, person: personId } }]
  },
}
