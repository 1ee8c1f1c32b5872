import { describe, expect, test } from 'vitest'

import { isLikely, seemsSwapped } from '@/lib/domain/orchard/likely-place'

// Towns from an atlas, with the offset of their standard time.
const towns = [
  { name: 'Soria', lat: 41.76, lon: -2.46, timeZone: 'Europe/Madrid', utcOffsetH: 1 },
  { name: 'San Jose', lat: 37.34, lon: -121.89, timeZone: 'America/Los_Angeles', utcOffsetH: -8 },
  { name: 'Wenatchee', lat: 47.42, lon: -120.31, timeZone: 'America/Los_Angeles', utcOffsetH: -8 },
  { name: 'Talca', lat: -35.43, lon: -71.67, timeZone: 'America/Santiago', utcOffsetH: -4 },
  { name: 'Hobart', lat: -42.88, lon: 147.33, timeZone: 'Australia/Hobart', utcOffsetH: 10 },
  { name: 'Kashgar', lat: 39.47, lon: 75.99, timeZone: 'Asia/Shanghai', utcOffsetH: 8 },
]

describe('by the time zone alone', () => {
  test.each(towns)('$name is likely', ({ lat, lon, ...zone }) => {
    const known = { ...zone, position: null }

    expect(isLikely({ lat, lon }, known)).toBe(true)
    expect(seemsSwapped({ lat, lon }, known)).toBe(false)
  })

  test.each(towns.filter(({ lon }) => Math.abs(lon) <= 90))(
    '$name the wrong way round is noticed',
    ({ lat, lon, ...zone }) => {
      expect(seemsSwapped({ lat: lon, lon: lat }, { ...zone, position: null })).toBe(true)
    }
  )
})

test('another block of the orchard decides, wherever the zone would put it', () => {
  const known = { position: { lat: 10, lon: 12 }, timeZone: 'Europe/Madrid', utcOffsetH: 1 }

  expect(isLikely({ lat: 10.01, lon: 12.01 }, known)).toBe(true)
  expect(isLikely({ lat: 40, lon: -2 }, known)).toBe(false)
  expect(seemsSwapped({ lat: 12.01, lon: 10.01 }, known)).toBe(true)
})
