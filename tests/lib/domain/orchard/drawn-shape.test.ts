import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { type Corner, isInside } from '@/lib/domain/orchard/drawn-shape'

const corners = (...pairs: [number, number][]): Corner[] => pairs.map(([x, y]) => ({ x, y }))

const square = corners([0, 0], [4, 0], [4, 4], [0, 4])
/** A horseshoe, open to the right. */
const horseshoe = corners([0, 0], [6, 0], [6, 2], [2, 2], [2, 4], [6, 4], [6, 6], [0, 6])
const eight = corners([0, 0], [4, 4], [4, 0], [0, 4])

describe('by hand', () => {
  test.each<[string, Corner[], [number, number], boolean]>([
    ['in the middle of a square', square, [2, 2], true],
    ['beside it', square, [5, 2], false],
    ['above it, in line with a corner', square, [4, 9], false],
    ['left of it, in line with an edge', square, [-1, 4], false],
    ['drawn the other way round', square.toReversed(), [2, 2], true],
    ['drawn round twice', [...square, ...square], [2, 2], true],
    ['in the arm of a horseshoe', horseshoe, [5, 1], true],
    ['between its arms', horseshoe, [5, 3], false],
    ['in its back', horseshoe, [1, 3], true],
    ['in the left of an eight', eight, [0.5, 2], true],
    ['in the right of an eight', eight, [3.5, 2], true],
    ['over its waist', eight, [2, 0.5], false],
    ['within two corners', corners([0, 0], [4, 4]), [2, 2], false],
    ['within one', corners([2, 2]), [2, 2], false],
    ['within nothing', [], [2, 2], false],
  ])('%s', (_, shape, [x, y], inside) => {
    expect(isInside(shape, { x, y })).toBe(inside)
  })
})

test('neighbouring shapes share no point and leave none out', () => {
  // A rectangle cut along a bent line: every point that is off the line is in exactly one half.
  const bend = corners([5, 0], [3, 4], [6, 7], [5, 10])
  const left = [...corners([0, 10], [0, 0]), ...bend]
  const right = [...corners([10, 10], [10, 0]), ...bend]
  const coordinate = fc.double({ min: 0.01, max: 9.99, noNaN: true })
  fc.assert(
    fc.property(coordinate, coordinate, (x, y) => {
      expect(Number(isInside(left, { x, y })) + Number(isInside(right, { x, y }))).toBe(1)
    })
  )
})

/** The same by another way: the angles under which the edges are seen add up to whole turns. */
function turnsByAngles(shape: readonly Corner[], { x, y }: Corner): number {
  const angles = shape.map((from, at) => {
    const to = shape[(at + 1) % shape.length] ?? from
    const turn = Math.atan2(to.y - y, to.x - x) - Math.atan2(from.y - y, from.x - x)
    return turn > Math.PI ? turn - 2 * Math.PI : turn < -Math.PI ? turn + 2 * Math.PI : turn
  })
  return Math.round(angles.reduce((sum, angle) => sum + angle, 0) / (2 * Math.PI))
}

test('any scribble holds what its angles say', () => {
  // Corners on whole numbers, points off them: no point lies on an edge by accident of rounding.
  const corner = fc.record({
    x: fc.integer({ min: 0, max: 12 }),
    y: fc.integer({ min: 0, max: 12 }),
  })
  const between = fc.integer({ min: 0, max: 12 }).map((whole) => whole + 0.5 + Math.SQRT2 / 100)
  fc.assert(
    fc.property(
      fc.array(corner, { minLength: 3, maxLength: 12 }),
      fc.record({ x: between, y: between.map((y) => y + Math.PI / 1000) }),
      (shape, point) => {
        expect(isInside(shape, point)).toBe(turnsByAngles(shape, point) !== 0)
      }
    )
  )
})
