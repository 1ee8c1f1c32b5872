import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { step } from '@/lib/domain/orchard/distance'
import { stands, type Tree } from '@/lib/domain/orchard/types'
import { groundOf } from '@/lib/domain/planning/ground'
import { walksFrom } from '@/lib/domain/planning/walk'

import { aBlock, someField, treesOf } from '../an-orchard'

// Rows run north, row 2 is east of row 1, four metres between everything.
const block = aBlock()

function metresBetween(trees: Tree[], from: [number, number], to: [number, number]): number {
  const noAt = ([row, place]: [number, number]) =>
    trees.find((tree) => tree.row === row && tree.place === place)?.no ?? Number.NaN
  return walksFrom(groundOf(trees, [block]), noAt(from))(noAt(to))
}

describe('on foot', () => {
  const five = treesOf(['TTTTT', 'TTTTT', 'TTTTT', 'TTTTT'])

  test.each<[string, [number, number], [number, number], number]>([
    ['along a row', [1, 1], [1, 4], 12],
    ['straight across an alley', [1, 3], [2, 3], 4],
    ['across an alley and along it', [1, 1], [2, 4], 16],
    ['round the near end of one row', [1, 1], [3, 1], 2 + 2 + 8],
    ['round the far end, where that is nearer', [1, 5], [3, 4], 2 + 6 + 8],
    ['round the ends of two rows', [1, 2], [4, 2], 6 + 6 + 12],
  ])('%s', (_, from, to, metres) => {
    expect(metresBetween(five, from, to)).toBeCloseTo(metres, 2)
  })

  test('a row whose trees are gone is no wall, and nor is a gap at its end', () => {
    expect(metresBetween(treesOf(['TTTTT', 'RR.RR', 'TTTTT']), [1, 3], [3, 3])).toBeCloseTo(8, 2)
    expect(metresBetween(treesOf(['TTTTT', '..TTT', 'TTTTT']), [1, 2], [3, 2])).toBeCloseTo(8, 2)
  })

  test('a gap within a row is still no way through', () => {
    expect(metresBetween(treesOf(['TTTTT', 'TT.TT', 'TTTTT']), [1, 3], [3, 3])).toBeCloseTo(28, 2)
  })

  test('a dead tree stands in the way like any other', () => {
    expect(metresBetween(treesOf(['TTTTT', 'DDDDD', 'TTTTT']), [1, 3], [3, 3])).toBeCloseTo(28, 2)
  })

  test('to another block one leaves by the nearer end of the row', () => {
    const north = aBlock({ no: 2, firstTree: step(someField, 0, 100) })
    const trees = [...treesOf(['TTTTT'], block), ...treesOf(['TTT'], north, 6)]

    const walk = walksFrom(groundOf(trees, [block, north]), 4)

    expect(walk(8)).toBeCloseTo(108 - 12, 2)
  })

  test('a tree nobody knows is infinitely far', () => {
    expect(walksFrom(groundOf(five, [block]), 999)(1)).toBe(Number.POSITIVE_INFINITY)
    expect(walksFrom(groundOf(five, [block]), 1)(999)).toBe(Number.POSITIVE_INFINITY)
  })
})

test('no way that obeys the rule is shorter (every path tried, metre by metre)', () => {
  const row = fc.string({
    unit: fc.constantFrom('T', 'T', 'T', '.', 'R', 'D'),
    minLength: 6,
    maxLength: 6,
  })
  const orchards = fc.array(row, { minLength: 3, maxLength: 6 })

  fc.assert(
    fc.property(orchards, fc.nat(), fc.nat(), (rows, a, b) => {
      const trees = treesOf(rows)
      const from = trees[a % trees.length]
      const to = trees[b % trees.length]
      if (!from || !to) return

      const metres = walksFrom(groundOf(trees, [block]), from.no)(to.no)

      expect(metres).toBeCloseTo(shortestM(trees, from, to), 1)
    }),
    { numRuns: 300 }
  )
})

/** Breadth first over (alley, metre): alley k lies between rows k and k + 1. */
function shortestM(trees: Tree[], from: Tree, to: Tree): number {
  const alongOf = (tree: Tree) => (tree.place - 1) * 4
  const isOpen = (row: number, alongM: number) => {
    const standing = trees.filter((tree) => tree.row === row && stands(tree)).map(alongOf)
    return (
      standing.length === 0 ||
      alongM <= Math.min(...standing) - 2 ||
      alongM >= Math.max(...standing) + 2
    )
  }
  const rows = Math.max(...trees.map((tree) => tree.row))
  const walked = new Map<string, number>()
  let edge: [number, number, number][] = [from.row - 1, from.row].map((alley) => [
    alley,
    alongOf(from),
    0,
  ])
  while (edge.length > 0) {
    const [[alley, alongM, metres] = [0, 0, 0], ...rest] = edge.toSorted((x, y) => x[2] - y[2])
    edge = rest
    const key = `${alley} ${alongM}`
    if (walked.has(key) || alongM < -3 || alongM > 23) continue
    walked.set(key, metres)
    edge.push([alley, alongM - 1, metres + 1], [alley, alongM + 1, metres + 1])
    if (alley > 0 && isOpen(alley, alongM)) edge.push([alley - 1, alongM, metres])
    if (alley < rows && isOpen(alley + 1, alongM)) edge.push([alley + 1, alongM, metres])
  }
  const along = [to.row - 1, to.row].map(
    (alley) => walked.get(`${alley} ${alongOf(to)}`) ?? Infinity
  )
  return Math.min(...along) + Math.abs(to.row - from.row) * 4
}
