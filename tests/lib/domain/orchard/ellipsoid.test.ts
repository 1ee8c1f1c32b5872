import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { distanceM, positionAt } from '@/lib/domain/orchard/distance'
import {
  areaM2,
  arrivingDeg,
  lineBetween,
  placeAt,
  sheetAround,
  toE7,
} from '@/lib/domain/orchard/ellipsoid'

const dms = (degrees: number, minutes: number, seconds: number) =>
  Math.sign(degrees) * (Math.abs(degrees) + minutes / 60 + seconds / 3600)

// Geoscience Australia, Geocentric Datum of Australia technical manual: the worked example of the inverse.
const flindersPeak = { lat: dms(-37, 57, 3.7203), lon: dms(144, 25, 29.5244) }
const buninyong = { lat: dms(-37, 39, 10.1561), lon: dms(143, 55, 35.3839) }

describe('published lines', () => {
  test('from Flinders Peak to Buninyong', () => {
    const { metres, bearingDeg } = lineBetween(flindersPeak, buninyong)

    expect(metres).toBeCloseTo(54_972.271, 3)
    expect(bearingDeg).toBeCloseTo(dms(306, 52, 5.37), 5)
    expect((arrivingDeg(flindersPeak, buninyong) + 180) % 360).toBeCloseTo(dms(127, 10, 25.07), 5)
  })

  test('and the walk there', () => {
    const reached = placeAt(flindersPeak, { metres: 54_972.271, bearingDeg: dms(306, 52, 5.37) })

    expect(reached.lat).toBeCloseTo(buninyong.lat, 6)
    expect(reached.lon).toBeCloseTo(buninyong.lon, 6)
  })

  // A line that many programs print; this figure from an own run of Karney's algorithm, 2.2.0.
  test('from Land’s End to John o’Groats', () => {
    const line = lineBetween({ lat: 50.06632, lon: -5.71475 }, { lat: 58.64402, lon: -3.07009 })

    expect(line.metres).toBeCloseTo(969_954.166, 3)
    expect(line.bearingDeg).toBeCloseTo(9.141877, 5)
  })

  // Likewise.
  test('a hundred metres in an orchard', () => {
    const reached = placeAt({ lat: 37.4, lon: -121.9 }, { metres: 100, bearingDeg: 37 })

    expect(reached.lat).toBeCloseTo(37.400719586, 8)
    expect(reached.lon).toBeCloseTo(-121.899320309, 8)
  })

  // A degree along the equator is 111,319.491 m on this ellipsoid.
  test('over the antimeridian', () => {
    const line = lineBetween({ lat: 0, lon: 179.9999 }, { lat: 0, lon: -179.9999 })

    expect(line.metres).toBeCloseTo(0.0002 * 111_319.491, 2)
    expect(line.bearingDeg).toBeCloseTo(90, 9)
  })
})

const middle = fc.record({
  lat: fc.double({ min: -66, max: 66, noNaN: true }),
  lon: fc.double({ min: -180, max: 180, noNaN: true }),
})
const offset = fc.record({
  eastM: fc.double({ min: -1500, max: 1500, noNaN: true }),
  northM: fc.double({ min: -1500, max: 1500, noNaN: true }),
})

describe('the sheet', () => {
  test('brings every spot back to where it was, to a tenth of a millimetre', () => {
    fc.assert(
      fc.property(middle, offset, (at, spot) => {
        const sheet = sheetAround(at)

        const back = sheet.toSheet(sheet.toGround(spot))

        expect(Math.hypot(back.eastM - spot.eastM, back.northM - spot.northM)).toBeLessThan(1e-4)
      })
    )
  })

  test('lengths on it are lengths on the ground, to a millimetre in a kilometre', () => {
    fc.assert(
      fc.property(middle, offset, offset, (at, a, b) => {
        const { toGround } = sheetAround(at)

        const { metres } = lineBetween(toGround(a), toGround(b))

        const onSheet = Math.hypot(a.eastM - b.eastM, a.northM - b.northM)
        expect(Math.abs(metres - onSheet)).toBeLessThan(0.0001 + onSheet * 1e-6)
      })
    )
  })

  test('agrees to a centimetre with the formula that people walk by', () => {
    fc.assert(
      fc.property(middle, offset, (at, spot) => {
        const laid = sheetAround(at).toGround(spot)

        expect(distanceM(laid, positionAt(at, spot))).toBeLessThan(0.01)
      })
    )
  })
})

test('the area of a square hectare, whichever way round it was walked', () => {
  const { toGround } = sheetAround({ lat: 41.2, lon: -2.8 })
  const corners = [
    { eastM: 0, northM: 0 },
    { eastM: 100, northM: 0 },
    { eastM: 100, northM: 100 },
    { eastM: 0, northM: 100 },
  ].map(toGround)

  expect(areaM2(corners)).toBeCloseTo(10_000, 1)
  expect(areaM2(corners.toReversed())).toBeCloseTo(10_000, 1)
})

test('a position as it is kept is within a centimetre', () => {
  fc.assert(
    fc.property(middle, (at) => {
      const kept = { lat: toE7(at.lat) / 1e7, lon: toE7(at.lon) / 1e7 }

      expect(lineBetween(at, kept).metres).toBeLessThan(0.01)
    })
  )
})
