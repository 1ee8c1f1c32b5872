import { expect, test } from 'vitest'

import { offByReason } from '@/components/weather/off-by-reason'

test('what is off for one reason is said together, in the order of the round', () => {
  const offs = [
    { what: 'apricot', why: 'season' },
    { what: 'apple', why: 'wet' },
    { what: 'cherry', why: 'season' },
  ]

  expect(offByReason(offs)).toEqual([
    { why: 'season', whats: ['apricot', 'cherry'] },
    { why: 'wet', whats: ['apple'] },
  ])
})
