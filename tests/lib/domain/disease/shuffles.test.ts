import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { joinCounts, joinMoments } from '@/lib/domain/disease/join-counts'
import { expectedBothSick, shuffle } from '@/lib/domain/disease/shuffles'
import { chanceFrom } from '@/lib/util/chance'

import { allWays, exampleA, grid, sickIn, someChance } from './a-grid'

const oneKind = (trees: number) => new Uint8Array(trees)

describe('five by five with eight sick trees', () => {
  /** By 200,000 permutations elsewhere. */
  test.each([
    ['rook', 0.027],
    ['queen', 0.047],
  ] as const)('as many sick neighbours by chance, %s: %d', (moves, p) => {
    const ground = { neighbours: grid(5, 5, moves), sick: sickIn(exampleA), kinds: oneKind(25) }

    const shuffled = shuffle(ground, 40_000, someChance())

    expect(shuffled.pAtLeast).toBeCloseTo(p, 2)
    expect(Math.abs(shuffled.pAtLeast - p)).toBeLessThan(0.004)
  })

  test('mean and deviation come near the formula', () => {
    const ground = { neighbours: grid(5, 5, 'rook'), sick: sickIn(exampleA), kinds: oneKind(25) }

    const { mean, deviation } = shuffle(ground, 20_000, someChance())

    expect(mean).toBeCloseTo(3.733333, 1)
    expect(deviation).toBeCloseTo(Math.sqrt(1.965042), 1)
  })
})

test('on three by three the chance is that of all 126 ways', () => {
  const neighbours = grid(3, 3, 'rook')
  const sick = sickIn(['110', '110', '000'])
  const ways = allWays(9, 4).map((way) => joinCounts(neighbours, way).bothSick)
  const exact = ways.filter((pairs) => pairs >= 4).length / ways.length

  const shuffled = shuffle({ neighbours, sick, kinds: oneKind(9) }, 30_000, someChance())

  expect(ways).toHaveLength(126)
  expect(shuffled.pAtLeast).toBeCloseTo(exact, 2)
})

test('the same seed gives the same answer, and another one nearly', () => {
  const ground = { neighbours: grid(5, 5, 'rook'), sick: sickIn(exampleA), kinds: oneKind(25) }

  expect(shuffle(ground, 999, chanceFrom(3))).toEqual(shuffle(ground, 999, chanceFrom(3)))
  expect(shuffle(ground, 999, chanceFrom(4)).pAtLeast).not.toBe(
    shuffle(ground, 999, chanceFrom(3)).pAtLeast
  )
})

describe('kinds of tree', () => {
  // The right half are of another kind, and only the left half is ever sick.
  const neighbours = grid(6, 6, 'queen')
  const kinds = Uint8Array.from({ length: 36 }, (_, at) => (at % 6 < 3 ? 0 : 1))
  const sick = sickIn(['100000', '010000', '001000', '100000', '010000', '001000'])

  test('sick trees of one kind are dealt to that kind only', () => {
    const apart = shuffle({ neighbours, sick, kinds }, 4000, someChance())
    const mixed = shuffle({ neighbours, sick, kinds: oneKind(36) }, 4000, someChance())

    expect(apart.mean).toBeGreaterThan(1.5 * mixed.mean)
  })

  test('what is expected exactly is what shuffling comes to', () => {
    const both = Uint8Array.from(sick)
    both[4] = 1
    both[17] = 1
    const ground = { neighbours, sick: both, kinds }

    expect(shuffle(ground, 40_000, someChance()).mean).toBeCloseTo(expectedBothSick(ground), 1)
  })
})

test('with one kind of tree the exact expectation is the formula’s', () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 6 }), fc.nat(), (rows, seed) => {
      const neighbours = grid(rows, 5, 'queen')
      const chance = chanceFrom(seed)
      const sick = Uint8Array.from({ length: rows * 5 }, () => (chance() < 0.3 ? 1 : 0))
      const count = sick.reduce((sum, one) => sum + one, 0)

      const expected = expectedBothSick({ neighbours, sick, kinds: oneKind(rows * 5) })

      expect(expected).toBeCloseTo(joinMoments(neighbours, count).bothSick.mean, 9)
    }),
    { numRuns: 40 }
  )
})
