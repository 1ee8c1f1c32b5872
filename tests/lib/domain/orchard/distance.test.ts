import fc from 'fast-check'
import { Geodesic } from 'geographiclib-geodesic'
import { describe, expect, test } from 'vitest'

import { bearingDeg, distanceM, offsetFrom, positionAt, step } from '@/lib/domain/orchard/distance'

const wgs84 = Geodesic.WGS84
const orchard = { lat: 37.4, lon: -121.9 }

// Karney's algorithm (geographiclib-geodesic 2.2.0) is the reference throughout.
const somewhere = fc.record({
  lat: fc.double({ min: -66, max: 66, noNaN: true }),
  lon: fc.double({ min: -180, max: 180, noNaN: true }),
})
const walk = fc.record({
  from: somewhere,
  bearing: fc.double({ min: 0, max: 360, noNaN: true, maxExcluded: true }),
  metres: fc.double({ min: 0.5, max: 2000, noNaN: true }),
})

describe('against the reference, anywhere people grow fruit and up to two kilometres', () => {
  test('a distance is right to a millimetre', () => {
    fc.assert(
      fc.property(walk, ({ from, bearing, metres }) => {
        const { lat2 = NaN, lon2 = NaN } = wgs84.Direct(from.lat, from.lon, bearing, metres)

        expect(distanceM(from, { lat: lat2, lon: lon2 })).toBeCloseTo(metres, 3)
      })
    )
  })

  test('a step ends within a millimetre of where it should', () => {
    fc.assert(
      fc.property(walk, ({ from, bearing, metres }) => {
        const reached = step(from, bearing, metres)

        const { lat2 = NaN, lon2 = NaN } = wgs84.Direct(from.lat, from.lon, bearing, metres)
        const { s12 = NaN } = wgs84.Inverse(lat2, lon2, reached.lat, reached.lon)
        expect(s12).toBeLessThan(0.001)
      })
    )
  })

  test('a bearing points within a millimetre of the goal', () => {
    fc.assert(
      fc.property(walk, ({ from, bearing, metres }) => {
        const { lat2 = NaN, lon2 = NaN } = wgs84.Direct(from.lat, from.lon, bearing, metres)

        const found = bearingDeg(from, { lat: lat2, lon: lon2 })

        const apartDeg = Math.abs(((found - bearing + 540) % 360) - 180)
        expect((apartDeg * Math.PI * metres) / 180).toBeLessThan(0.001)
      })
    )
  })

  test('flat coordinates lead back to the place they were taken from', () => {
    fc.assert(
      fc.property(walk, ({ from, bearing, metres }) => {
        const place = step(from, bearing, metres)

        const back = positionAt(from, offsetFrom(from, place))

        expect(distanceM(back, place)).toBeLessThan(0.001)
      })
    )
  })
})

// Computed with Karney's algorithm on WGS84; the antimeridian case from 111319.491 m a degree.
test('100 m at 37 degrees from 37.4 N, 121.9 W', () => {
  const reached = step(orchard, 37, 100)

  expect(reached.lat).toBeCloseTo(37.4007196, 7)
  expect(reached.lon).toBeCloseTo(-121.8993203, 7)
})

test('20 feet east at 37.4 N is 0.000068848 degrees', () => {
  expect(step(orchard, 90, 6.096).lon - orchard.lon).toBeCloseTo(0.000068848, 8)
})

test('across the antimeridian a short way stays short', () => {
  const west = { lat: 0, lon: 179.9999 }
  const east = { lat: 0, lon: -179.9999 }

  expect(distanceM(west, east)).toBeCloseTo(22.264, 2)
  expect(bearingDeg(west, east)).toBeCloseTo(90, 6)
})

test('a place is no distance from itself', () => {
  expect(distanceM(orchard, orchard)).toBe(0)
  expect(step(orchard, 123, 0)).toEqual(orchard)
})
