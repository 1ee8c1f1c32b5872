import { expect, test } from 'vitest'

import { sizeOfPixels } from '@/components/openness/read-canopy'
import { changeOf, type Shot } from '@/components/openness/shots'

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
