import { expect, test } from 'vitest'

import { findingsFor } from '@/components/tree/findings'
import type { State } from '@/lib/events/state'
import type { View } from '@/lib/hooks'
import { aClaim, ann, aState, bo, idOf, later, lead, morning } from '../../lib/events/a-state'

const stubs = { result: 'reopened', reason: 'stubs_left', byId: lead, at: later } as const
const begun = { state: 'begun', share: null } as const
const done = { state: 'done', share: null } as const

function viewOf(some: Partial<State>): View {
  const state = aState(some)
  return { state, me: state.me } as unknown as View
}

test('a reopened tree asks for something until it is done again; then only what passed is left', () => {
  const lookedOver = { 7: stubs, 8: { result: 'passed' } as const }

  expect(findingsFor(viewOf({ lookedOver, work: { 7: begun, 8: done } }))).toEqual({
    reopened: [{ tree: 7, reason: 'stubs_left', byId: lead, withId: null }],
    passed: [8],
  })
  expect(findingsFor(viewOf({ lookedOver, work: { 7: done, 8: done } })).reopened).toEqual([])
})

test('it says who has the tree by now, and nothing when that is me', () => {
  const lookedOver = { 7: stubs }
  const withWhom = (some: Partial<State>) =>
    findingsFor(viewOf({ lookedOver, work: { 7: begun }, ...some })).reopened[0]?.withId

  expect(withWhom({ deals: { 7: [bo] } })).toBe(bo)
  expect(withWhom({ deals: { 7: [ann] } })).toBeNull()
  expect(withWhom({ claims: { [idOf('c')]: aClaim(7, { [bo]: 'holder' }) } })).toBe(bo)
  expect(withWhom({ claims: { [idOf('c')]: aClaim(7, { [ann]: 'holder' }) } })).toBeNull()
})

test('the newest come first, and no more than three', () => {
  const at = (minute: number) => morning.replace('00:00', `00:0${minute}`)
  const lookedOver = Object.fromEntries(
    [1, 2, 3, 4].map((tree) => [tree, { ...stubs, at: at(tree) }])
  )
  const work = Object.fromEntries([1, 2, 3, 4].map((tree) => [tree, begun]))

  const { reopened } = findingsFor(viewOf({ lookedOver, work }))

  expect(reopened.map(({ tree }) => tree)).toEqual([4, 3, 2])
})

test('a lead, who hears of all trees, is told of those dealt back to them', () => {
  const me = { personId: lead, role: 'lead' } as const
  const lookedOver = { 7: stubs, 8: stubs }
  const work = { 7: begun, 8: begun }

  const { reopened } = findingsFor(viewOf({ me, lookedOver, work, deals: { 8: [lead] } }))

  expect(reopened.map(({ tree }) => tree)).toEqual([8])
})
