import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { besideEachOther } from '@/lib/domain/disease/beside'
import { countJoins, neighboursAt } from '@/lib/domain/disease/neighbours'
import { step } from '@/lib/domain/orchard/distance'
import { type Block, stands, type Tree } from '@/lib/domain/orchard/types'

import { aBlock, aTree, someField, surveyed, treesOf } from '../an-orchard'

const block = aBlock()

/** Plates of the trees beside the one at this row and place. */
function beside(trees: readonly Tree[], blocks: readonly Block[], row: number, place: number) {
  const standing = trees.filter(stands)
  const at = standing.findIndex((tree) => tree.row === row && tree.place === place)
  return [...neighboursAt(besideEachOther(standing, blocks), at)]
    .flatMap((other) => standing[other] ?? [])
    .map((tree) => `${tree.block}/${tree.row}·${tree.place}`)
    .toSorted()
}

describe('in a block', () => {
  test('eight trees stand beside one in the middle, three beside one in a corner', () => {
    const trees = treesOf(['TTT', 'TTT', 'TTT'])

    expect(beside(trees, [block], 2, 2)).toHaveLength(8)
    expect(beside(trees, [block], 1, 1)).toEqual(['1/1·2', '1/2·1', '1/2·2'])
  })

  test('a gap and a missing row let nothing through, a dead tree does', () => {
    expect(beside(treesOf(['T.TT']), [block], 1, 1)).toEqual([])
    expect(beside(treesOf(['TTT', 'RRR', 'TTT']), [block], 1, 2)).toEqual(['1/1·1', '1/1·3'])
    expect(beside(treesOf(['TDT']), [block], 1, 1)).toEqual(['1/1·2'])
  })

  test('where a row starts two places further on, positions say what lies beside what', () => {
    const first = surveyed(treesOf(['TTTTT']), block)
    const shifted = Array.from({ length: 3 }, (_, at) =>
      aTree({ no: 10 + at, row: 2, place: at + 1, position: spotAt(2, at + 3) })
    )

    expect(beside([...first, ...shifted], [block], 2, 1)).toEqual([
      '1/1·2',
      '1/1·3',
      '1/1·4',
      '1/2·2',
    ])
  })

  test('a phone that is four metres off changes nothing', () => {
    const exact = surveyed(treesOf(['TTTTT', 'TTTTT', 'TTTTT']), block)
    const rough = exact.map((tree, at) => ({
      ...tree,
      position: tree.position && step(tree.position, at * 77, 4),
    }))

    for (const place of [1, 3, 5])
      expect(beside(rough, [block], 2, place)).toEqual(beside(exact, [block], 2, place))
  })
})

describe('between blocks', () => {
  const east = aBlock({ no: 2, firstTree: step(someField, 90, 12) })
  const far = aBlock({ no: 2, firstTree: step(someField, 90, 30) })
  const unknown = aBlock({ no: 2, firstTree: null, bearingDeg: null })
  const west = treesOf(['TT', 'TT', 'TT'])

  test('trees that are as near as the next row stand beside each other', () => {
    const trees = [...west, ...treesOf(['TT'], east, 20)]

    expect(beside(trees, [block, east], 3, 1)).toContain('2/1·1')
    expect(beside(trees, [block, east], 2, 1)).not.toContain('2/1·1')
  })

  test('further away, or where nobody knows the place, they do not', () => {
    for (const other of [far, unknown])
      expect(beside([...west, ...treesOf(['TT'], other, 20)], [block, other], 3, 1)).toEqual(
        beside(west, [block], 3, 1)
      )
  })
})

test('beside is mutual, and in a full block there are as many joins as one counts', () => {
  const sizes = fc.record({
    rows: fc.integer({ min: 1, max: 7 }),
    places: fc.integer({ min: 1, max: 7 }),
  })
  fc.assert(
    fc.property(sizes, ({ rows, places }) => {
      const trees = treesOf(Array.from({ length: rows }, () => 'T'.repeat(places)))
      const neighbours = besideEachOther(trees, [block])

      const along = rows * (places - 1)
      const across = (rows - 1) * places
      const corners = 2 * (rows - 1) * (places - 1)
      expect(countJoins(neighbours)).toBe(along + across + corners)
      for (let at = 0; at < trees.length; at++)
        for (const other of neighboursAt(neighbours, at))
          expect([...neighboursAt(neighbours, other)]).toContain(at)
    }),
    { numRuns: 40 }
  )
})

function spotAt(row: number, place: number) {
  return step(step(someField, 0, (place - 1) * 4), 90, (row - 1) * 4)
}
