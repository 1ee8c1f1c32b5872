import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { gapsOf, meanResultant, rayleighP } from '@/lib/domain/pruning/circular'
import { chooseLimbs, conditions, type MainLimb, worthOf } from '@/lib/domain/pruning/limb-balance'

const limb = (bearingDeg: number, change: Partial<MainLimb> = {}): MainLimb => ({
  bearingDeg,
  condition: 'sound',
  thickCm: null,
  angleDeg: null,
  ...change,
})

describe('gaps', () => {
  test.each([
    [
      [0, 90, 180, 270],
      [90, 90, 90, 90],
    ],
    [
      [350, 10, 180],
      [170, 170, 20],
    ],
    [
      [725, -5],
      [350, 10],
    ],
    [[40], [360]],
    [[], []],
  ])('of %j', (bearings, gaps) => {
    expect(gapsOf(bearings)).toEqual(gaps)
  })

  test('add up to the circle', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -720, max: 720, noNaN: true }), { minLength: 1 }),
        (all) => {
          expect(gapsOf(all).reduce((sum, gap) => sum + gap, 0)).toBeCloseTo(360, 6)
        }
      ),
      { numRuns: 100 }
    )
  })
})

/** Zar, Biostatistical Analysis, the eight trees of examples 26.4 and 27.1 (from memory): r = 0.82522. */
test('the mean resultant length of a worked example', () => {
  expect(meanResultant([45, 55, 81, 96, 110, 117, 132, 154])).toBeCloseTo(0.82522, 4)
})

describe('Rayleigh’s test', () => {
  test('waits for ten limbs', () => {
    expect(rayleighP([0, 40, 80, 120, 160, 200, 240, 280, 320])).toBeNull()
    expect(rayleighP([])).toBeNull()
  })

  test('of an even wheel is nothing out of the way', () => {
    expect(rayleighP(Array.from({ length: 12 }, (_, at) => at * 30))).toBeGreaterThan(0.95)
  })

  /**
   * Independent: the length of a random walk of n unit steps has P(R ≤ r) = r ∫ J₁(rt) J₀(t)ⁿ dt (Kluyver
   * 1906), with Bessel functions by their own integrals.
   */
  test.each([
    [10, 0.2],
    [10, 0.5],
    [10, 0.7],
    [12, 0.4],
    [12, 0.6],
  ])('of %i limbs with a mean of %f agrees with the exact distribution', (n, mean) => {
    const exact = 1 - kluyver(n, n * mean)

    const p = rayleighP(withMean(n, mean)) ?? Number.NaN

    expect(Math.abs(p - exact)).toBeLessThan(0.001)
    expect(p / exact).toBeCloseTo(1, 0)
  })
})

describe('which limbs to keep', () => {
  test('of an even wheel with one too many, the odd one goes', () => {
    expect(chooseLimbs([limb(0), limb(15), limb(120), limb(240)], 3)).toEqual({
      kept: [0, 2, 3],
      smallestGapDeg: 120,
      score: 120,
    })
  })

  test('a poor limb in the best place gives way to a sound one beside it', () => {
    const limbs = [limb(0, { condition: 'poor' }), limb(15), limb(120), limb(240)]

    expect(chooseLimbs(limbs, 3)?.kept).toEqual([1, 2, 3])
  })

  test('a limb that pinches its bark counts less', () => {
    const limbs = [limb(0, { angleDeg: 20 }), limb(10), limb(120), limb(240)]

    expect(chooseLimbs(limbs, 3)?.kept).toEqual([1, 2, 3])
  })

  test('of equals the thicker stays', () => {
    expect(chooseLimbs([limb(0), limb(0, { thickCm: 8 }), limb(180)], 2)?.kept).toEqual([1, 2])
  })

  test('one limb alone has the whole circle', () => {
    expect(chooseLimbs([limb(0), limb(90)], 1)?.smallestGapDeg).toBe(360)
  })

  test.each([
    [3, 0],
    [3, 4],
    [13, 4],
  ])('there is no choice of %i limbs for %i', (count, keep) => {
    expect(
      chooseLimbs(
        Array.from({ length: count }, (_, at) => limb(at * 25)),
        keep
      )
    ).toBeNull()
  })

  /** By brute force over bit masks, and the smallest gap as the least distance of any two. */
  test('nothing scores higher than what is chosen, up to twelve', () => {
    const limbs = fc.array(
      fc.record({
        bearingDeg: fc.integer({ min: 0, max: 359 }),
        condition: fc.constantFrom(...conditions),
        thickCm: fc.constant(null),
        angleDeg: fc.option(fc.integer({ min: 0, max: 90 })),
      }),
      { minLength: 1, maxLength: 12 }
    )
    fc.assert(
      fc.property(limbs, fc.integer({ min: 1, max: 6 }), (all, keep) => {
        const chosen = chooseLimbs(all, Math.min(keep, all.length))
        const scores = masks(all, Math.min(keep, all.length)).map(scoreOf)
        expect(chosen?.score).toBeCloseTo(Math.max(...scores), 9)
        expect(chosen && scoreOf(chosen.kept.map((at) => all[at] as MainLimb))).toBeCloseTo(
          chosen?.score ?? 0,
          9
        )
      }),
      { numRuns: 60 }
    )
  })
})

function masks(limbs: readonly MainLimb[], keep: number): MainLimb[][] {
  return Array.from({ length: 2 ** limbs.length }, (_, mask) =>
    limbs.filter((_, at) => (mask >> at) & 1)
  ).filter((some) => some.length === keep)
}

function scoreOf(limbs: readonly MainLimb[]): number {
  const apart = limbs.flatMap((one, at) =>
    limbs.slice(at + 1).map((other) => {
      const turn = Math.abs(one.bearingDeg - other.bearingDeg)
      return Math.min(turn, 360 - turn)
    })
  )
  const worth = limbs.reduce((sum, one) => sum + worthOf(one), 0) / limbs.length
  return (apart.length === 0 ? 360 : Math.min(...apart)) * worth
}

/** Pairs that stand evenly about north have the mean of their cosines. */
function withMean(n: number, mean: number): number[] {
  const aside = (Math.acos(mean) * 180) / Math.PI
  return Array.from({ length: n }, (_, at) => (at % 2 === 0 ? aside : -aside))
}

function kluyver(n: number, resultant: number): number {
  const [step, end] = [0.02, 30]
  let sum = 0
  for (let t = step / 2; t < end; t += step)
    sum += bessel(1, resultant * t) * bessel(0, t) ** n * step
  return resultant * sum
}

function bessel(order: 0 | 1, x: number): number {
  const parts = 120
  let sum = 0
  for (let at = 0; at < parts; at++) {
    const angle = ((at + 0.5) * Math.PI) / parts
    sum += Math.cos(order * angle - x * Math.sin(angle))
  }
  return sum / parts
}
