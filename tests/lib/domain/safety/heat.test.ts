import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import {
  cup,
  cupDueMs,
  heatDuties,
  isWatched,
  litresOf,
  ouncesAnHour,
  restDueMs,
  restsOf,
  waterQuarts,
} from '@/lib/domain/safety/heat-duties'
import { heatClassOf, heatIndexC, heatIndexF, windChillF } from '@/lib/domain/safety/heat-index'
import { celsiusOf } from '@/lib/domain/safety/units'

describe('heat index', () => {
  // Computed from the equation of the NWS Weather Prediction Center.
  test.each([
    { t: 90, rh: 60, index: 99.678 },
    { t: 96, rh: 65, index: 121.032 },
    { t: 100, rh: 40, index: 109.256 },
    { t: 80, rh: 90, index: 86.342 },
    { t: 86, rh: 90, index: 105.394 },
    { t: 95, rh: 10, index: 89.45 },
    { t: 112, rh: 8, index: 105.416 },
    { t: 70, rh: 50, index: 69.05 },
    { t: 110, rh: 40, index: 135.657 },
  ])('$t °F and $rh % feel like $index °F by the equation', ({ t, rh, index }) => {
    expect(Math.abs(heatIndexF(t, rh) - index)).toBeLessThan(0.01)
  })

  // NWS Tulsa, "Heat Index Information", the chart; made without the adjustment for high humidity.
  test.each([
    [80, 40, 80],
    [86, 50, 88],
    [86, 90, 105],
    [90, 40, 91],
    [90, 55, 97],
    [90, 60, 100],
    [90, 70, 106],
    [96, 65, 121],
    [100, 40, 109],
    [110, 40, 136],
  ])('%s °F and %s %% are %s on the printed chart', (t, rh, chart) => {
    expect(Math.abs(heatIndexF(t, rh) - chart)).toBeLessThan(0.6)
  })

  test('is the same in °C', () => {
    // Computed: 98.734 °F.
    expect(heatIndexC(32, 60)).toBeCloseTo(37.074, 2)
  })

  test('changes to the full equation no later than other readings of the page, on humid days', () => {
    // 79.89 and 79.45 are the two other readings; the calculator of the service says 81.42.
    expect(heatIndexF(79, 70)).toBeGreaterThan(80)
    expect(heatIndexF(79, 75)).toBeCloseTo(81.8, 1)
  })

  test('is always a number, and rises with humidity where the full equation is used', () => {
    fc.assert(
      fc.property(fc.integer({ min: 84, max: 110 }), fc.integer({ min: 40, max: 80 }), (t, rh) => {
        expect(heatIndexF(t, rh + 1)).toBeGreaterThan(heatIndexF(t, rh))
      }),
      { numRuns: 200 }
    )
    fc.assert(
      fc.property(fc.integer({ min: -40, max: 140 }), fc.integer({ min: 0, max: 100 }), (t, rh) => {
        expect(Number.isFinite(heatIndexF(t, rh))).toBe(true)
      }),
      { numRuns: 300 }
    )
  })

  // The classes of the current NWS chart, read so that a shared end is the graver class.
  test.each([
    [79.9, 'none'],
    [80, 'caution'],
    [89.99, 'caution'],
    [90, 'extreme_caution'],
    [102.99, 'extreme_caution'],
    [103, 'danger'],
    [124, 'danger'],
    [124.5, 'extreme_danger'],
    [125, 'extreme_danger'],
  ])('%s °F is %s', (index, heatClass) => {
    expect(heatClassOf(index)).toBe(heatClass)
  })
})

describe('wind chill', () => {
  // Computed from the NWS equation; its chart has 34, 25, 25, 17.
  test.each([
    [40, 10, 33.643, 34],
    [35, 15, 25.432, 25],
    [30, 5, 24.727, 25],
    [30, 20, 17.362, 17],
  ])('%s °F and %s mph feel like %s °F', (t, mph, chill, chart) => {
    expect(windChillF(t, mph)).toBeCloseTo(chill, 2)
    expect(Math.abs((windChillF(t, mph) ?? 0) - chart)).toBeLessThan(0.5)
  })

  test('is not defined on warm or still days', () => {
    expect([windChillF(51, 10), windChillF(30, 2)]).toEqual([null, null])
  })
})

/** Cal. Code Regs. Title 8 §3395 and the state's own page. */
describe('what heat asks of a lead', () => {
  test.each([
    [79.9, false, false],
    [80, true, false],
    [80.1, true, false],
    [94.9, true, false],
    [95, true, true],
  ])('at %s °F: shade up %s, high heat %s', (fahrenheit, shade, high) => {
    const duties = heatDuties(celsiusOf(fahrenheit))

    expect(duties.includes('shade')).toBe(shade)
    expect(duties.includes('rests')).toBe(high)
    expect(duties.includes('watch')).toBe(high)
  })

  test('80 °F typed is kept as 26.67 °C and is 80 again', () => {
    expect(heatDuties(26.67)).toContain('shade')
  })

  test('an unknown temperature still asks for water', () => {
    expect(heatDuties(null)).toEqual(['water', 'rest_on_need'])
  })

  test('water is a quart for each person and hour', () => {
    expect(waterQuarts(12, 5)).toBe(60)
    // 60 quarts are 56.8 litres.
    expect(litresOf(60)).toBe(57)
  })

  test('a shift of six hours in high heat has rests after two, four and six', () => {
    const hour = 3_600_000

    expect(restsOf(0, 6 * hour)).toEqual([2 * hour, 4 * hour, 6 * hour])
    expect(restDueMs(hour)).toBe(3 * hour)
    expect(restsOf(hour, 0)).toEqual([])
  })

  test.each([
    [20, 1, false, true],
    [21, 1, false, false],
    [21, 2, false, true],
    [21, 1, true, true],
  ])('%s people, %s watching, buddies %s: %s', (people, watching, buddies, isEnough) => {
    expect(isWatched(people, { watching, buddies })).toBe(isEnough)
  })

  // NIOSH 2017-126: 24 to 32 ounces an hour.
  test('a cup every twenty minutes is 24 ounces an hour, every fifteen 32', () => {
    expect([ouncesAnHour(cup.everyMinutes), ouncesAnHour(cup.atLeastEveryMinutes)]).toEqual([
      24, 32,
    ])
    expect(ouncesAnHour(cup.atLeastEveryMinutes)).toBeLessThanOrEqual(cup.mostOuncesAnHour)
  })

  test('cups are due every twenty minutes from the beginning of the shift', () => {
    const minute = 60_000

    expect(cupDueMs(0, 0)).toBe(20 * minute)
    expect(cupDueMs(0, 19 * minute)).toBe(20 * minute)
    expect(cupDueMs(0, 20 * minute)).toBe(40 * minute)
    expect(cupDueMs(100 * minute, 0)).toBe(120 * minute)
  })
})
