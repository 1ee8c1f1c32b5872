import { expect, test } from 'vitest'

import { stateOf } from '@/lib/events/snapshot'

import { aState, later, lead } from './a-state'

const packed = {
  done: [1, 3, 7, 7],
  begun: [
    [4, 60],
    [5, null],
  ],
  leftOut: [9],
}
const lookedOver = { passed: [1, 2], reopened: [[4, 'stubs_left', lead, later]] }
const nothing = {
  work: { done: [], begun: [], leftOut: [] },
  lookedOver: { passed: [], reopened: [] },
  hauled: [],
}

test('runs of finished trees are unpacked', () => {
  expect(stateOf({ ...aState(), ...nothing, work: packed })?.work).toEqual({
    1: { state: 'done', share: null },
    2: { state: 'done', share: null },
    3: { state: 'done', share: null },
    4: { state: 'begun', share: 60 },
    5: { state: 'begun', share: null },
    7: { state: 'done', share: null },
    9: { state: 'left_out', share: null },
  })
})

test('runs of passed trees are unpacked, and what was found at reopened ones', () => {
  expect(stateOf({ ...aState(), ...nothing, lookedOver })?.lookedOver).toEqual({
    1: { result: 'passed' },
    2: { result: 'passed' },
    4: { result: 'reopened', reason: 'stubs_left', byId: lead, at: later },
  })
})

test('the state comes through whole', () => {
  expect(stateOf({ ...aState(), ...nothing })).toEqual(aState())
})

test.each([null, 'busy', {}, { ...aState(), work: packed, me: { personId: 'me', role: 'lead' } }])(
  'what is no snapshot is none',
  (told) => {
    expect(stateOf(told)).toBeNull()
  }
)
