import fc from 'fast-check'
import { expect, test } from 'vitest'

import { gridIndex } from '@/lib/map/grid-index'

// Quarters, so that sums are exact and a point at the very edge of reach is not a matter of rounding.
const coordinate = fc.integer({ min: -200, max: 200 }).map((quarters) => quarters / 4)
const points = fc.array(fc.tuple(coordinate, coordinate), { maxLength: 80 })

function indexOf(found: [number, number][]) {
  return gridIndex(
    Float64Array.from(found.map(([x]) => x)),
    Float64Array.from(found.map(([, y]) => y))
  )
}

test('a box holds exactly the points that looking at all of them finds', () => {
  fc.assert(
    fc.property(points, coordinate, coordinate, coordinate, coordinate, (found, a, b, c, d) => {
      const box = {
        minX: Math.min(a, b),
        maxX: Math.max(a, b),
        minY: Math.min(c, d),
        maxY: Math.max(c, d),
      }

      const within = indexOf(found).within(box)

      const expected = found.flatMap(([x, y], index) =>
        x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY ? [index] : []
      )
      expect(within.toSorted((p, q) => p - q)).toEqual(expected)
    })
  )
})

test('no point is nearer than the nearest, and none within reach is missed', () => {
  fc.assert(
    fc.property(
      points,
      coordinate,
      coordinate,
      fc.integer({ min: 0, max: 40 }),
      (found, x, y, reach) => {
        const nearest = indexOf(found).nearest(x, y, reach)

        const away = found.map(([px, py]) => Math.hypot(px - x, py - y))
        const least = Math.min(...away)
        if (nearest === null) expect(least).toBeGreaterThan(reach)
        else expect(away[nearest]).toBe(least)
      }
    )
  )
})

test('an orchard without trees finds nothing', () => {
  expect(indexOf([]).nearest(0, 0, 10)).toBeNull()
  expect(indexOf([]).within({ minX: -1, minY: -1, maxX: 1, maxY: 1 })).toEqual([])
})
