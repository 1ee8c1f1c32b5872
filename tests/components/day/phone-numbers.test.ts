import { expect, test } from 'vitest'

import { phoneNumbersIn, telHref } from '../../../components/day/phone-numbers'

test.each([
  { card: '911. Then Maren, whose number hangs inside the door.', numbers: ['911'] },
  { card: '112, luego Inés +34 600 11 22 33', numbers: ['112', '+34 600 11 22 33'] },
  { card: '(208) 555-0100 at gate 2', numbers: ['(208) 555-0100'] },
  { card: 'Shout. No number.', numbers: [] },
  { card: '', numbers: [] },
])('in "$card"', ({ card, numbers }) => {
  expect(phoneNumbersIn(card)).toEqual(numbers)
})

test('a phone dials digits and a leading plus only', () => {
  expect(telHref('+34 600 11 22 33')).toBe('tel:+34600112233')
  expect(telHref('(208) 555-0100')).toBe('tel:2085550100')
})
