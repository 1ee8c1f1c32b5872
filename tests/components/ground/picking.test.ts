import { expect, test } from 'vitest'

import { toggled, treesInRange } from '@/components/ground/picking'
import type { Tree } from '@/lib/domain/orchard/types'

const trees = Array.from({ length: 12 }, (_, index) => ({
  no: index + 1,
  row: 1 + Math.floor(index / 4),
  place: 1 + (index % 4),
})) as Tree[]
const open = { rowFrom: null, rowTo: null, placeFrom: null, placeTo: null }

test('rows and places from and to; an open end goes to the last', () => {
  expect(treesInRange(trees, { ...open, rowFrom: 2, rowTo: 2 })).toEqual([5, 6, 7, 8])
  expect(treesInRange(trees, { ...open, rowFrom: 2, placeTo: 1 })).toEqual([5, 9])
  expect(treesInRange(trees, open)).toHaveLength(12)
  expect(treesInRange(trees, { ...open, rowFrom: 9 })).toEqual([])
})

test('a row that is picked whole is dropped, else the rest of it is picked', () => {
  expect(toggled([1, 2], [2, 3])).toEqual([1, 2, 3])
  expect(toggled([1, 2, 3], [2, 3])).toEqual([1])
  expect(toggled([1], [])).toEqual([1])
})
