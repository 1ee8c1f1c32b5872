import { describe, expect, test } from 'vitest'

import { commandOf } from '@/lib/events/commands'
import { foldPredicted, predict } from '@/lib/events/predict'
import { fold } from '@/lib/events/reduce'

import { ann, aState, happened, idOf, later, lead } from './a-state'

const mark = idOf('mark')
const photo = idOf('photo')
const marked = { 9: { mark, by: lead, photo: null } }

describe('the photo of what was marked', () => {
  test('comes by itself, maybe long after', () => {
    const after = fold(aState({ marked }), happened('photo_added', { photo, tree: 9, mark }))
    expect(after).toMatchObject({ marked: { 9: { mark, by: lead, photo } } })
  })

  test.each([
    ['of an older mark', { photo, tree: 9, mark: idOf('older mark') }],
    ['of a tree that is not marked any more', { photo, tree: 8, mark }],
    ['of something else, which only leads hear of', { photo, tree: 9, purpose: 'before' }],
  ])('%s changes nothing', (_, body) => {
    const state = aState({ marked })
    expect(fold(state, happened('photo_added', body))).toEqual(state)
  })
})

test('who marked the big cuts is known, and that no photo has come yet', () => {
  const after = fold(aState({ marked: {} }), happened('big_cuts_marked', { tree: 9 }))
  const expected = { mark: idOf('command'), by: ann, photo: null }
  expect(after).toMatchObject({ marked: { 9: expected } })
})

test('marks are taken off again', () => {
  const after = fold(aState({ marked }), happened('big_cuts_unmarked', { tree: 9 }))
  expect(after).toMatchObject({ marked: {} })
})

test('a mark and its photo are seen before they are sent', () => {
  const whose = { orchardId: idOf('orchard'), personId: lead }
  const marking = commandOf('mark_big_cuts', { tree: 5 }, { id: mark, ...whose })
  const picture = { mark, purpose: 'mark', jpeg: '/9j/' } as const
  const adding = commandOf('add_photo', picture, { id: photo, ...whose })

  const before = foldPredicted(aState({ marked: {} }), marking, later)

  expect(before.marked).toEqual({ 5: { mark, by: lead, photo: null } })
  expect(foldPredicted(before, adding, later).marked).toEqual({ 5: { mark, by: lead, photo } })
})

test('nothing is marked where no round is open', () => {
  const whose = { id: mark, orchardId: idOf('orchard'), personId: lead }
  const marking = commandOf('mark_big_cuts', { tree: 5 }, whose)
  const prediction = predict(aState({ workRoundId: null }), marking, { now: later })
  expect(prediction).toEqual({ refused: [{ code: 'no_round' }] })
})
