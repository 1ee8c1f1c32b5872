import { describe, expect, test } from 'vitest'

import { placesOf, treesAround } from '@/lib/domain/orchard/around'
import { degreesAndMinutes } from '@/lib/domain/orchard/degrees'
import { distanceM, step } from '@/lib/domain/orchard/distance'
import type { Block, Tree } from '@/lib/domain/orchard/types'

const block = { no: 1, rowSpacingM: 6, treeSpacingM: 5 } as Block
const home = { lat: 38.1, lon: -121.2 }

function tree(no: number, more: Partial<Tree>): Tree {
  return { no, block: 1, row: 1, place: 1, life: 'standing', position: null, ...more } as Tree
}

describe('treesAround', () => {
  test('from row and place where nothing is measured, in its own block only', () => {
    const middle = tree(1, { row: 2, place: 3 })
    const others = [
      tree(2, { row: 1, place: 3 }),
      tree(3, { row: 2, place: 5 }),
      tree(4, { row: 2, place: 4, block: 2 }),
      tree(5, { row: 2, place: 4, life: 'gap' }),
      tree(6, { row: 9, place: 3 }),
    ]

    const trees = [middle, ...others]
    const around = treesAround(middle, { block, trees, places: placesOf(trees, [block]) }, 12)

    expect(around.northUp).toBe(false)
    expect(around.trees.map(({ tree, rightM, upM }) => [tree.no, rightM, upM])).toEqual([
      [2, -6, 0],
      [3, 0, 10],
    ])
  })

  test('north is up where trees are measured, in any block', () => {
    const middle = tree(1, { position: home })
    const east = tree(2, { block: 2, position: step(home, 90, 8) })
    const north = tree(3, { position: step(home, 0, 5) })
    const notMeasured = tree(4, { row: 1, place: 2 })

    const trees = [middle, east, north, notMeasured]
    const around = treesAround(middle, { block, trees, places: placesOf(trees, [block]) }, 10)

    expect(around.northUp).toBe(true)
    expect(around.trees.map(({ tree }) => tree.no)).toEqual([2, 3])
    expect(around.trees[0]?.rightM).toBeCloseTo(8, 3)
    expect(around.trees[0]?.upM).toBeCloseTo(0, 3)
    expect(around.trees[1]?.upM).toBeCloseTo(5, 3)
  })
})

describe('placesOf', () => {
  const known = { ...block, bearingDeg: 0, firstTree: home } as Block

  test('reckons from the corner of a block whose bearing is known, and says so', () => {
    const there = placesOf([tree(2, { row: 1, place: 3 })], [known]).get(2)

    expect(there?.surveyed).toBe(false)
    expect(there && distanceM(home, there.position)).toBeCloseTo(10, 3)
  })

  test.each([
    ['a corner without a bearing', { ...known, bearingDeg: null }],
    ['a bearing without a corner', { ...known, firstTree: null }],
  ])('of %s it says nothing', (_, unknown) => {
    expect(placesOf([tree(2, {})], [unknown]).size).toBe(0)
  })
})

test.each([
  [38.1234, 38, '7.404'],
  [-121.5, 121, '30.000'],
  [0, 0, '0.000'],
  // Never 60 minutes.
  [37.9999999, 38, '0.000'],
])('%s degrees are %s° %s′', (value, degrees, minutes) => {
  expect(degreesAndMinutes(value)).toEqual({ degrees, minutes })
})
