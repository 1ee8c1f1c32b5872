import { describe, expect, test } from 'vitest'

import { shapeOf } from '@/lib/domain/orchard/block-shape'
import { bearingDeg, distanceM, step } from '@/lib/domain/orchard/distance'
import { positionsOf } from '@/lib/domain/orchard/positions'

import { aBlock, someField, surveyed, treesOf } from '../an-orchard'

describe('where a tree is drawn', () => {
  test('a surveyed tree stays where it was surveyed', () => {
    const block = aBlock()
    const [tree] = surveyed(treesOf(['T']), block)

    expect(positionsOf(tree ? [tree] : [], [block]).get(1)).toEqual({
      position: tree?.position,
      surveyed: true,
    })
  })

  test('an unsurveyed block is laid out from its first tree, bearing and spacing', () => {
    const block = aBlock({ bearingDeg: 30, treeSpacingM: 3, rowSpacingM: 5 })

    const placed = positionsOf(treesOf(['TT', 'TT']), [block])

    const [first, along, across] = [1, 2, 3].map((no) => placed.get(no)?.position ?? someField)
    if (!first || !along || !across) throw new Error('three trees are placed')
    expect(first).toEqual(someField)
    expect(distanceM(first, along)).toBeCloseTo(3, 3)
    expect(bearingDeg(first, along)).toBeCloseTo(30, 2)
    expect(distanceM(first, across)).toBeCloseTo(5, 3)
    expect(bearingDeg(first, across)).toBeCloseTo(120, 2)
    expect([...placed.values()].every((tree) => !tree.surveyed)).toBe(true)
  })

  test('one unsurveyed tree among surveyed ones stands beside its neighbours', () => {
    const block = aBlock({ bearingDeg: null, firstTree: null })
    const known = surveyed(treesOf(['TTTT', 'TTTT']), aBlock({ bearingDeg: 70 }))
    const trees = known.map((tree) => (tree.no === 6 ? { ...tree, position: null } : tree))

    const placed = positionsOf(trees, [block]).get(6)

    expect(placed?.surveyed).toBe(false)
    expect(distanceM(placed?.position ?? someField, known[5]?.position ?? someField)).toBeLessThan(
      0.1
    )
  })

  test('a block without any position stands clear of all the others, true to its spacing', () => {
    const south = aBlock()
    const lost = aBlock({ no: 2, firstTree: null, bearingDeg: null, treeSpacingM: 6 })
    const trees = [...treesOf(['TTT', 'TTT'], south), ...treesOf(['TTT', 'TTT'], lost, 7)]

    const placed = positionsOf(trees, [south, lost])

    const at = (no: number) => placed.get(no)?.position ?? someField
    expect(distanceM(at(7), at(8))).toBeCloseTo(6, 2)
    for (let here = 1; here <= 6; here++)
      for (let there = 7; there <= 12; there++)
        expect(distanceM(at(here), at(there))).toBeGreaterThan(19.9)
    expect(placed.get(7)?.surveyed).toBe(false)
  })

  test('an orchard without a single position is a plain grid', () => {
    const block = aBlock({ firstTree: null, bearingDeg: null })

    const placed = positionsOf(treesOf(['TTT', 'TTT']), [block])

    expect(placed.size).toBe(6)
  })
})

describe('the shape of a block', () => {
  test('is read from its surveyed trees, over gaps and missing rows', () => {
    const block = aBlock({ bearingDeg: 130, treeSpacingM: 4.5, rowSpacingM: 6.5 })
    const trees = surveyed(treesOf(['T.TTT', '', ' T TT']), block)

    const shape = shapeOf(trees.filter((tree) => tree.life === 'standing'))

    expect(shape.bearingDeg).toBeCloseTo(130, 1)
    expect(shape.treeSpacingM).toBeCloseTo(4.5, 2)
    expect(shape.rowSpacingM).toBeCloseTo(6.5, 2)
    expect(shape.firstTree).toEqual(trees[0]?.position)
  })

  test('is the usual one where nothing was surveyed', () => {
    expect(shapeOf(treesOf(['TT']))).toEqual({
      rowSpacingM: 6,
      treeSpacingM: 5,
      bearingDeg: null,
      firstTree: null,
    })
  })

  test('is not bent by one mistaken survey', () => {
    const block = aBlock()
    const trees = surveyed(treesOf(['TTTTTTT', 'TTTTTTT']), block)
    const mistaken = trees.map((tree) =>
      tree.no === 4 && tree.position ? { ...tree, position: step(tree.position, 90, 30) } : tree
    )

    expect(shapeOf(mistaken).treeSpacingM).toBeCloseTo(4, 2)
  })
})
