import { expect, test } from 'vitest'

import { leavableIn } from '@/components/crew/leave-out'
import type { State } from '@/lib/events/state'

import { aBlock, treesOf } from '../../lib/domain/an-orchard'
import { aClaim, ann, aState, bo } from '../../lib/events/a-state'

const block = aBlock()
const trees = treesOf(['TTTT', 'TTTT'])
const ground = {
  trees: new Map(trees.map((tree) => [tree.no, tree])),
  blocks: new Map([[block.no, block]]),
}

const all = trees.map(({ no }) => no)
const leavable = (change: Partial<State>) => leavableIn({ state: aState(change), ground }, all)

test('what nobody is at, kept for or done with can be left out', () => {
  const found = leavable({
    claims: { c: aClaim(2, { [bo]: 'holder' }) },
    deals: { 3: [ann] },
    work: { 4: { state: 'done', share: null }, 5: { state: 'begun', share: 50 } },
  })

  expect(found.can).toEqual([1, 5, 6, 7, 8])
  expect(found.stay).toEqual([
    { code: 'tree_in_progress', trees: [2], people: [bo] },
    { code: 'dealt_to_another', trees: [3], people: [ann] },
    { code: 'tree_done', trees: [4], people: [] },
  ])
})

test('a row whose brush somebody hauls stays whole', () => {
  const found = leavable({
    claims: {
      c: { ...aClaim(0, { [bo]: 'holder' }), tree: null, row: { block: 1, row: 2 }, kind: 'brush' },
    },
  })

  expect(found.can).toEqual([1, 2, 3, 4])
})

test('what is left out can come back', () => {
  const found = leavable({ work: { 6: { state: 'left_out', share: null } } })

  expect(found.out).toEqual([6])
  expect(found.can).not.toContain(6)
})
