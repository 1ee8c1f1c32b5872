/** Calls for help, as phones fold and predict them. */

import { describe, expect, test } from 'vitest'

import { commandOf } from '@/lib/events/commands'
import { foldPredicted, predict } from '@/lib/events/predict'
import { fold } from '@/lib/events/reduce'
import type { Call, State } from '@/lib/events/state'
import { ann, aState, bo, happened, idOf, later, lead, morning } from './a-state'

const callId = idOf('call')
const whose = { id: callId, orchardId: idOf('orchard'), personId: ann }

function aCall(change: Partial<Call> = {}): Call {
  return {
    kind: 'injury',
    tree: 7,
    subject: null,
    calledBy: ann,
    calledAt: morning,
    answeredBy: null,
    answeredAt: null,
    ...change,
  }
}

const asLead: Partial<State> = { me: { personId: lead, role: 'lead' } }

describe('a call as it is heard', () => {
  test('has the caller and the time of its event where it says neither', () => {
    const after = fold(aState(), happened('call_made', { call: callId, kind: 'tool' }))
    expect(after).toMatchObject({
      calls: { [callId]: aCall({ kind: 'tool', tree: null, calledAt: later }) },
    })
  })

  test('is answered, and ended by whatever event says so', () => {
    const before = aState({ calls: { [callId]: aCall() } })
    const answer = { call: callId, answeredBy: lead, answeredAt: later }

    const answered = fold(before, happened('call_answered', answer))
    expect(answered).toMatchObject({ calls: { [callId]: { answeredBy: lead, answeredAt: later } } })
    const ended = fold(before, happened('call_ended', { callsEnded: [callId] }))
    expect(ended).toMatchObject({ calls: {} })
    const removed = happened('person_removed', { person: bo, callsEnded: [callId] })
    expect(fold(before, removed)).toMatchObject({ calls: {} })
  })

  test('that is not known here changes nothing when it is answered or ended', () => {
    const before = aState()
    const answer = { call: callId, answeredBy: lead, answeredAt: later }
    expect(fold(before, happened('call_answered', answer))).toEqual(before)
    expect(fold(before, happened('call_ended', { callsEnded: [callId] }))).toEqual(before)
  })
})

describe('a call as it is expected', () => {
  test('is seen at once, whatever the state, with the time it was made', () => {
    const at = '2027-01-16T08:40:00.000Z'
    const command = commandOf('call_for_help', { kind: 'injury', tree: 7, at }, whose)
    const after = foldPredicted(aState({ shifts: {}, attendance: {} }), command, later)
    expect(after.calls).toEqual({ [callId]: aCall({ calledAt: at }) })
  })

  test('names somebody only when that one is lost', () => {
    const told = (kind: 'injury' | 'lost_person') =>
      foldPredicted(aState(), commandOf('call_for_help', { kind, subject: bo }, whose), later)
        .calls[callId]?.subject
    expect(told('lost_person')).toBe(bo)
    expect(told('injury')).toBe(null)
  })

  test('keeps the time of the first answer, and who answered last', () => {
    const known = aCall({ answeredBy: bo, answeredAt: morning })
    const before = aState({ ...asLead, calls: { [callId]: known } })
    const answer = commandOf('answer_call', { call: callId }, { ...whose, personId: lead })
    expect(foldPredicted(before, answer, later).calls[callId]).toEqual({
      ...known,
      answeredBy: lead,
    })
  })

  test('is ended by its caller or a lead; another is refused already here', () => {
    const calls = { [callId]: aCall({ kind: 'lost_person' }) }
    const end = (personId: string) =>
      commandOf('end_call', { call: callId }, { ...whose, personId })
    const now = { now: later }
    expect(foldPredicted(aState({ calls }), end(ann), later).calls).toEqual({})
    expect(foldPredicted(aState({ ...asLead, calls }), end(lead), later).calls).toEqual({})
    const asBo = { me: { ...aState().me, personId: bo } }
    expect(predict(aState({ ...asBo, calls }), end(bo), now)).toEqual({
      refused: [{ code: 'not_yours' }],
    })
    // Somebody whom this phone serves as well: one of them may lead, and the phone does not know.
    expect(predict(aState({ calls }), end(bo), now)).toBe('asking')
  })
})
