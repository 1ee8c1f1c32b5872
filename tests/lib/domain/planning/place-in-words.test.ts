import { describe, expect, test } from 'vitest'

import type { Species } from '@/lib/domain/orchard/types'
import { placeInWords } from '@/lib/domain/planning/place-in-words'

import { aBlock, treesOf } from '../an-orchard'

const kinds: Species[] = ['apple', 'pear', 'plum', 'cherry', 'plum', 'fig']

function rowOf(drawn: string) {
  return treesOf([drawn]).map((tree) => ({ ...tree, species: kinds[tree.place - 1] ?? 'other' }))
}

function describeTree(drawn: string, place: number, taggedEnd: 'low' | 'high' = 'low') {
  const row = rowOf(drawn)
  const tree = row.find((other) => other.place === place)
  if (!tree) throw new Error('no tree at that place')
  return placeInWords(tree, aBlock({ taggedEnd }), row)
}

describe('a tree in words', () => {
  test('a cherry, fourth from the tagged end, between two plums', () => {
    expect(describeTree('TTTTTT', 4)).toEqual({
      row: 1,
      nth: 4,
      species: 'cherry',
      left: { kind: 'tree', species: 'plum' },
      right: { kind: 'tree', species: 'plum' },
    })
  })

  test('gaps count, whether the inventory names them or leaves them out', () => {
    expect(describeTree('T..TTT', 4)).toMatchObject({ nth: 4, left: { kind: 'gap' } })
    expect(describeTree('T  TTT', 4)).toMatchObject({ nth: 4, left: { kind: 'gap' } })
    expect(describeTree('TTRTTT', 4)).toMatchObject({ nth: 4, left: { kind: 'gap' } })
  })

  test('places before the first tree are not seen, so they do not count', () => {
    expect(describeTree('..TTTT', 4)).toMatchObject({
      nth: 2,
      left: { kind: 'tree', species: 'plum' },
    })
    expect(describeTree('..TTTT', 3)).toMatchObject({ nth: 1, left: { kind: 'row_end' } })
    expect(describeTree('TTTT..', 4)).toMatchObject({ nth: 4, right: { kind: 'row_end' } })
  })

  test('a dead tree is still seen', () => {
    expect(describeTree('DTTTTT', 2)).toMatchObject({
      nth: 2,
      left: { kind: 'tree', species: 'apple' },
    })
  })

  test('with the tags at the high end everything is counted from there', () => {
    expect(describeTree('TTTTTT', 2, 'high')).toMatchObject({
      nth: 5,
      left: { kind: 'tree', species: 'plum' },
      right: { kind: 'tree', species: 'apple' },
    })
  })

  test.each([
    ['far', 'left', 'apple', 'plum'],
    ['far', 'right', 'plum', 'apple'],
    ['tagged', 'left', 'plum', 'apple'],
    ['tagged', 'right', 'apple', 'plum'],
  ] as const)('walking to the %s end with the tree on the %s', (towards, side, left, right) => {
    const row = rowOf('TTTTTT')
    const [, pear] = row
    if (!pear) throw new Error('no pear')

    expect(placeInWords(pear, aBlock(), row, { towards, side })).toMatchObject({
      left: { species: left },
      right: { species: right },
    })
  })
})
