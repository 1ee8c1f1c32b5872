import { expect, test } from 'vitest'

import { commandOf } from '@/lib/events/commands'
import { predict } from '@/lib/events/predict'
import { fold } from '@/lib/events/reduce'
import { ann, aState, happened, idOf, later, lead } from './a-state'

const done = { 7: { state: 'done', share: null } } as const
const stubs = { result: 'reopened', reason: 'stubs_left', byId: lead, at: later } as const
const byLead = { personId: lead, byPersonId: lead }

test('a reopened tree is begun and dealt back; what was found is told apart', () => {
  const start = aState({ work: done })
  const body = { tree: 7, to: [ann], work: [[7, 'begun', null]] }
  const leadBody = { tree: 7, result: 'reopened', reason: 'stubs_left' }

  expect(fold(start, happened('tree_looked_over', body, { ...byLead, leadBody }))).toEqual({
    ...start,
    work: { 7: { state: 'begun', share: null } },
    deals: { 7: [ann] },
    dealtBy: { 7: lead },
    lookedOver: { 7: stubs },
  })
})

test('who did not work there hears only that the tree is open again', () => {
  const start = aState({ work: done })
  const body = { tree: 7, work: [[7, 'begun', null]] }

  expect(fold(start, happened('tree_looked_over', body, byLead))).toEqual({
    ...start,
    work: { 7: { state: 'begun', share: null } },
  })
})

test('passed takes the place of what was found before', () => {
  const start = aState({ work: done, lookedOver: { 7: stubs } })
  const leadBody = { tree: 7, result: 'passed' }

  expect(fold(start, happened('tree_looked_over', null, { ...byLead, leadBody }))).toEqual({
    ...start,
    lookedOver: { 7: { result: 'passed' } },
  })
})

test('who heard of findings fetches again when somebody is removed: they may be theirs', () => {
  const gone = happened('person_removed', { person: idOf('cy') }, byLead)

  expect(fold(aState({ lookedOver: { 7: { result: 'passed' } } }), gone)).toBe('fetch again')
  expect(fold(aState(), gone)).not.toBe('fetch again')
})

test.each([
  ['a pass is expected', { tree: 7, result: 'passed' }, ['tree_looked_over']],
  ['to whom a tree goes back, only the referee knows', { tree: 7, ...reopened() }, 'asking'],
  ['what is not done is not looked over', { tree: 8, result: 'passed' }, ['tree_not_done']],
] as const)('%s', (_, args, expected) => {
  const state = aState({ work: done, me: { personId: lead, role: 'lead' } })
  const whose = { id: idOf('command'), orchardId: state.orchardId, personId: lead }

  const prediction = predict(state, commandOf('look_over', args, whose), { now: later })

  const said =
    prediction === 'asking'
      ? prediction
      : 'refused' in prediction
        ? prediction.refused.map(({ code }) => code)
        : prediction.map(({ kind }) => kind)
  expect(said).toEqual(expected)
})

function reopened() {
  return { result: 'reopened', reason: 'stubs_left' } as const
}
