import fc from 'fast-check'
import { expect, test } from 'vitest'

import { placeBubbles } from '@/lib/map/people'

const sizes = { bubbleR: 14.5, markR: 5 }

function bubblesIn(columns: number, spacingPx: number, at: ReadonlyMap<number, readonly string[]>) {
  const pointOf = (index: number) => ({
    x: (index % columns) * spacingPx,
    y: Math.floor(index / columns) * spacingPx * 1.3,
  })
  const all = Array.from({ length: columns * columns }, (_, index) => index)
  const treesNear = ({ x, y }: { x: number; y: number }, pixels: number) =>
    all.filter((index) => {
      const tree = pointOf(index)
      return Math.abs(tree.x - x) <= pixels && Math.abs(tree.y - y) <= pixels
    })
  const bubbles = placeBubbles({ at, pointOf, treesNear, importance: () => 1, ...sizes })
  return { bubbles, marks: all.map(pointOf) }
}

test('where there is room, no bubble covers a mark or another bubble', () => {
  const places = fc.uniqueArray(fc.integer({ min: 0, max: 48 }), { maxLength: 6 })

  fc.assert(
    fc.property(places, (busy) => {
      const { bubbles, marks } = bubblesIn(7, 60, new Map(busy.map((index) => [index, ['AB']])))

      expect(bubbles).toHaveLength(busy.length)
      for (const [at, bubble] of bubbles.entries()) {
        for (const mark of marks)
          expect(Math.hypot(mark.x - bubble.x, mark.y - bubble.y)).toBeGreaterThan(19)
        for (const other of bubbles.slice(at + 1))
          expect(Math.hypot(other.x - bubble.x, other.y - bubble.y)).toBeGreaterThan(28)
      }
    })
  )
})

test('everybody at one tree gets a bubble beside it', () => {
  const { bubbles } = bubblesIn(3, 60, new Map([[4, ['AB', 'CD', 'EF']]]))

  expect(bubbles.map(({ initials }) => initials)).toEqual(['AB', 'CD', 'EF'])
  expect(new Set(bubbles.map(({ x, y }) => `${x} ${y}`)).size).toBe(3)
})
