import { expect, test } from 'vitest'

import { kindsToPrune } from '@/lib/domain/pruning/kinds'

const when = { thisYear: 2026, month: 1 }
const cultivars = [
  { no: 1, species: 'apple', name: 'One', habit: 'spur', buds: 'unknown' },
  { no: 2, species: 'apple', name: 'Two', habit: 'both', buds: 'middle' },
  { no: 3, species: 'apple', name: 'Three', habit: 'shoot', buds: 'tip' },
] as const
const apple = (cultivar: number | null) => ({ species: 'apple', cultivar }) as const

test('a block has as many kinds as are pruned differently, the commonest first', () => {
  const kinds = kindsToPrune([apple(3), apple(1), apple(1), apple(null), apple(1)], cultivars, when)

  expect(kinds.map(({ cultivars, trees }) => ({ cultivars, trees }))).toEqual([
    { cultivars: [1], trees: 3 },
    { cultivars: [3], trees: 1 },
    { cultivars: [null], trees: 1 },
  ])
  expect(kinds.map(({ card }) => card.steps.at(-1))).toMatchObject([
    { what: 'outer_third' },
    { what: 'leave_short' },
    { what: 'leave_and_ask' },
  ])
})

test('cultivars with the same steps are one kind, for whatever reason; other species another', () => {
  // The one by its spurs, the other by where its buds sit.
  const trees = [apple(1), apple(2), { species: 'peach', cultivar: null } as const]

  expect(kindsToPrune(trees, cultivars, when)).toMatchObject([
    { species: 'apple', cultivars: [1, 2], trees: 2 },
    { species: 'peach', cultivars: [null], trees: 1 },
  ])
})

test('no trees, no kinds', () => {
  expect(kindsToPrune([], cultivars, when)).toEqual([])
})
