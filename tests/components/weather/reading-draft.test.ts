import { describe, expect, test } from 'vitest'

import { argsFrom, draftFrom, isEmpty, stepped } from '@/components/weather/reading-draft'
import { noRainInH, type Reading } from '@/lib/domain/safety/weather'

const latest: Reading = {
  measuredAt: '2026-11-30T10:00:00.000Z',
  temperatureC: 12.3,
  humidity: 61,
  windKmh: null,
  gustKmh: 17,
  canopy: 'wet',
  thunder: true,
  rainInH: noRainInH,
}

describe('what a lead is about to write', () => {
  test('begins at what was written last, but for what must be seen anew', () => {
    expect(draftFrom(latest)).toEqual({
      temperatureC: 12.3,
      humidity: 61,
      gustKmh: 17,
      canopy: null,
      rainInH: noRainInH,
    })
    expect(isEmpty(draftFrom(null))).toBe(true)
    expect(argsFrom(draftFrom(null), true)).toMatchObject({ thunder: true, temperatureC: null })
  })

  test.each([
    ['temperatureC', 'metric', null, 1, 15],
    ['temperatureC', 'metric', 12.3, 1, 13],
    ['temperatureC', 'metric', 12.3, -1, 11],
    ['temperatureC', 'metric', 60, 1, 60],
    ['humidity', 'metric', 61, 1, 65],
    ['humidity', 'metric', 5, -1, 5],
    ['gustKmh', 'metric', 17, 1, 20],
    ['gustKmh', 'metric', 17, -1, 15],
    ['gustKmh', 'metric', 0, -1, 0],
    // 60 °F; 60 to 62 °F; 18 to 19 mph.
    ['temperatureC', 'us', null, 1, 15.56],
    ['temperatureC', 'us', 15.56, 1, 16.67],
    ['gustKmh', 'us', 28.97, 1, 30.58],
  ] as const)('%s in %s units, from %s by %s: %s', (measure, units, value, direction, next) => {
    expect(stepped(value, direction, { measure, units })).toBe(next)
  })
})
