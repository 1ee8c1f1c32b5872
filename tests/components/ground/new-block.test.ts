import { describe, expect, test } from 'vitest'

import {
  linesOfCorners,
  type NewBlock,
  numbersIn,
  planOf,
  positionsIn,
  untouched,
  withCornerAdded,
  withCornerAt,
} from '@/components/ground/new-block'

const square = ['41.2, -2.8', '41.201, -2.8', '41.201, -2.799', '41.2, -2.799']
const block: NewBlock = { ...untouched, corners: square }
const plan = (changes: Partial<NewBlock>, units: 'metric' | 'us' = 'metric') => {
  const typed = { ...block, ...changes }
  return planOf(typed, numbersIn(typed, units))
}

test('untouched, rows run along the longest side at usual distances, the first as far in as the edge', () => {
  expect(plan({})).toMatchObject({
    rowSpacingM: 6,
    treeSpacingM: 5,
    headlandM: 3,
    firstRowM: null,
    bearingDeg: 0,
  })
})

test('what is typed in feet is kept in metres, and a comma is as good as a point', () => {
  expect(plan({ rowSpacing: '20', treeSpacing: '16,5' }, 'us')).toMatchObject({
    rowSpacingM: expect.closeTo(6.096, 6),
    treeSpacingM: expect.closeTo(5.0292, 6),
  })
})

describe('no plan while a number cannot be', () => {
  test.each<[string, Partial<NewBlock>]>([
    ['no distance', { rowSpacing: '' }],
    ['zero', { treeSpacing: '0' }],
    ['feet by the hundred', { rowSpacing: '100' }],
    ['a bearing beyond the circle', { bearing: '400' }],
    ['half a corner', { corners: [...square, '41.2'] }],
    ['a negative first row', { firstRow: '-1' }],
  ])('%s', (_, changes) => {
    expect(plan(changes)).toBeNull()
  })

  test('but an empty line for a corner is only empty', () => {
    expect(plan({ corners: [...square, ''] })?.corners).toHaveLength(4)
  })
})

test('a corner tapped on the map goes between its neighbours', () => {
  const added = withCornerAdded(block, { lat: 41.2011, lon: -2.7995 })

  expect(positionsIn(added).map(({ lat }) => lat)).toEqual([41.2, 41.201, 41.2011, 41.201, 41.2])
})

test('the first three corners are taken in their order', () => {
  const two = { ...untouched, corners: square.slice(0, 2) }

  expect(positionsIn(withCornerAdded(two, { lat: 41.2005, lon: -2.8 })).at(-1)?.lat).toBe(41.2005)
})

test('a line between corners may be empty, and each corner knows its line', () => {
  const gap = withCornerAt(block, 1, '')

  expect(linesOfCorners(gap)).toEqual([0, 2, 3])
  expect(positionsIn(gap)).toHaveLength(3)
})
