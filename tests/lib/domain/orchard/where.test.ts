import fc from 'fast-check'
import { Geodesic } from 'geographiclib-geodesic'
import { describe, expect, test } from 'vitest'

import { placesOf } from '@/lib/domain/orchard/around'
import { bearingDeg, distanceM, step } from '@/lib/domain/orchard/distance'
import { whereIs, windOf } from '@/lib/domain/orchard/where'

import { aBlock, someField, treesOf } from '../an-orchard'

const block = aBlock({ rowSpacingM: 6, treeSpacingM: 5, bearingDeg: 20 })
const trees = treesOf(Array.from({ length: 8 }, () => 'T'.repeat(12)))
const places = placesOf(trees, [block])

function placeOf(no: number) {
  const place = places.get(no)?.position
  if (!place) throw new Error(`tree ${no} has a place`)
  return place
}

describe('who stands', () => {
  test('at a tree, with a device that is sure, is told that tree', () => {
    const position = step(placeOf(30), 90, 1)

    const found = whereIs({ position, accuracyM: 1 }, trees, places, 3)

    expect(found.state).toBe('at')
    expect(found.state === 'at' && found.near[0]?.tree.no).toBe(30)
    expect(found.state === 'at' && found.near).toHaveLength(3)
  })

  test('at the same place with an unsure device is told how many trees it may be', () => {
    const position = step(placeOf(30), 90, 1)

    const found = whereIs({ position, accuracyM: 8 }, trees, places, 3)

    expect(found.state).toBe('one_of')
    expect(found.state === 'one_of' && found.candidates).toBeGreaterThan(4)
  })

  test('in a wide alley is at no tree, however sure the device is', () => {
    const wide = aBlock({ rowSpacingM: 40, treeSpacingM: 40 })
    const far = treesOf(['TT', 'TT'], wide)
    const position = step(step(someField, 0, 19), 90, 18)

    expect(whereIs({ position, accuracyM: 0.5 }, far, placesOf(far, [wide]), 3).state).toBe(
      'one_of'
    )
  })

  test('down the road is told so', () => {
    const found = whereIs({ position: step(someField, 200, 900), accuracyM: 20 }, trees, places, 3)

    expect(found).toMatchObject({ state: 'elsewhere' })
  })

  test('among trees without places cannot be told anything', () => {
    const lost = aBlock({ firstTree: null })

    const found = whereIs({ position: someField, accuracyM: 3 }, trees, placesOf(trees, [lost]), 3)

    expect(found).toEqual({ state: 'no_places' })
  })

  test('beside a gap is not sent to it', () => {
    const withGap = treesOf(['T.T'])
    const gapAt = step(someField, 0, 4)

    const found = whereIs(
      { position: gapAt, accuracyM: 1 },
      withGap,
      placesOf(withGap, [aBlock()]),
      3
    )

    expect(found.state !== 'no_places' && found.state !== 'elsewhere' && found.near).toHaveLength(2)
  })
})

const somewhere = fc.record({
  bearing: fc.double({ min: 0, max: 360, noNaN: true }),
  metres: fc.double({ min: 0, max: 70, noNaN: true }),
  accuracyM: fc.double({ min: 0.5, max: 15, noNaN: true }),
})

// Karney's algorithm (geographiclib-geodesic 2.2.0) is the reference.
test('distances, bearings and their order are those of the reference', () => {
  fc.assert(
    fc.property(somewhere, ({ bearing, metres, accuracyM }) => {
      const position = step(someField, bearing, metres)

      const found = whereIs({ position, accuracyM }, trees, places, 5)

      if (found.state !== 'at' && found.state !== 'one_of') return
      const reference = trees
        .map(({ no }) => {
          const { lat, lon } = placeOf(no)
          return { no, ...Geodesic.WGS84.Inverse(position.lat, position.lon, lat, lon) }
        })
        .toSorted((a, b) => (a.s12 ?? 0) - (b.s12 ?? 0))
      for (const [at, near] of found.near.entries()) {
        expect(near.metres).toBeCloseTo(reference[at]?.s12 ?? Number.NaN, 3)
        const apart = Math.abs(((near.bearingDeg - (reference[at]?.azi1 ?? 0) + 900) % 360) - 180)
        expect((apart * Math.PI * near.metres) / 180).toBeLessThan(0.001)
      }
    }),
    { numRuns: 60 }
  )
})

test('wherever in its circle the device really is, the nearest tree was among those it may be', () => {
  const inCircle = fc.record({
    turn: fc.double({ min: 0, max: 360, noNaN: true }),
    share: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  fc.assert(
    fc.property(somewhere, inCircle, ({ bearing, metres, accuracyM }, { turn, share }) => {
      const position = step(someField, bearing, metres)
      const really = step(position, turn, share * accuracyM)
      const nearest = trees.reduce((best, next) =>
        distanceM(really, placeOf(next.no)) < distanceM(really, placeOf(best.no)) ? next : best
      )

      const found = whereIs({ position, accuracyM }, trees, places, trees.length)

      if (found.state === 'at') expect(found.near[0]?.tree.no).toBe(nearest.no)
      if (found.state !== 'one_of') return
      const maybe = found.near.filter((near) => near.mayBeNearest).map(({ tree }) => tree.no)
      expect(maybe).toContain(nearest.no)
    }),
    { numRuns: 200 }
  )
})

test.each([
  [0, 'n'],
  [22, 'n'],
  [23, 'ne'],
  [90, 'e'],
  [181, 's'],
  [337, 'nw'],
  [338, 'n'],
  [360, 'n'],
  [-45, 'nw'],
] as const)('a bearing of %d is %s', (bearing, wind) => expect(windOf(bearing)).toBe(wind))

test('the winds follow the bearings of the reference', () => {
  const { lat2 = 0, lon2 = 0 } = Geodesic.WGS84.Direct(someField.lat, someField.lon, 135, 80)

  expect(windOf(bearingDeg(someField, { lat: lat2, lon: lon2 }))).toBe('se')
})
