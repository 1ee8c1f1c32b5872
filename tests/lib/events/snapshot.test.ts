import { expect, test } from 'vitest'

import { stateOf } from '@/lib/events/snapshot'

import { aState } from './a-state'

const packed = {
  done: [1, 3, 7, 7],
  begun: [
    [4, 60],
    [5, null],
  ],
  leftOut: [9],
}

test('runs of finished trees are unpacked', () => {
  expect(stateOf({ ...aState(), work: packed })?.work).toEqual({
    1: { state: 'done', share: null },
    2: { state: 'done', share: null },
    3: { state: 'done', share: null },
    4: { state: 'begun', share: 60 },
    5: { state: 'begun', share: null },
    7: { state: 'done', share: null },
    9: { state: 'left_out', share: null },
  })
})

test('the state comes through whole', () => {
  const { work, ...rest } = aState()

  expect(stateOf({ ...rest, work: { done: [], begun: [], leftOut: [] } })).toEqual({
    ...rest,
    work,
  })
})

test.each([null, 'busy', {}, { ...aState(), work: packed, me: { personId: 'me', role: 'lead' } }])(
  'what is no snapshot is none',
  (told) => {
    expect(stateOf(told)).toBeNull()
  }
)
