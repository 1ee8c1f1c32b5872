import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { type Numbering, renumbered } from '@/lib/domain/orchard/renumber'
import type { Life, Tree } from '@/lib/domain/orchard/types'

const asItIs: Numbering = {
  firstRow: 1,
  firstPlace: 1,
  rowsBack: false,
  placesBack: false,
  serpentine: false,
  closeUp: false,
}

function tree(no: number, row: number, place: number, life: Life = 'standing'): Tree {
  return {
    ...{ no, row, place, life, block: 1, species: 'apple', cultivar: null, sizeClass: null },
    ...{ plantedYear: null, heightCm: null, trunkCm: null, asksSaw: false, position: null },
  }
}

/** Rows 1, 2 and 4; the second has a hole, and one that was removed. */
const block = [
  tree(11, 1, 1),
  tree(12, 1, 2),
  tree(21, 2, 1),
  tree(23, 2, 3),
  tree(29, 2, 2, 'removed'),
  tree(41, 4, 1),
  tree(42, 4, 2),
]

function numbersOf(numbering: Partial<Numbering>): Record<number, string> {
  const trees = renumbered(block, { ...asItIs, ...numbering })
  return Object.fromEntries(trees.map(({ no, row, place }) => [no, `${row}·${place}`]))
}

describe('numbers', () => {
  test.each<[string, Partial<Numbering>, Record<number, string>]>([
    ['as they are', {}, { 11: '1·1', 12: '1·2', 21: '2·1', 23: '2·3', 41: '4·1', 42: '4·2' }],
    [
      'without holes',
      { closeUp: true },
      { 11: '1·1', 12: '1·2', 21: '2·1', 23: '2·2', 41: '3·1', 42: '3·2' },
    ],
    [
      'from the other side',
      { rowsBack: true },
      { 11: '4·1', 12: '4·2', 21: '3·1', 23: '3·3', 41: '1·1', 42: '1·2' },
    ],
    [
      'from the other end',
      { placesBack: true },
      { 11: '1·2', 12: '1·1', 21: '2·3', 23: '2·1', 41: '4·2', 42: '4·1' },
    ],
    [
      'as one walks them',
      { serpentine: true, closeUp: true },
      { 11: '1·1', 12: '1·2', 21: '2·2', 23: '2·1', 41: '3·1', 42: '3·2' },
    ],
    [
      'from another number on',
      { firstRow: 20, firstPlace: 5, closeUp: true },
      { 11: '20·5', 12: '20·6', 21: '21·5', 23: '21·6', 41: '22·5', 42: '22·6' },
    ],
  ])('%s', (_, numbering, numbers) => {
    expect(numbersOf(numbering)).toEqual(numbers)
  })
})

const someTrees = fc
  .uniqueArray(fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 30 })), {
    selector: String,
    maxLength: 60,
  })
  .map((places) => places.map(([row, place], index) => tree(index + 1, row, place)))

test('no place is given twice, every tree keeps its own number, and twice from the other end is as before', () => {
  fc.assert(
    fc.property(
      someTrees,
      fc.record({
        firstRow: fc.integer({ min: 1, max: 50 }),
        firstPlace: fc.integer({ min: 1, max: 50 }),
        rowsBack: fc.boolean(),
        placesBack: fc.boolean(),
        serpentine: fc.boolean(),
        closeUp: fc.boolean(),
      }),
      (trees, numbering) => {
        const numbered = renumbered(trees, numbering)

        expect(new Set(numbered.map(({ row, place }) => `${row} ${place}`)).size).toBe(trees.length)
        expect(numbered.map(({ no }) => no).sort()).toEqual(trees.map(({ no }) => no).sort())

        const back = { ...asItIs, rowsBack: true, placesBack: true, closeUp: true }
        const moved = (from: readonly Tree[]) => {
          const by = new Map(renumbered(from, back).map((one) => [one.no, one]))
          return from.map((one) => ({ ...one, ...by.get(one.no) }))
        }
        const closed = renumbered(trees, { ...asItIs, closeUp: true })
        const twice = new Map(moved(moved(trees)).map(({ no, row, place }) => [no, [row, place]]))
        for (const { no, row, place } of closed) expect(twice.get(no)).toEqual([row, place])
      }
    ),
    { numRuns: 50 }
  )
})
