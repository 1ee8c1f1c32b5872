import fc from 'fast-check'
import { expect, test } from 'vitest'

import { straightened } from '@/lib/map/straightened'

test('a straight row keeps only its ends', () => {
  const row = Array.from({ length: 50 }, (_, at) => ({ x: 3 * at, y: 2 * at }))

  expect(straightened(row, 0.001)).toEqual([0, 49])
})

test('a row that bends keeps the tree where it does', () => {
  const bent = [0, 1, 2, 3, 4].map((at) => ({ x: at, y: Math.max(0, at - 2) }))

  expect(straightened(bent, 0.1)).toEqual([0, 2, 4])
})

test('a single tree, and none, stay as they are', () => {
  expect(straightened([{ x: 1, y: 1 }], 1)).toEqual([0])
  expect(straightened([], 1)).toEqual([])
})

test('no point that was left out is farther from the line than was said', () => {
  const point = fc.record({ x: fc.integer({ min: 0, max: 99 }), y: fc.integer({ min: 0, max: 9 }) })

  fc.assert(
    fc.property(fc.array(point, { minLength: 2, maxLength: 30 }), (points) => {
      const kept = straightened(points, 2)

      for (const [at, one] of points.entries()) {
        const next = kept.findIndex((corner) => corner >= at)
        const [from, to] = [points[kept[Math.max(0, next - 1)] ?? 0], points[kept[next] ?? 0]]
        if (from && to) expect(awayFrom(one, from, to)).toBeLessThanOrEqual(2 + 1e-9)
      }
    }),
    { numRuns: 100 }
  )
})

type Point = { x: number; y: number }

/** From the line through two points, by the area of the triangle (Heron). */
function awayFrom(point: Point, from: Point, to: Point): number {
  const between = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y)
  const [a, b, c] = [between(from, to), between(to, point), between(point, from)]
  if (a === 0) return b
  const half = (a + b + c) / 2
  return (2 * Math.sqrt(Math.max(0, half * (half - a) * (half - b) * (half - c)))) / a
}
