import { describe, expect, test } from 'vitest'

import { barLengthM, rowEnds, rowLines } from '@/components/paper/map-facts'
import { keepOutsOn, neighboursOf, planOf } from '@/components/paper/paper-plan'
import { positionAt } from '@/lib/domain/orchard/distance'

import { aBlock, someField, treesOf } from '../../lib/domain/an-orchard'

// Rows run north, row 2 is east of row 1; four metres every way.
const block = aBlock()
const trees = treesOf(['TT.', 'TTT'], block)
const frame = { width: 720, height: 780 }
const plan = planOf([block], trees, frame)
const [planned] = plan.blocks
if (!planned) throw new Error('the block is on the plan')

describe('a plan of a block', () => {
  test('has trees and empty places in its frame, north up, and to scale', () => {
    const [first, second] = planned.trees
    const all = [...planned.trees, ...planned.gaps]

    expect([planned.trees.length, planned.gaps.length]).toEqual([5, 1])
    for (const { x, y } of all) {
      expect(x).toBeGreaterThan(0)
      expect(x).toBeLessThan(frame.width)
      expect(y).toBeGreaterThan(0)
      expect(y).toBeLessThan(frame.height)
    }
    expect(second?.x).toBeCloseTo(first?.x ?? Number.NaN, 0)
    expect((first?.y ?? 0) - (second?.y ?? 0)).toBeCloseTo(4 * plan.scale, 0)
  })

  test('puts any position where the trees say', () => {
    const [first] = planned.trees
    const { x, y } = plan.at(positionAt(someField, { eastM: 4, northM: 0 }))

    expect(x).toBeCloseTo((first?.x ?? 0) + 4 * plan.scale, 0)
    expect(y).toBeCloseTo(first?.y ?? 0, 0)
  })

  test('shows the blocks beside it, but none whose place nobody knows', () => {
    const beside = aBlock({ no: 2, firstTree: positionAt(someField, { eastM: 12, northM: 0 }) })
    const lost = aBlock({ no: 3, firstTree: null })
    const theirs = [...treesOf(['TT'], beside, 20), ...treesOf(['TT'], lost, 30)]

    const found = neighboursOf(plan, [beside, lost], theirs)

    expect(found.map(({ block: { no } }) => no)).toEqual([2])
    expect(found[0]?.outline[0]?.x).toBeGreaterThan(planned.trees.at(-1)?.x ?? 0)
  })

  test('has each keep-out round its tree', () => {
    const [first] = planned.trees

    expect(
      keepOutsOn(plan, [
        { tree: 1, keepOutM: 6 },
        { tree: 2, keepOutM: null },
        { tree: 99, keepOutM: 6 },
      ])
    ).toEqual([{ tree: 1, x: first?.x, y: first?.y, r: 6 * plan.scale }])
  })
})

test('a row is a line through its places, the empty one too', () => {
  expect(rowLines(planned).map((row) => row.map(({ tree }) => tree.place))).toEqual([
    [1, 2, 3],
    [1, 2, 3],
  ])
})

describe('the number of a row', () => {
  test('stands beyond both its ends, framed where its tag hangs', () => {
    const ends = rowEnds(planned, { rowSpacing: plan.rowSpacing, away: 20 })
    const [tagged, far] = ends.filter(({ row }) => row === 2)

    expect(ends).toHaveLength(4)
    expect([tagged?.isTagged, far?.isTagged]).toEqual([true, false])
    // Places are counted from the south.
    expect(tagged?.y).toBeGreaterThan(Math.max(...planned.trees.map(({ y }) => y)))
    expect(far?.y).toBeLessThan(Math.min(...planned.trees.map(({ y }) => y)))
  })

  test('is left out where the next one would cover it, but never the last', () => {
    const ends = rowEnds(
      planOf([block], treesOf(Array(8).fill('TT')), frame).blocks[0] ?? planned,
      { rowSpacing: 6, away: 20 }
    )

    expect([...new Set(ends.map(({ row }) => row))]).toEqual([1, 4, 7, 8])
  })
})

test.each([
  [{ width: 720, scale: 2 }, 'metric', 100],
  [{ width: 720, scale: 100 }, 'metric', 5],
  [{ width: 720, scale: 2 }, 'us', 60.96],
] as const)('the scale bar of %j in %s is %d m', (picture, units, metres) => {
  expect(barLengthM(picture, units)).toBeCloseTo(metres, 5)
})
