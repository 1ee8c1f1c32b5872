import fc from 'fast-check'
import { expect, test } from 'vitest'

import { affineBy, isMirrored, moved, stretchOf } from '@/lib/domain/orchard/affine'

const corner = fc.record({ x: fc.integer({ min: 0, max: 99 }), y: fc.integer({ min: 0, max: 99 }) })
const pair = fc.record({ from: corner, to: corner })

test('three points go where they were said to go, unless they lie on one line', () => {
  fc.assert(
    fc.property(fc.tuple(pair, pair, pair), (pairs) => {
      const affine = affineBy(pairs)

      if (!affine) return
      for (const { from, to } of pairs) {
        expect(moved(affine, from).x).toBeCloseTo(to.x, 6)
        expect(moved(affine, from).y).toBeCloseTo(to.y, 6)
      }
    }),
    { numRuns: 200 }
  )
})

test('the middle of two points goes to the middle of where they go', () => {
  const affine = affineBy([
    { from: { x: 0, y: 0 }, to: { x: 3, y: 1 } },
    { from: { x: 10, y: 0 }, to: { x: 9, y: 5 } },
    { from: { x: 0, y: 10 }, to: { x: -1, y: 7 } },
  ])

  expect(affine && moved(affine, { x: 5, y: 0 })).toEqual({ x: 6, y: 3 })
})

test('points on one line place nothing', () => {
  const line = [0, 1, 2].map((at) => ({ x: at, y: 2 * at }))
  const [a, b, c] = line
  const spread = { x: 0, y: 9 }
  if (!a || !b || !c) throw new Error('three points')

  expect(
    affineBy([
      { from: a, to: a },
      { from: b, to: b },
      { from: c, to: spread },
    ])
  ).toBeNull()
  expect(
    affineBy([
      { from: a, to: a },
      { from: spread, to: b },
      { from: c, to: c },
    ])
  ).toBeNull()
})

// A turn keeps lengths; a stretch along one axis multiplies that axis alone: by definition.
test.each([
  [0, 1, 1],
  [30, 1, 1],
  [30, 2.5, 2.5],
  [120, 0.5, 2],
])(
  'turned by %d degrees and %d times as wide, its sides differ %d times',
  (degrees, wide, times) => {
    const [cosine, sine] = [
      Math.cos((degrees * Math.PI) / 180),
      Math.sin((degrees * Math.PI) / 180),
    ]
    const affine = { a: wide * cosine, b: wide * sine, c: -sine, d: cosine, e: 7, f: 8 }

    expect(stretchOf(affine)).toBeCloseTo(times, 9)
    expect(isMirrored(affine)).toBe(false)
    expect(isMirrored({ ...affine, a: -affine.a, b: -affine.b })).toBe(true)
  }
)
