import { describe, expect, test } from 'vitest'

import {
  acreM2,
  hectareM2,
  shiftIn,
  spacingIn,
  treesPerAcre,
  treesPerHectare,
} from '@/lib/domain/orchard/density'

const footM = 0.3048
const inFeet = (row: number, tree: number) => ({
  rowSpacingM: row * footM,
  treeSpacingM: tree * footM,
})

// Trees to the acre as handbooks print them (43,560 over the product in feet; Kains, Five Acres and
// Independence, has 20 × 20 as 108.9), and the same by 2.471054 acres to the hectare.
describe('published spacings', () => {
  test.each([
    [40, 40, 27.225, 67.27],
    [30, 30, 48.4, 119.6],
    [25, 25, 69.696, 172.22],
    [24, 24, 75.625, 186.87],
    [22, 22, 90, 222.39],
    [20, 20, 108.9, 269.1],
    [20, 18, 121, 299],
    [20, 15, 145.2, 358.8],
    [18, 16, 151.25, 373.75],
    [14, 6, 518.571, 1281.42],
  ])('%s by %s feet', (row, tree, perAcre, perHectare) => {
    expect(treesPerAcre(inFeet(row, tree))).toBeCloseTo(perAcre, 3)
    expect(Math.abs(treesPerHectare(inFeet(row, tree)) - perHectare)).toBeLessThan(0.01)
  })

  test('metres', () => {
    expect(treesPerHectare({ rowSpacingM: 5, treeSpacingM: 6 })).toBeCloseTo(333.33, 2)
    expect(
      treesPerHectare(spacingIn('hexagonal', { rowSpacingM: 1, treeSpacingM: 5 }))
    ).toBeCloseTo(461.88, 2)
  })

  test('a triangle of 20 feet holds 2/√3 of the square', () => {
    const triangle = treesPerAcre(spacingIn('hexagonal', inFeet(1, 20)))

    expect(triangle).toBeCloseTo(125.746, 2)
    expect(triangle / treesPerAcre(inFeet(20, 20))).toBeCloseTo(1.1547005, 6)
  })
})

test('an acre is 43,560 square feet, and 2.471054 of them a hectare', () => {
  expect(acreM2).toBeCloseTo(43_560 * footM * footM, 6)
  expect(hectareM2 / acreM2).toBeCloseTo(2.471054, 6)
})

test('a pattern takes the distances it needs', () => {
  const said = { rowSpacingM: 7, treeSpacingM: 4 }

  expect(spacingIn('rectangular', said)).toEqual(said)
  expect(spacingIn('offset', said)).toEqual(said)
  expect(spacingIn('square', said)).toEqual({ rowSpacingM: 4, treeSpacingM: 4 })
  expect(shiftIn('rectangular')).toBe(0)
  expect(shiftIn('offset')).toBe(0.5)
})
