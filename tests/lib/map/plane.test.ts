import fc from 'fast-check'
import { expect, test } from 'vitest'

import { distanceM, step } from '@/lib/domain/orchard/distance'
import { planeAround } from '@/lib/map/plane'

const field = { lat: 47.2, lon: 0.5 }
const turn = fc.double({ min: 0, max: 360, noNaN: true })

test('the world is 256 units wide, with zero at the date line and the far north', () => {
  const { pointOf } = planeAround({ lat: 0, lon: 0 })

  expect(pointOf({ lat: 0, lon: 0 }).x).toBeCloseTo(128, 9)
  expect(pointOf({ lat: 0, lon: 0 }).y).toBeCloseTo(128, 9)
  expect(pointOf({ lat: 0, lon: 180 }).x).toBeCloseTo(256, 9)
  // The web map ends at 85.05113 degrees, where its square is full.
  expect(pointOf({ lat: 85.0511287798, lon: 0 }).y).toBeCloseTo(0, 6)
})

test('a walk on the bearing that points up goes straight up the screen', () => {
  fc.assert(
    fc.property(turn, (upDeg) => {
      const plane = planeAround(field, upDeg)

      const from = plane.pointOf(field)
      const to = plane.pointOf(step(field, upDeg, 100))

      expect(Math.abs(to.x - from.x) / plane.unitsPerM).toBeLessThan(0.5)
      expect((from.y - to.y) / plane.unitsPerM).toBeGreaterThan(99)
    })
  )
})

test('metres stay metres to a third of a percent, however the map is turned', () => {
  fc.assert(
    fc.property(turn, turn, (upDeg, bearing) => {
      const plane = planeAround(field, upDeg)
      const there = step(field, bearing, 200)

      const [a, b] = [plane.pointOf(field), plane.pointOf(there)]

      const drawnM = Math.hypot(b.x - a.x, b.y - a.y) / plane.unitsPerM
      expect(Math.abs(drawnM / distanceM(field, there) - 1)).toBeLessThan(0.0034)
    })
  )
})

test('what Leaflet is told comes back as the same point', () => {
  fc.assert(
    fc.property(turn, turn, (upDeg, bearing) => {
      const turned = planeAround(field, upDeg)
      const point = turned.pointOf(step(field, bearing, 300))

      const again = planeAround(field).pointOf(turned.leafletAt(point))

      expect(Math.hypot(again.x - point.x, again.y - point.y)).toBeLessThan(1e-9)
    })
  )
})
