import { kinks } from '@turf/kinks'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { sheetAround } from '@/lib/domain/orchard/ellipsoid'
import { inWalkingOrder, outlineFault, sidesOf } from '@/lib/domain/orchard/outline'

const { toGround } = sheetAround({ lat: 41.2, lon: -2.8 })
const corners = (...points: [east: number, north: number][]) =>
  points.map(([eastM, northM]) => toGround({ eastM, northM }))
const square = corners([0, 0], [0, 100], [100, 100], [100, 0])
const crosswise = corners([0, 0], [100, 100], [0, 100], [100, 0])

test('corners in walking order are fine, either way round and also where they turn inwards', () => {
  expect(outlineFault(square)).toBeNull()
  expect(outlineFault(square.toReversed())).toBeNull()
  expect(outlineFault(corners([0, 0], [0, 100], [50, 40], [100, 100], [100, 0]))).toBeNull()
})

describe('what cannot be an outline', () => {
  test.each([
    ['two corners', corners([0, 0], [5, 5]), { code: 'too_few_corners' }],
    ['corners walked crosswise', crosswise, { code: 'crosses_itself', sides: [0, 2] }],
    [
      'the same corner twice',
      corners([0, 0], [0, 50], [50, 50], [0.1, 0.1]),
      { code: 'corner_twice', corners: [0, 3] },
    ],
    ['corners in one line', corners([0, 0], [0, 50], [0, 90]), { code: 'no_area' }],
  ])('%s', (_, wrong, fault) => {
    expect(outlineFault(wrong)).toEqual(fault)
  })

  test('a corner with a slip in its degrees is named', () => {
    const slipped = square.with(2, { lat: 42.2, lon: -2.8 })

    expect(outlineFault(slipped)).toMatchObject({ code: 'too_wide', corner: 2 })
  })
})

test('corners walked crosswise are put into order', () => {
  const inOrder = inWalkingOrder(crosswise)

  expect(outlineFault(inOrder)).toBeNull()
  expect(new Set(inOrder)).toEqual(new Set(crosswise))
})

test('sides have lengths and bearings, and the last one closes the outline', () => {
  const sides = sidesOf(square).map(({ metres, bearingDeg }) => [
    Math.round(metres),
    Math.round(bearingDeg) % 360,
  ])

  expect(sides).toEqual([
    [100, 0],
    [100, 90],
    [100, 180],
    [100, 270],
  ])
})

// turf (7.4.0) as the reference. Whole metres would also draw corners that lie on another side, where it errs.
test('an outline crosses itself when turf finds a kink in it', () => {
  const metres = fc.noBias(fc.double({ min: 0, max: 60, noNaN: true }))
  const point = fc.tuple(metres, metres).map(([eastM, northM]) => ({ eastM, northM }))
  fc.assert(
    fc.property(fc.array(point, { minLength: 4, maxLength: 7 }), (points) => {
      const ground = points.map(toGround)
      const code = outlineFault(ground)?.code
      if (code === 'corner_twice') return
      const ring = [...ground, ground[0] ?? { lat: 0, lon: 0 }].map(({ lat, lon }) => [lon, lat])

      const hasKink = kinks({ type: 'Polygon', coordinates: [ring] }).features.length > 0

      expect(code === 'crosses_itself').toBe(hasKink)
    })
  )
})
