import { moranIndex } from '@turf/moran-index'
import { describe, expect, test } from 'vitest'

import { moranOf } from '@/lib/domain/disease/moran'
import { neighboursFrom } from '@/lib/domain/disease/neighbours'

import { exampleA, grid, meanAndVariance, valuesOf } from './a-grid'

const z = (i: number, mean: number, variance: number) => (i - mean) / Math.sqrt(variance)
const values = valuesOf(exampleA)

/** Cliff and Ord's formulas, worked elsewhere; to 1e-6. */
describe('five by five with eight sick trees', () => {
  test.each([
    ['rook', 0.39246324, 0.02140091, 0.02262104, 2.967588, 2.886446],
    ['queen', 0.31484886, 0.00993441, 0.01046953, 3.576904, 3.484294],
  ] as const)('%s', (moves, i, normality, randomisation, zNormality, zRandomisation) => {
    const moran = moranOf(grid(5, 5, moves), values)

    expect(moran?.i).toBeCloseTo(i, 7)
    expect(moran?.mean).toBeCloseTo(-1 / 24, 12)
    expect(moran?.varianceNormality).toBeCloseTo(normality, 7)
    expect(moran?.varianceRandomisation).toBeCloseTo(randomisation, 7)
    expect(z(moran?.i ?? 0, -1 / 24, moran?.varianceNormality ?? 0)).toBeCloseTo(zNormality, 6)
    expect(z(moran?.i ?? 0, -1 / 24, moran?.varianceRandomisation ?? 0)).toBeCloseTo(
      zRandomisation,
      6
    )
  })

  test('the same as @turf/moran-index, whose variance is the one under normality', () => {
    const moran = moranOf(grid(5, 5, 'rook'), values)
    const turf = turfMoran(values, 5)

    expect(moran?.i).toBeCloseTo(turf.moranIndex, 12)
    expect(Math.sqrt(moran?.varianceNormality ?? 0)).toBeCloseTo(turf.stdNorm, 12)
    expect(z(moran?.i ?? 0, moran?.mean ?? 0, moran?.varianceNormality ?? 0)).toBeCloseTo(
      turf.zNorm,
      9
    )
  })
})

test('one to six in a line: 0.6, and its variance is that of all 720 orders', () => {
  const line = neighboursFrom(6, [
    [0, 1],
    [1, 2],
    [2, 3],
    [3, 4],
    [4, 5],
  ])
  const moran = moranOf(line, [1, 2, 3, 4, 5, 6])
  const all = ordersOf([1, 2, 3, 4, 5, 6]).map((order) => moranOf(line, order)?.i ?? Number.NaN)
  const exact = meanAndVariance(all)

  expect(moran?.i).toBeCloseTo(0.6, 10)
  expect(moran?.varianceNormality).toBeCloseTo(0.128, 10)
  expect(moran?.varianceRandomisation).toBeCloseTo(0.15104, 10)
  expect(exact.mean).toBeCloseTo(-0.2, 10)
  expect(exact.variance).toBeCloseTo(0.15104, 10)
  expect(all.filter((i) => i >= 0.6 - 1e-9)).toHaveLength(16)
})

test.each([
  ['all alike', [1, 1, 1, 1, 1, 1, 1, 1, 1]],
  ['too few', [1, 0]],
])('%s: not defined', (_, some) => {
  expect(
    moranOf(grid(some.length === 9 ? 3 : 1, some.length === 9 ? 3 : 2, 'rook'), some)
  ).toBeNull()
})

function turfMoran(some: readonly number[], places: number) {
  const features = some.map((x, at) => ({
    type: 'Feature' as const,
    properties: { x },
    geometry: {
      type: 'Point' as const,
      coordinates: [at % places, Math.floor(at / places)],
    },
  }))
  return moranIndex(
    { type: 'FeatureCollection', features },
    { inputField: 'x', threshold: 1, binary: true, standardization: false }
  )
}

function ordersOf(some: readonly number[]): number[][] {
  if (some.length === 0) return [[]]
  return some.flatMap((first, at) =>
    ordersOf(some.filter((_, other) => other !== at)).map((rest) => [first, ...rest])
  )
}
