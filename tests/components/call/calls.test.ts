import { expect, test } from 'vitest'

import { callKindOf } from '@/components/call/call-kinds'
import { openFirst, withWords } from '@/components/call/calls-in-order'
import { draftOf } from '@/components/call/incident-draft'
import { incidentKinds } from '@/components/call/incident-kinds'
import { incidentKinds as known } from '@/lib/events/shapes'
import type { Call } from '@/lib/events/state'
import type { CallRead } from '@/lib/hooks'

const morning = '2027-02-27T10:00:00.000Z'
const later = '2027-02-27T10:05:00.000Z'
const call: Call = {
  kind: 'question',
  tree: 7,
  subject: null,
  calledBy: 'ann',
  calledAt: morning,
  answeredBy: null,
  answeredAt: null,
}
const words = { note: null, outcome: null, hasIncident: false, endedBy: null, endedAt: null }
const ended = { endedBy: 'lee', endedAt: later }

test('an open call is as the state says, with the words that were read of it', () => {
  const read: CallRead[] = [{ ...call, call: 'c', ...words, note: 'Is this limb dead?' }]
  const state = { c: { ...call, answeredBy: 'lee', answeredAt: later } }
  expect(withWords(state, read)).toEqual([
    {
      ...call,
      ...words,
      call: 'c',
      note: 'Is this limb dead?',
      answeredBy: 'lee',
      answeredAt: later,
    },
  ])
})

test('without signal the open calls are there, and a call ended here is not open any more', () => {
  expect(withWords({ c: call }, []).map((each) => each.call)).toEqual(['c'])
  const read = [{ ...call, call: 'c', ...words }]
  expect(withWords({}, read)).toEqual([])
})

test('open calls stand grave and old first, ended ones the newest first', () => {
  const at = (id: string, change: Partial<CallRead>): CallRead => ({
    ...call,
    ...words,
    call: id,
    ...change,
  })
  const { open, ended: over } = openFirst([
    at('late', { calledAt: later }),
    at('hurt', { kind: 'injury', calledAt: later }),
    at('early', {}),
    at('over', ended),
    at('over later', { ...ended, calledAt: later }),
  ])
  expect(open.map((each) => each.call)).toEqual(['hurt', 'early', 'late'])
  expect(over.map((each) => each.call)).toEqual(['over later', 'over'])
})

test('an incident takes over from a call what it was and where, and none of its words', () => {
  expect(draftOf({ kind: 'injury', tree: 7 }, '10:00')).toEqual({
    kind: 'injury',
    time: '10:00',
    tree: 7,
    note: '',
  })
  expect(draftOf({ kind: 'question', tree: 7 }, '10:00').kind).toBeNull()
  expect(draftOf(null, '10:00')).toEqual({ kind: null, time: '10:00', tree: null, note: '' })
})

test('every kind of incident that the referee takes can be picked', () => {
  expect([...incidentKinds].sort()).toEqual([...known].sort())
})

test('an address names a kind of call, or none', () => {
  expect(callKindOf('injury')).toBe('injury')
  expect(callKindOf('boredom')).toBeNull()
  expect(callKindOf(null)).toBeNull()
})
