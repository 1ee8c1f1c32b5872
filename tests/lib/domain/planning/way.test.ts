import { describe, expect, test } from 'vitest'

import { step } from '@/lib/domain/orchard/distance'
import { stands, type Tree } from '@/lib/domain/orchard/types'
import { groundOf } from '@/lib/domain/planning/ground'
import { type Way, wayTo } from '@/lib/domain/planning/way'

import { aBlock, someField, treesOf } from '../an-orchard'

// Rows run north, row 2 is east of row 1. Numbers run along the rows: 1 to 6, 7 to 12, 13 to 18.
const block = aBlock()
const trees = treesOf(['TTTTTT', 'TTTTTT', 'TTTTTT'])
const ground = groundOf(trees, [block])

describe('the way', () => {
  test.each<[string, number | null, number, Partial<Way>]>([
    ['up my own row', 1, 4, { start: 'here', towards: 'far', trees: 3, side: 'left', metres: 12 }],
    ['back down it', 4, 1, { start: 'here', towards: 'tagged', trees: 3, side: 'left' }],
    ['straight over the alley', 2, 8, { towards: 'across', trees: 0, side: 'ahead', metres: 4 }],
    ['next row, northwards: it is east', 1, 10, { towards: 'far', trees: 3, side: 'right' }],
    ['next row, southwards: it is east', 6, 8, { towards: 'tagged', trees: 4, side: 'left' }],
    ['next row, northwards: it is west', 7, 4, { towards: 'far', trees: 3, side: 'left' }],
    [
      'round the tagged end of row 2',
      2,
      14,
      { start: 'tagged_end', towards: 'far', trees: 2, side: 'right', metres: 6 + 6 + 8 },
    ],
    [
      'round the far end of row 2',
      6,
      17,
      { start: 'far_end', towards: 'tagged', trees: 2, side: 'left' },
    ],
    [
      'from nowhere known',
      null,
      10,
      { start: 'tagged_end', towards: 'far', trees: 4, side: 'left', metres: 14 },
    ],
  ])('%s', (_, from, to, way) => {
    expect(wayTo(ground, from, to)).toMatchObject({ block: 1, ...way })
  })

  test('counts trees that stand, not gaps', () => {
    const withGap = treesOf(['TT.RDT'])

    expect(wayTo(groundOf(withGap, [block]), 1, 6)).toMatchObject({ trees: 3 })
  })

  test('turns round where the tags are at the high end', () => {
    const high = groundOf(trees, [aBlock({ taggedEnd: 'high' })])

    expect(wayTo(high, 1, 4)).toMatchObject({ towards: 'tagged', side: 'left' })
    expect(wayTo(high, null, 10)).toMatchObject({ start: 'tagged_end', towards: 'far', trees: 3 })
  })

  test('into another block names the end one comes in by', () => {
    const north = aBlock({ no: 2, firstTree: step(someField, 0, 100) })
    const both = groundOf([...trees, ...treesOf(['TTT'], north, 19)], [block, north])

    expect(wayTo(both, 6, 20)).toMatchObject({
      block: 2,
      start: 'tagged_end',
      towards: 'far',
      trees: 2,
    })
    expect(wayTo(both, 20, 5)).toMatchObject({
      block: 1,
      start: 'far_end',
      towards: 'tagged',
      trees: 2,
    })
  })

  // 46 m at 3.5 ft/s (1.067 m/s, MUTCD) is 43 s; a pace is 0.75 m, common practice.
  test('in paces, and in minutes that are never none', () => {
    const long = groundOf(treesOf(['T'.repeat(60)]), [block])

    expect(wayTo(long, 1, 13)).toMatchObject({ metres: 48, paces: 64, minutes: 1 })
    expect(wayTo(long, 1, 2)).toMatchObject({ metres: 4, paces: 5, minutes: 1 })
    expect(wayTo(long, 1, 49)).toMatchObject({ metres: 192, paces: 256, minutes: 3 })
  })

  test('to a tree nobody knows there is none', () => {
    expect(wayTo(ground, 1, 999)).toBeNull()
    expect(wayTo(ground, 999, 4)).toMatchObject({ start: 'tagged_end' })
  })
})

test('following the way leads to the tree, from every tree to every other', () => {
  const rows = ['T.TTDT', 'TT.TTT', '  TRTT', 'TTTTTT']
  for (const taggedEnd of ['low', 'high'] as const) {
    const gappy = treesOf(rows)
    const here = groundOf(gappy, [aBlock({ taggedEnd })])
    const standing = gappy.filter((tree) => tree.life === 'standing')
    for (const from of standing)
      for (const to of standing) {
        const way = wayTo(here, from.no, to.no)
        if (!way) throw new Error('both trees are on the ground')
        if (way.towards === 'across') {
          expect(to.place).toBe(from.place)
          continue
        }

        const up = (way.towards === 'far') === (taggedEnd === 'low') ? 1 : -1
        const reached = startPlaces(gappy, from, to, way.start, up).map(
          (startPlace) =>
            inRow(gappy, to.row)
              .filter((tree) => (tree.place - startPlace) * up > 0)
              .toSorted((a, b) => (a.place - b.place) * up)[way.trees - 1]
        )
        expect(reached).toContain(to)
      }
  }
})

function startPlaces(all: Tree[], from: Tree, to: Tree, start: Way['start'], up: 1 | -1): number[] {
  if (start === 'here') return [from.place]
  if (start !== 'shorter_row_end') return [up === 1 ? 0 : 7]
  const between = [1, 2, 3, 4].filter((row) => (row - from.row) * (row - to.row) < 0)
  return between.flatMap((row) => {
    const places = inRow(all, row).map((tree) => tree.place)
    return [Math.min(...places) - 0.5, Math.max(...places) + 0.5]
  })
}

function inRow(all: Tree[], row: number): Tree[] {
  return all.filter((tree) => tree.row === row && stands(tree))
}
