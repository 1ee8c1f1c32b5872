import fc from 'fast-check'
import { expect, test } from 'vitest'

import { hullOf } from '@/lib/domain/orchard/hull'
import type { Point } from '@/lib/map/plane'

const coordinate = fc.integer({ min: -20, max: 20 })
const points = fc.array(fc.record({ x: coordinate, y: coordinate }), {
  minLength: 3,
  maxLength: 40,
})

test('every tree is inside, and every corner is a tree', () => {
  fc.assert(
    fc.property(points, (trees) => {
      const hull = hullOf(trees)

      for (const corner of hull) expect(trees).toContainEqual(corner)
      for (const tree of trees)
        hull.forEach((corner, at) => {
          expect(side(corner, hull[(at + 1) % hull.length] ?? corner, tree)).toBeGreaterThanOrEqual(
            0
          )
        })
    })
  )
})

test('two trees are their own outline', () => {
  expect(
    hullOf([
      { x: 1, y: 1 },
      { x: 0, y: 0 },
    ])
  ).toEqual([
    { x: 0, y: 0 },
    { x: 1, y: 1 },
  ])
})

/** Positive on the left of the way from a to b. */
function side(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
}
