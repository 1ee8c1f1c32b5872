import { describe, expect, test } from 'vitest'

import { afterUndo, afterWork, newDay } from '@/components/tree/day'
import { undoUntil } from '@/components/tree/undo-until'

const at = '2026-01-10T09:00:00.000Z'
const done = (tree: number) => ({ tree, how: 'done', at }) as const

describe('my day', () => {
  test('counts the trees I finished, each once', () => {
    const day = [done(7), done(8), done(7)].reduce(afterWork, newDay)

    expect(day.done).toEqual([8, 7])
    expect(day.at).toBe(7)
  })

  test('a tree left half done is where I am, and does not count', () => {
    const day = afterWork(afterWork(newDay, done(7)), { tree: 8, how: 'half', at })

    expect(day.done).toEqual([7])
    expect(day.at).toBe(8)
  })

  test('undone, the tree does not count and cannot be undone again', () => {
    const day = afterUndo(afterWork(afterWork(newDay, done(7)), done(8)))

    expect(day.done).toEqual([7])
    expect(day.last).toBeNull()
  })

  test('work tells where I am better than what I said before', () => {
    expect(afterWork({ ...newDay, at: 3, atIsChosen: true }, done(7)).atIsChosen).toBe(false)
  })
})

test.each([
  { after: 0, until: '2026-01-10T09:10:00.000Z' },
  { after: 9, until: '2026-01-10T09:10:00.000Z' },
  { after: 10, until: undefined },
])('$after minutes later it can be undone until $until', ({ after, until }) => {
  const now = new Date(Date.parse(at) + after * 60_000)

  expect(undoUntil(at, 10, now)?.toISOString()).toBe(until)
})
