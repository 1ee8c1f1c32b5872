/** The safety briefing: written for a shift, given by a person, signed by each. */

import * as shape from '@/lib/util/shape'

import { type Folds, type Predictions, refuse, when } from './family'
import { openShift } from './look-ups'
import { withChanged, withEntry } from './record'
import { briefingChange, id, number } from './shapes'
import type { Briefed, State } from './state'

const written = shape.object({ shift: id, version: number, change: briefingChange })
const given = shape.object({ version: number, people: shape.array(id) })
const signed = shape.object({ version: number })

export const briefingFolds: Folds = {
  briefing_written: when(written, (state, { shift, version, change }) => ({
    ...state,
    shifts: withChanged(state.shifts, shift, (known) => ({
      ...known,
      briefingVersion: version,
      briefingChange: change,
    })),
  })),
  briefing_given: when(given, (state, { people }) =>
    people.reduce((before, personId) => withBriefed(before, personId, { given: true }), state)
  ),
  briefing_signed: when(signed, (state, { version }, { personId }) => {
    const before = state.briefed[personId]?.signedVersion ?? 0
    return withBriefed(state, personId, { signedVersion: Math.max(version, before) })
  }),
}

function withBriefed(state: State, personId: string, change: Partial<Briefed>): State {
  const before = state.briefed[personId] ?? { given: false, signedVersion: 0 }
  return { ...state, briefed: withEntry(state.briefed, personId, { ...before, ...change }) }
}

export const briefingPredictions: Predictions = {
  give_briefing: (state, { args }) => {
    const shift = openShift(state)
    if (!shift) return { refused: [{ code: 'shift_not_open' }] }
    const version = shift.briefingVersion
    const away = args.people.some((personId) => !state.attendance[personId])
    return (
      refuse(version === 0 && 'briefing_missing', away && 'not_arrived') ?? [
        { kind: 'briefing_given', body: { version, people: args.people } },
      ]
    )
  },
  sign_briefing: (state, { args }) => {
    const shift = openShift(state)
    if (!shift) return { refused: [{ code: 'shift_not_open' }] }
    return (
      refuse(args.version !== shift.briefingVersion && 'briefing_changed') ?? [
        { kind: 'briefing_signed', body: { version: args.version } },
      ]
    )
  },
}
