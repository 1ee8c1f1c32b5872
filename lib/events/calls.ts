/** Calls for help, and incidents. Of both the notes are only read, never told. */

import * as shape from '@/lib/util/shape'

import { type Folds, onlyChanges, type Predictions, refuse, when } from './family'
import { isLead } from './look-ups'
import { withChanged, withEntry } from './record'
import { call, id, instant, orNull } from './shapes'

const made = shape.extend(call, { call: id })
const answered = shape.object({
  call: id,
  answeredBy: orNull(id),
  answeredAt: orNull(instant),
})

export const callFolds: Folds = {
  call_made: when(made, (state, { call, ...facts }, { personId, at }) => ({
    ...state,
    calls: withEntry(state.calls, call, {
      ...facts,
      calledBy: facts.calledBy ?? personId,
      calledAt: facts.calledAt ?? at,
    }),
  })),
  call_answered: when(answered, (state, { call, answeredBy, answeredAt }) => ({
    ...state,
    calls: withChanged(state.calls, call, (known) => ({ ...known, answeredBy, answeredAt })),
  })),
  call_ended: onlyChanges,
  incident_written: onlyChanges,
}

export const callPredictions: Predictions = {
  call_for_help: (_, { id, personId, args }, now) => [
    {
      kind: 'call_made',
      body: {
        call: id,
        kind: args.kind,
        tree: args.tree,
        subject: args.kind === 'lost_person' ? args.subject : null,
        calledBy: personId,
        calledAt: args.at ?? now,
      },
    },
  ],
  answer_call: (state, { personId, args }, now) => {
    const known = state.calls[args.call]
    if (!known) return 'asking'
    const answeredAt = known.answeredAt ?? now
    return [{ kind: 'call_answered', body: { call: args.call, answeredBy: personId, answeredAt } }]
  },
  end_call: (state, { personId, args }) => {
    const known = state.calls[args.call]
    if (!known) return 'asking'
    const refused = refuse(known.calledBy !== personId && !isLead(state) && 'not_yours')
    // This login may also be a lead's.
    if (refused && personId !== state.me.personId) return 'asking'
    return refused ?? [{ kind: 'call_ended', body: { callsEnded: [args.call] } }]
  },
  write_incident: () => [],
}
