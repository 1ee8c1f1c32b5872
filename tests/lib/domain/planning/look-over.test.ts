import { expect, test } from 'vitest'

import { type FinishedTree, treesToLookOver } from '@/lib/domain/planning/look-over'

const day = (date: string) => `2027-01-${date}T08:00:00.000Z`
const people = {
  ann: { since: day('02'), lookedOver: 0 },
  bo: { since: day('10'), lookedOver: 0 },
  cy: { since: day('01'), lookedOver: 3 },
}
const trees = (count: number, ...of: string[]): FinishedTree[] =>
  Array.from({ length: count }, (_, i) => ({ tree: i + 1, people: of }))

test('one of everybody of whom nothing was looked over comes first, the newest person before all', () => {
  const finished = [
    { tree: 1, people: ['ann'] },
    { tree: 2, people: ['bo'] },
    { tree: 3, people: ['cy'] },
  ]

  const firsts = treesToLookOver(finished, people, 'x').filter(({ because }) => because !== 'drawn')

  expect(firsts).toEqual([
    { tree: 2, because: { firstOf: 'bo' } },
    { tree: 1, because: { firstOf: 'ann' } },
  ])
})

test('a tree of a pair stands for both', () => {
  const [first, ...others] = treesToLookOver([{ tree: 7, people: ['ann', 'bo'] }], people, 'x')

  expect(first).toEqual({ tree: 7, because: { firstOf: 'bo' } })
  expect(others).toEqual([])
})

test('about one in five of the rest is drawn, the same ones each time and others by another seed', () => {
  const drawn = (seed: string) => treesToLookOver(trees(1000, 'cy'), people, seed)

  expect(drawn('a').length).toBeGreaterThan(140)
  expect(drawn('a').length).toBeLessThan(260)
  expect(drawn('a')).toEqual(drawn('a'))
  expect(drawn('b')).not.toEqual(drawn('a'))
})

test('which of their trees is the first does not hang on the order in which they were finished', () => {
  const finished = trees(30, 'ann')
  const firstOf = (list: readonly FinishedTree[]) => treesToLookOver(list, people, 'x')[0]

  expect(firstOf(finished)).toEqual(firstOf(finished.toReversed()))
})
