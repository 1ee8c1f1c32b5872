import { expect, test } from 'vitest'

import type { Block, Tree } from '@/lib/domain/orchard/types'
import type { State } from '@/lib/events/state'
import { brushOfRow, brushRows, rowsToHaul } from '@/lib/state/brush'
import { startingView, type View } from '@/lib/state/view'
import { aClaim, aFlag, ann, aState, bo, idOf } from '../events/a-state'

const block: Block = {
  no: 1,
  code: 'A',
  name: 'Long Piece',
  rowSpacingM: 6,
  treeSpacingM: 5,
  bearingDeg: null,
  firstTree: null,
  taggedEnd: 'low',
}
const trees = Array.from({ length: 30 }, (_, i) => ({
  no: i + 1,
  block: 1,
  row: 1 + Math.floor(i / 10),
  place: 1 + (i % 10),
  species: 'apple',
  cultivar: null,
  sizeClass: null,
  plantedYear: null,
  heightCm: 220,
  trunkCm: null,
  asksSaw: false,
  life: 'standing',
  position: null,
})) as unknown as Tree[]
const done = { state: 'done', share: null } as const

function viewOf(some: Partial<State>): View {
  const state = aState(some)
  return {
    ...startingView,
    state,
    me: { ...startingView.memberships[0], personId: ann } as View['me'],
    ground: {
      blocks: new Map([[1, block]]),
      trees: new Map(trees.map((tree) => [tree.no, tree])),
    },
  }
}
const rowClaim = (row: number, people: State['claims'][string]['people']) => ({
  ...aClaim(0, people),
  tree: null,
  row: { block: 1, row },
  kind: 'brush' as const,
})

test('wood lies under pruned trees that nobody hauled; a row where nothing happened is not listed', () => {
  const view = viewOf({ work: { 1: done, 2: done, 11: done }, hauled: { 2: true } })

  const rows = brushRows(view)

  expect(rows.map(({ row, open, hauled }) => ({ row, open, hauled }))).toEqual([
    { row: 1, open: [1], hauled: [2] },
    { row: 2, open: [11], hauled: [] },
  ])
})

test('wood near a hazard is told apart, and diseased trees of the row are named', () => {
  const flags = { [idOf('a')]: aFlag(3, 'arborist'), [idOf('d')]: aFlag(9, 'disease') }
  const row = brushOfRow(viewOf({ work: { 2: done, 8: done }, flags }), 1, 1)

  expect(row).toMatchObject({ open: [8], closed: [2], sick: [9] })
})

test('ladder work in the row or beside it is told, further away it is not', () => {
  const claims = (tree: number) => ({
    [idOf('c')]: { ...aClaim(tree, { [bo]: 'holder' }), ladder: true },
  })
  const overheadAt = (tree: number) =>
    brushOfRow(viewOf({ work: { 1: done }, claims: claims(tree) }), 1, 1)?.overhead

  expect(overheadAt(5)).toEqual([{ tree: 5, personId: bo }])
  expect(overheadAt(15)).toEqual([{ tree: 15, personId: bo }])
  expect(overheadAt(25)).toEqual([])
})

test('rows that nobody hauls come before those one joins, and rows of a stopped block not at all', () => {
  const claims = { [idOf('c')]: rowClaim(1, { [bo]: 'holder' }) }
  const work = { 1: done, 11: done }
  const rowsOf = (some: Partial<State>) =>
    rowsToHaul(viewOf({ work, claims, ...some }), null).map(({ row }) => row)

  expect(rowsOf({})).toEqual([2, 1])
  const stop = { block: 1, calledBy: bo, calledAt: '', resumed: false, answers: {}, seenBy: {} }
  expect(rowsOf({ stops: { [idOf('s')]: stop } })).toEqual([])
})
