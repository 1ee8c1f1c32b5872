import statistics from 'jstat'
import { describe, expect, test } from 'vitest'

import { dispersionOf } from '@/lib/domain/disease/dispersion'
import { incidenceOf } from '@/lib/domain/disease/incidence'
import { runsAlong, runsOfRows } from '@/lib/domain/disease/runs'
import { chiSquareTail, normalTail } from '@/lib/domain/disease/tails'

const { jStat } = statistics

describe('incidence', () => {
  /** Newcombe 1998, Statistics in Medicine 17:857-872, table of intervals, score method. */
  test.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%d of %d lies between %d and %d', (sick, trees, low, high) => {
    const incidence = incidenceOf(sick, trees)

    expect(incidence?.share).toBe(sick / trees)
    expect(incidence?.low).toBeCloseTo(low, 4)
    expect(incidence?.high).toBeCloseTo(high, 4)
  })

  test('all sick: up to one, and no tree: nothing', () => {
    expect(incidenceOf(20, 20)).toMatchObject({ share: 1, high: 1 })
    expect(incidenceOf(0, 0)).toBeNull()
  })
})

describe('ordinary runs along a row', () => {
  const row = (text: string) => [...text].map((sign) => sign === '1')

  /** Wald and Wolfowitz's moments, checked elsewhere; the exact tail is 20 of 15,504 ways. */
  test('five sick trees together in a row of twenty', () => {
    const runs = runsAlong(row('00000111110000000000'))

    expect(runs).toMatchObject({ trees: 20, sick: 5, runs: 3, mean: 8.5 })
    expect(Math.sqrt(runs?.variance ?? 0)).toBeCloseTo(1.601808, 6)
    expect(runs?.z).toBeCloseTo(-3.121472, 6)
    expect(normalTail(runs?.z ?? 0)).toBeCloseTo(0.0009, 6)
    expect(runs?.pAsFew).toBeCloseTo(20 / 15504, 10)
  })

  test('by threes', () => {
    const runs = runsAlong(row('111000111000'))

    expect(runs).toMatchObject({ trees: 12, sick: 6, runs: 4, mean: 7 })
    expect(runs?.z).toBeCloseTo(-1.513825, 6)
    expect(normalTail(runs?.z ?? 0)).toBeCloseTo(0.065035, 6)
  })

  test.each(['0000', '1111', '01', ''])('"%s" is not defined', (text) => {
    expect(runsAlong(row(text))).toBeNull()
  })

  test('all ways of a short row have the tail that is counted', () => {
    const ways = Array.from({ length: 256 }, (_, bits) =>
      [...bits.toString(2).padStart(8, '0')].map((sign) => sign === '1')
    ).filter((way) => way.filter((one) => one).length === 3)
    for (const one of ways) {
      const own = runsAlong(one)
      const asFew = ways.filter((way) => (runsAlong(way)?.runs ?? 0) <= (own?.runs ?? 0)).length
      expect(own?.pAsFew).toBeCloseTo(asFew / ways.length, 10)
    }
  })

  test('rows add up, and those in which sick trees stand together are counted', () => {
    const rows = ['00000111110000000000', '01010101010101010101'].flatMap(
      (text) => runsAlong(row(text)) ?? []
    )

    expect(runsOfRows(rows)).toMatchObject({ rows: 2, together: 1 })
    expect(runsOfRows([])).toBeNull()
  })
})

describe('index of dispersion over quadrats', () => {
  /** Worked by the formulas of Madden and Hughes; C(alpha) by Tarone. */
  test('ten quadrats of six', () => {
    const dispersion = dispersionOf([0, 0, 5, 6, 0, 1, 0, 4, 0, 0], 6)

    expect(dispersion?.share).toBeCloseTo(0.266667, 6)
    expect(dispersion?.variance).toBeCloseTo(5.822222, 6)
    expect(dispersion?.binomialVariance).toBeCloseTo(1.173333, 6)
    expect(dispersion?.index).toBeCloseTo(4.962121, 6)
    expect(dispersion?.chiSquare).toBeCloseTo(44.659091, 6)
    expect(dispersion?.pAtLeast).toBeCloseTo(1.0667e-6, 9)
    expect(dispersion?.zAlpha).toBeCloseTo(8.489709, 6)
    expect(dispersion?.alike).toBeCloseTo(0.792424, 6)
  })

  test('eight quadrats of four, where the estimate leaves its range and is held at one', () => {
    const dispersion = dispersionOf([0, 0, 0, 4, 4, 0, 0, 0], 4)

    expect(dispersion?.index).toBeCloseTo(4.571429, 6)
    expect(dispersion?.chiSquare).toBeCloseTo(32, 9)
    expect(dispersion?.pAtLeast).toBeCloseTo(4.1e-5, 6)
    expect(dispersion?.zAlpha).toBeCloseTo(6.928203, 6)
    expect(dispersion?.alike).toBe(1)
  })

  test.each([
    ['none sick', [0, 0, 0, 0, 0], 6],
    ['all sick', [6, 6, 6, 6, 6], 6],
    ['too few quadrats', [0, 5, 6, 0], 6],
    ['quadrats of one tree', [0, 1, 1, 0, 1], 1],
  ])('%s: not defined', (_, counts, each) => {
    expect(dispersionOf(counts, each)).toBeNull()
  })
})

/** jStat as the oracle. */
describe('tails', () => {
  test.each([
    [0.5, 1],
    [3.84, 1],
    [9, 9],
    [26.333333, 9],
    [44.659091, 9],
    [120, 99],
    [2, 40],
  ])('chi-square %d on %d', (x, degrees) => {
    expect(chiSquareTail(x, degrees)).toBeCloseTo(1 - jStat.chisquare.cdf(x, degrees), 9)
  })

  test.each([-3.121472, -1.64, -0.2, 0, 0.7, 2.5])('normal %d', (z) => {
    expect(normalTail(z)).toBeCloseTo(jStat.normal.cdf(z, 0, 1), 7)
  })

  /** Variance-mean ratio 2.925926 of ten counts: 26.333333 on 9. */
  test('a published one', () => {
    expect(chiSquareTail(26.333333, 9)).toBeCloseTo(0.001801, 6)
    expect(chiSquareTail(0, 9)).toBe(1)
  })
})
