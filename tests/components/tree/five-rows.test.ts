import { describe, expect, test } from 'vitest'

import { fiveRows, pictureHeight, pictureWidth } from '@/components/tree/five-rows'
import { groundOf } from '@/lib/domain/planning/ground'
import { wayTo } from '@/lib/domain/planning/way'
import { aBlock, treesOf } from '../../lib/domain/an-orchard'

const eight = 'TTTTTTTT'

function pictureOf(from: number | null, to: number, block = aBlock()) {
  const ground = groundOf(treesOf([eight, eight, eight, eight, eight, eight, eight], block), [
    block,
  ])
  const way = wayTo(ground, from, to)
  const picture = way && fiveRows(ground, { from, to, way })
  if (!picture) throw new Error('the goal is on the ground')
  return picture
}

/** Row and place to the number that `treesOf` gives. */
const no = (row: number, place: number) => (row - 1) * eight.length + place

describe('the map of five rows', () => {
  test('shows the row of the goal in the middle and two on each side', () => {
    const { rows, goal } = pictureOf(no(4, 1), no(4, 6))

    expect(rows.map(({ row }) => row)).toEqual([2, 3, 4, 5, 6])
    expect(goal.x).toBeCloseTo(pictureWidth / 2)
  })

  test('at the edge of a block there are fewer rows', () => {
    expect(pictureOf(no(1, 1), no(1, 6)).rows.map(({ row }) => row)).toEqual([1, 2, 3])
  })

  test.each([
    { from: no(4, 1), to: no(4, 6), towards: 'the far end' },
    { from: no(4, 8), to: no(4, 3), towards: 'the tagged end' },
  ])('walking to $towards is up', ({ from, to }) => {
    const { here, goal } = pictureOf(from, to)

    expect(here?.y).toBeGreaterThan(goal.y)
  })

  test('turned round, the higher rows stand on the left', () => {
    const up = pictureOf(no(4, 1), no(4, 6))
    const down = pictureOf(no(4, 8), no(4, 3))
    const x = (picture: typeof up, row: number) =>
      picture.rows.find((one) => one.row === row)?.labelX ?? 0

    expect(x(up, 6)).toBeGreaterThan(x(up, 2))
    expect(x(down, 6)).toBeLessThan(x(down, 2))
  })

  test('the way ends beside the goal, in the alley and not in the row', () => {
    const { way, goal } = pictureOf(no(4, 1), no(4, 6))
    const beside = way.at(-2)

    expect(beside?.x).not.toBeCloseTo(goal.x, 0)
    expect(way.at(-1)?.y).toBeCloseTo(goal.y)
  })

  test('with nobody knowing where one is, there is no arrow, and the way comes from the row end', () => {
    const { here, way, goal } = pictureOf(null, no(4, 6))

    expect(here).toBeNull()
    expect(way[0]?.y).toBeGreaterThan(goal.y)
  })

  test('a tree straight across the alley is reached straight across', () => {
    const { way, here, goal } = pictureOf(no(4, 4), no(5, 4))

    expect(here?.y).toBeCloseTo(goal.y, 0)
    expect(way).toHaveLength(2)
  })

  test('standing at the goal there is no way and no arrow over it', () => {
    const { way, here } = pictureOf(no(4, 4), no(4, 4))

    expect(way).toEqual([])
    expect(here).toBeNull()
  })

  test('a long way is drawn closer together, but trees never touch', () => {
    const block = aBlock()
    const long = 'T'.repeat(60)
    const ground = groundOf(treesOf([long], block), [block])
    const way = wayTo(ground, 1, 58)
    const picture = way && fiveRows(ground, { from: 1, to: 58, way })

    expect(picture?.apart).toBeGreaterThanOrEqual(14)
    expect(picture?.here).toBeNull()
    expect(picture?.way[0]?.y).toBeGreaterThan(pictureHeight)
  })
})
