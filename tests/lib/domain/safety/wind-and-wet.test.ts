import { describe, expect, test } from 'vitest'

import { kmPerHOf } from '@/lib/domain/safety/units'
import { dewPointC, isWetHour } from '@/lib/domain/safety/wet'
import { beaufortOf, strongest } from '@/lib/domain/safety/wind'

describe('wind', () => {
  // NWS Tampa Bay, "Beaufort Wind Scale".
  test.each([
    [0, 0],
    [1, 1],
    [12, 3],
    [13, 4],
    [18, 4],
    [19, 5],
    [24, 5],
    [25, 6],
    [31, 6],
    [32, 7],
    [73, 11],
    [74, 12],
  ])('%s mph is force %s', (mph, force) => {
    expect(beaufortOf(kmPerHOf(mph))).toBe(force)
  })

  test('between two bands it is the stronger one', () => {
    expect(beaufortOf(kmPerHOf(12.5))).toBe(4)
  })

  test('25 mph are 40.23 km/h', () => {
    expect(kmPerHOf(25)).toBeCloseTo(40.23, 2)
  })

  test('the gust counts, and the mean where nobody wrote gusts', () => {
    expect([
      strongest(20, 38),
      strongest(20, null),
      strongest(null, 38),
      strongest(null, null),
    ]).toEqual([38, 20, 38, null])
    // A gust typed below the mean is a slip.
    expect(strongest(40, 10)).toBe(40)
  })
})

describe('wet', () => {
  // Magnus, and psychrolib (ASHRAE) within 0.01.
  test.each([
    [20, 90, 18.309],
    [25, 60, 16.698],
    [20, 80, 16.444],
    [10, 95, 9.236],
  ])('%s °C and %s %% have their dew point at %s °C', (t, rh, dew) => {
    expect(Math.abs(dewPointC(t, rh) - dew)).toBeLessThan(0.01)
  })

  test('air that is full has its dew point where it is', () => {
    expect(dewPointC(12, 100)).toBeCloseTo(12, 9)
  })

  test.each([
    [{ humidity: 90, rainMm: null }, true],
    [{ humidity: 89.9, rainMm: 0 }, false],
    [{ humidity: 40, rainMm: 0.2 }, true],
    [{ humidity: null, rainMm: 0 }, null],
    [{ humidity: null, rainMm: null }, null],
  ])('%j is wet: %s', (hour, isWet) => {
    expect(isWetHour(hour)).toBe(isWet)
  })
})
