import { expect, test } from 'vitest'

import { distanceM, step } from '@/lib/domain/orchard/distance'
import { positionFor } from '@/lib/domain/orchard/next-place'
import type { Block, Position, Tree } from '@/lib/domain/orchard/types'

const origin = { lat: 41.2, lon: -2.8 }
const block: Block = {
  ...{ no: 1, code: 'A', name: 'Pond Side', rowSpacingM: 6, treeSpacingM: 5 },
  ...{ bearingDeg: 0, firstTree: null, taggedEnd: 'low' },
}

function tree(row: number, place: number, position: Position | null): Tree {
  return {
    ...{
      no: row * 100 + place,
      block: 1,
      row,
      place,
      position,
      species: 'apple',
      life: 'standing',
    },
    ...{ cultivar: null, sizeClass: null, plantedYear: null, heightCm: null, trunkCm: null },
    asksSaw: false,
  }
}

test('between two neighbours, in proportion', () => {
  const trees = [tree(1, 2, origin), tree(1, 6, step(origin, 90, 20))]

  const at = positionFor(block, trees, { row: 1, place: 3 })

  expect(at && distanceM(at, step(origin, 90, 5))).toBeLessThan(0.01)
})

test('an empty place is where it was marked', () => {
  const gap = { ...tree(1, 3, step(origin, 0, 1)), life: 'gap' as const }

  expect(positionFor(block, [tree(1, 2, origin), gap], { row: 1, place: 3 })).toEqual(gap.position)
})

test('at the end of a row, by bearing and spacing', () => {
  const at = positionFor(block, [tree(1, 1, origin)], { row: 2, place: 3 })

  const there = step(step(origin, 0, 10), 90, 6)
  expect(at && distanceM(at, there)).toBeLessThan(0.01)
})

test('nowhere in a block that nobody surveyed', () => {
  expect(positionFor(block, [tree(1, 1, null)], { row: 1, place: 2 })).toBeNull()
})

test('to the left where the rows are counted to the left', () => {
  const trees = [tree(1, 1, origin), tree(2, 1, step(origin, 270, 6))]

  const at = positionFor(block, trees, { row: 3, place: 1 })

  expect(at && distanceM(at, step(origin, 270, 12))).toBeLessThan(0.01)
})
