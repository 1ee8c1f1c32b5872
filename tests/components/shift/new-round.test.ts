import { expect, test } from 'vitest'

import { proposedRound, roundLacks } from '@/components/shift/new-round'
import { proposedOffs } from '@/components/shift/offs'

test('a round in late autumn belongs to the season it prepares, and runs three months', () => {
  expect(proposedRound('2026-11-25', ['apple'])).toEqual({
    kind: 'winter',
    season: '2027',
    species: ['apple'],
    from: '2026-11-25',
    to: '2027-02-25',
  })
})

test('everything that is missing is said at once', () => {
  const round = {
    kind: 'winter' as const,
    season: '27',
    species: [],
    from: '2027-03-01',
    to: '2027-02-01',
  }
  expect(roundLacks(round)).toEqual(['season', 'species', 'days'])
})

// University of California IPM, Pest Management Guidelines Apricot and Cherry: July and August.
test('of the round’s species only those are proposed as off whose months it is not', () => {
  expect(proposedOffs('2027-02-27', ['apple', 'apricot'], {})).toEqual({ apricot: 'season' })
  const rules = { apricot_from_month: 1, apricot_to_month: 2 }
  expect(proposedOffs('2027-02-27', ['apple', 'apricot'], rules)).toEqual({})
  expect(proposedOffs('2027-07-27', ['apple', 'apricot', 'cherry'], {})).toEqual({})
})
