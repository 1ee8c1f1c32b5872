import { expect, test } from 'vitest'

import { inWalkingOrder } from '@/lib/domain/planning/walking-order'

const row = (block: number, row: number) =>
  [3, 1, 2].map((place) => ({ block, row, place, name: `${block}/${row}/${place}` }))
const names = (trees: readonly { name: string }[]) => trees.map(({ name }) => name)

test('up one row and down the next, from whichever end is nearer', () => {
  expect(names(inWalkingOrder([...row(1, 2), ...row(1, 1)]))).toEqual([
    ...['1/1/1', '1/1/2', '1/1/3'],
    ...['1/2/3', '1/2/2', '1/2/1'],
  ])
  expect(inWalkingOrder([])).toEqual([])
})

test('the block that ranks first comes first, the others in the order of their numbers', () => {
  const trees = [...row(1, 1), ...row(2, 1), ...row(3, 1)]
  const blocks = inWalkingOrder(trees, (block) => (block === 2 ? -1 : 0)).map(({ block }) => block)

  expect(blocks).toEqual([2, 2, 2, 1, 1, 1, 3, 3, 3])
})
