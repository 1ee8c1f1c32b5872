import { expect, test } from 'vitest'

import { numbersToCall } from '@/components/day/emergency-lines'
import { saidDegrees } from '@/components/day/where-we-are'

const ofTheLaw = { kind: 'published', name: 'Directive (EU) 2018/1972, Article 109' }

test.each([
  {
    what: 'an empty card proposes the number of the country, and says so',
    card: {},
    numbers: [{ number: '112', proposedBy: ofTheLaw }],
  },
  {
    what: 'what the manager wrote comes first and alone',
    card: { number: '061', call: 'Mo 555 0100' },
    numbers: [
      { number: '061', proposedBy: null },
      { number: '555 0100', proposedBy: null },
    ],
  },
  {
    what: 'somebody to call does not take the place of the emergency number',
    card: { call: 'Mo 555 0100' },
    numbers: [
      { number: '112', proposedBy: ofTheLaw },
      { number: '555 0100', proposedBy: null },
    ],
  },
  {
    what: 'written among those to call it is written, and there once',
    card: { call: '112, then Mo 555 0100' },
    numbers: [
      { number: '112', proposedBy: null },
      { number: '555 0100', proposedBy: null },
    ],
  },
])('$what', ({ card, numbers }) => {
  expect(numbersToCall(card, 'Europe/Madrid')).toEqual(numbers)
})

test('where no country is known nothing is proposed', () => {
  expect(numbersToCall({}, 'Etc/UTC')).toEqual([])
})

test('coordinates are said with words for the sides, without a minus', () => {
  const compass = { north: 'north', south: 'south', east: 'east', west: 'west' }

  expect(saidDegrees({ lat: 41.123456, lon: -3.1 }, compass)).toBe('41.12346 north, 3.10000 west')
  expect(saidDegrees({ lat: -33.5, lon: 151.25 }, compass)).toBe('33.50000 south, 151.25000 east')
})
