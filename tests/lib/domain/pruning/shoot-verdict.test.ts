import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { budSites, habits, species } from '@/lib/domain/orchard/types'
import { readCounts, siteOf, verdictOf } from '@/lib/domain/pruning/shoot-verdict'
import { usualBuds } from '@/lib/domain/pruning/shorten'

const bearing = fc.record({
  species: fc.constantFrom(...species),
  habit: fc.constantFrom(...habits),
  buds: fc.constantFrom(...budSites),
})

// General gardening reference on apricots, second hand: a third; a half to two thirds.
describe('shortening', () => {
  test.each([
    ['middle', 1 / 3, 'may_go'],
    ['middle', 5 / 12, 'too_much'],
    ['base', 1 / 2, 'may_go'],
    ['base', 2 / 3, 'lead_says'],
    ['base', 3 / 4, 'too_much'],
    ['tip', 1 / 12, 'refused'],
    ['tip', 0, 'refused'],
    ['unknown', 1 / 12, 'refused'],
  ] as const)('an apricot with its buds at the %s by %s: %s', (buds, taken, verdict) => {
    expect(verdictOf({ species: 'apricot', habit: 'both', buds }, taken)).toBe(verdict)
  })

  test('is not judged more kindly when more is taken', () => {
    const order = ['may_go', 'lead_says', 'too_much', 'refused']
    const share = fc.integer({ min: 0, max: 12 })
    fc.assert(
      fc.property(bearing, share, share, (tree, a, b) => {
        const rank = (taken: number) => order.indexOf(verdictOf(tree, taken / 12))
        expect(rank(Math.min(a, b))).toBeLessThanOrEqual(rank(Math.max(a, b)))
      })
    )
  })
})

describe('counted buds', () => {
  test.each(['base', 'middle', 'tip'] as const)('drawn for the %s are read as it', (site) => {
    expect(siteOf(usualBuds[site])).toBe(site)
  })

  test('spread evenly count as bearing to the tip, and are not shortened', () => {
    expect(siteOf(Array(10).fill(3))).toBe('tip')
  })

  test.each([
    ['0 1 2 3 4 4 3 1 0 0', [0, 1, 2, 3, 4, 4, 3, 1, 0, 0]],
    [' 1,1,1,1,1,1,1,1,1,20 ', [1, 1, 1, 1, 1, 1, 1, 1, 1, 20]],
  ])('"%s" is ten numbers', (typed, counts) => {
    expect(readCounts(typed)).toEqual(counts)
  })

  test.each([
    '',
    '1 2 3',
    '0 0 0 0 0 0 0 0 0 0',
    '1 1 1 1 1 1 1 1 1 21',
    '1 1 1 1 1 1 1 1 1 -1',
    '1 1 1 1 1 1 1 1 1 x',
    '1 1 1 1 1 1 1 1 1 1 1',
  ])('"%s" is not', (typed) => {
    expect(readCounts(typed)).toBeNull()
  })
})
