/** The safety briefing: written for a shift, given by a person, signed by each. */

import * as shape from '@/lib/util/shape'

import { type Folds, type Predictions, refuse, when } from './family'
import { briefedOf, isLead, openShift } from './look-ups'
import { withChanged, withEntry } from './record'
import { briefingChange, id, number } from './shapes'
import type { Briefed, State } from './state'

const written = shape.object({ shift: id, version: number, change: briefingChange })
const given = shape.object({ version: number, people: shape.array(id) })
const signed = shape.object({ version: number, own: shape.withDefault(shape.boolean, false) })

export const briefingFolds: Folds = {
  briefing_written: when(written, (state, { shift, version, change }) => ({
    ...state,
    shifts: withChanged(state.shifts, shift, (known) => ({
      ...known,
      briefingVersion: version,
      briefingChange: change,
      comeDownVersion: change === 'come_down' ? version : known.comeDownVersion,
    })),
  })),
  briefing_given: when(given, (state, { version, people }) =>
    people.reduce(
      (before, personId) => withBriefed(before, personId, { givenVersion: version }),
      state
    )
  ),
  briefing_signed: when(signed, (state, { version, own }, { personId }) => {
    const wasGiven = briefedOf(state, personId).givenVersion > 0
    return withBriefed(state, personId, {
      signedVersion: version,
      // Who was briefed once has what they sign by their own hand.
      ...(own && wasGiven && { givenVersion: version }),
    })
  }),
}

function withBriefed(state: State, personId: string, versions: Partial<Briefed>): State {
  const { givenVersion, signedVersion } = briefedOf(state, personId)
  const after = {
    givenVersion: Math.max(givenVersion, versions.givenVersion ?? 0),
    signedVersion: Math.max(signedVersion, versions.signedVersion ?? 0),
  }
  return { ...state, briefed: withEntry(state.briefed, personId, after) }
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
  sign_briefing: (state, { personId, args: { version } }) => {
    const shift = openShift(state)
    if (!shift) return { refused: [{ code: 'shift_not_open' }] }
    if (version !== shift.briefingVersion) return { refused: [{ code: 'briefing_changed' }] }
    const own = personId === state.me.personId || !isLead(state)
    const { givenVersion } = briefedOf(state, personId)
    // A lead's phone may also be this person's own, and then it is their hand; only the referee knows.
    const isTheSame = own || givenVersion === 0 || givenVersion >= version
    return isTheSame ? [{ kind: 'briefing_signed', body: { version, own } }] : 'asking'
  },
}
