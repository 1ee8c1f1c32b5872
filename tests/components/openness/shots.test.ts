import { expect, test } from 'vitest'

import { sizeOfPixels } from '@/components/openness/read-canopy'
import {
  changeOf,
  type KeptShots,
  noShots,
  type Shot,
  shotsAt,
  withoutShots,
  withShot,
} from '@/components/openness/shots'

function shot(gap: number, doubt = 0.02): Shot {
  const range = { low: gap - doubt, high: gap + doubt }
  return { gap, ...range, confidence: 'good', doubts: [], photo: '', seen: '' }
}

test.each([
  [0.24, 0.36, { state: 'more', points: 12 }],
  [0.36, 0.24, { state: 'less', points: 12 }],
  [0.3, 0.33, { state: 'same', points: 0 }],
] as const)('from %d to %d', (before, after, change) => {
  expect(changeOf({ before: shot(before), after: shot(after) })).toEqual(change)
})

test('two photos that are read badly must lie farther apart', () => {
  expect(changeOf({ before: shot(0.24, 0.07), after: shot(0.36, 0.07) })?.state).toBe('same')
})

test('the points are those between the numbers that are shown', () => {
  expect(changeOf({ before: shot(0.244), after: shot(0.356) })?.points).toBe(36 - 24)
})

test('with one photo nothing is compared', () => {
  expect(changeOf({ before: shot(0.24), after: null })).toBeNull()
})

test('the last twelve trees are kept, and a tree photographed again is the last', () => {
  const before = (tree: number) => ({ tree, moment: 'before' as const })
  const nothing: KeptShots = []
  let kept = Array.from({ length: 12 }, (_, at) => at + 1).reduce(
    (all, tree) => withShot(all, before(tree), shot(0.3)),
    nothing
  )
  kept = withShot(kept, { tree: 1, moment: 'after' }, shot(0.5))
  kept = withShot(kept, before(13), shot(0.4))

  expect(kept.map(({ tree }) => tree)).toEqual([3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 1, 13])
  expect(shotsAt(kept, 1)).toEqual({ before: shot(0.3), after: shot(0.5) })
  expect(shotsAt(withoutShots(kept, 1), 1)).toEqual(noShots)
})

test.each([
  [4000, 3000],
  [3000, 4000],
  [9000, 1000],
])(
  '%d × %d is made no larger than a million and a half pixels, in the same shape',
  (width, height) => {
    const size = sizeOfPixels({ width, height })

    expect(size.width * size.height).toBeLessThanOrEqual(1_500_000)
    expect(size.width * size.height).toBeGreaterThan(1_480_000)
    expect(size.width / size.height).toBeCloseTo(width / height, 1)
  }
)

test('a small picture stays as it is', () => {
  expect(sizeOfPixels({ width: 800, height: 600 })).toEqual({ width: 800, height: 600 })
})
