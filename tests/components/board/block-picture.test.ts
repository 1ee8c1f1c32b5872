import { expect, test } from 'vitest'

import { boardMark, discsAt, pictureOf } from '@/components/board/block-picture'
import type { Look } from '@/lib/domain/orchard/status'
import { aBlock, treesOf } from '../../lib/domain/an-orchard'

test('north is up, every standing tree is inside the picture, and gaps stay empty', () => {
  const trees = treesOf(['T.......T', '', 'T'])
  const { dots, width, height } = pictureOf(aBlock(), trees)

  expect(dots).toHaveLength(3)
  for (const { x, y } of dots) {
    expect(x).toBeGreaterThan(0)
    expect(x).toBeLessThan(width)
    expect(y).toBeGreaterThan(0)
    expect(y).toBeLessThan(height)
  }
  const [first, north, east] = dots
  expect(north?.y).toBeLessThan(first?.y ?? 0)
  expect(east?.x).toBeGreaterThan(first?.x ?? 0)
})

test('a block without a single tree is an empty picture', () => {
  expect(pictureOf(aBlock(), []).dots).toEqual([])
})

test('what is done stays done on the board, also where a hazard closes it; a hazard is always seen', () => {
  const look: Look = {
    status: 'done',
    badge: null,
    dealtToMe: false,
    dealtTo: [],
    heldByMe: false,
    closed: true,
    initials: [],
  }
  expect(boardMark(look)).toBe('done')
  expect(boardMark({ ...look, status: 'unpruned' })).toBe('closed')
  expect(boardMark({ ...look, status: 'arborist' })).toBe('arborist')
})

test('many trees are one path', () => {
  expect(
    discsAt([
      { no: 1, x: 3, y: 4 },
      { no: 2, x: 5, y: 6 },
    ])
  ).toBe('M3 4h0M5 6h0')
})
