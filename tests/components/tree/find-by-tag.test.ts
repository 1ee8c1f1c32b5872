import { describe, expect, test } from 'vitest'

import { findByTag, treeAtEnd } from '@/components/tree/find-by-tag'
import { treeNumber } from '@/components/tree/tree-number'
import { treesOf } from '../../lib/domain/an-orchard'

const trees = treesOf(['TT.T', ' TR '])

describe('a tree by its tag', () => {
  test.each([
    { row: '1', place: '4', found: { state: 'found' } },
    { row: ' 2 ', place: '2', found: { state: 'found' } },
    { row: '3', place: '1', found: { state: 'no_row', first: 1, last: 2 } },
    { row: '', place: '1', found: { state: 'no_row', first: 1, last: 2 } },
    { row: '1', place: '9', found: { state: 'no_place', row: 1, first: 1, last: 4 } },
    { row: '2', place: '1', found: { state: 'no_place', row: 2, first: 2, last: 3 } },
    { row: '1', place: 'x', found: { state: 'no_place' } },
    { row: '1', place: '3', found: { state: 'no_tree', row: 1, place: 3 } },
    { row: '2', place: '3', found: { state: 'no_tree', row: 2, place: 3 } },
  ])('row "$row", tree "$place": $found.state', ({ row, place, found }) => {
    expect(findByTag(trees, { block: 1, row, place })).toMatchObject(found)
  })

  test('another block has none of these trees', () => {
    expect(findByTag(trees, { block: 2, row: '1', place: '1' }).state).toBe('no_row')
  })
})

test.each([
  { taggedEnd: 'low', end: 'tagged', place: 1 },
  { taggedEnd: 'low', end: 'far', place: 4 },
  { taggedEnd: 'high', end: 'tagged', place: 4 },
  { taggedEnd: 'high', end: 'far', place: 1 },
] as const)(
  'the $end end where tags hang at the $taggedEnd places',
  ({ taggedEnd, end, place }) => {
    expect(treeAtEnd(trees, { block: { no: 1, taggedEnd }, row: 1, end })?.place).toBe(place)
  }
)

test.each([
  ['12', 12],
  ['0', null],
  ['-3', null],
  ['1e3', null],
  ['12345678901', null],
  [['1', '2'], null],
  [undefined, null],
])('%j in an address is tree %j', (text, no) => {
  expect(treeNumber(text)).toBe(no)
})
