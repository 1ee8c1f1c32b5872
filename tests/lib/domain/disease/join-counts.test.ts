import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { joinCounts, joinMoments, zOf } from '@/lib/domain/disease/join-counts'
import { countJoinPairs, countJoins, neighboursAt } from '@/lib/domain/disease/neighbours'

import { allWays, exampleA, grid, meanAndVariance, sickIn } from './a-grid'

/** Computed from the formulas and checked by 200,000 permutations elsewhere; to 1e-6. */
describe('five by five with eight sick trees', () => {
  const cases = {
    rook: {
      shape: [40, 94],
      counts: { bothSick: 7, oneSick: 10, noneSick: 23 },
      means: [3.733333, 18.133333, 18.133333],
      variances: [1.965042, 7.268863, 3.02939],
      zs: [2.330338, -3.016722, 2.796109],
    },
    queen: {
      shape: [72, 384],
      counts: { bothSick: 11, oneSick: 20, noneSick: 41 },
      means: [6.72, 32.64, 32.64],
      variances: [4.298675, 13.126526, 11.621388],
      zs: [2.064317, -3.488769, 2.452321],
    },
  } as const

  test.each(['rook', 'queen'] as const)('counts and moments, %s', (moves) => {
    const neighbours = grid(5, 5, moves)
    const expected = cases[moves]

    const counts = joinCounts(neighbours, sickIn(exampleA))
    const moments = joinMoments(neighbours, 8)

    expect([countJoins(neighbours), countJoinPairs(neighbours)]).toEqual(expected.shape)
    expect(counts).toEqual(expected.counts)
    for (const [at, key] of (['bothSick', 'oneSick', 'noneSick'] as const).entries()) {
      expect(moments[key].mean).toBeCloseTo(expected.means[at] ?? 0, 6)
      expect(moments[key].variance).toBeCloseTo(expected.variances[at] ?? 0, 6)
      expect(zOf(counts[key], moments[key])).toBeCloseTo(expected.zs[at] ?? 0, 6)
    }
  })
})

test.each([2, 3, 4, 5])(
  'on three by three, every way of %s sick gives the moments exactly',
  (sick) => {
    for (const moves of ['rook', 'queen'] as const) {
      const neighbours = grid(3, 3, moves)
      const ways = allWays(9, sick).map((way) => joinCounts(neighbours, way))
      const moments = joinMoments(neighbours, sick)

      for (const key of ['bothSick', 'oneSick', 'noneSick'] as const) {
        const exact = meanAndVariance(ways.map((way) => way[key]))
        expect(moments[key].mean).toBeCloseTo(exact.mean, 10)
        expect(moments[key].variance).toBeCloseTo(exact.variance, 10)
      }
    }
  }
)

test('every join is of one of the three kinds, whoever is sick', () => {
  const orchards = fc.record({
    rows: fc.integer({ min: 1, max: 6 }),
    places: fc.integer({ min: 1, max: 6 }),
    sick: fc.array(fc.boolean(), { minLength: 36, maxLength: 36 }),
  })
  fc.assert(
    fc.property(orchards, ({ rows, places, sick }) => {
      const neighbours = grid(rows, places, 'queen')
      const own = Uint8Array.from(sick.slice(0, rows * places), Number)

      const { bothSick, oneSick, noneSick } = joinCounts(neighbours, own)

      expect(bothSick + oneSick + noneSick).toBe(countJoins(neighbours))
      let ends = 0
      own.forEach((isSick, at) => {
        if (isSick) ends += neighboursAt(neighbours, at).length
      })
      expect(2 * bothSick + oneSick).toBe(ends)
    }),
    { numRuns: 60 }
  )
})
