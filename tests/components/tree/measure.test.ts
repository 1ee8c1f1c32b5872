import { expect, test } from 'vitest'

import { measured, measures, rangeOf } from '@/components/tree/measure'

test.each([
  ['', 'metric', null],
  [' 4,5 ', 'metric', 4.5],
  ['4', 'us', 10.16],
  ['3 7/8', 'us', 9.8425],
  ['1/2', 'us', 1.27],
  ['1/0', 'us', 'wrong'],
  ['79', 'us', 'wrong'],
  ['0.2', 'us', 0.508],
  ['-4', 'metric', 'wrong'],
  ['201', 'metric', 'wrong'],
  ['a lot', 'metric', 'wrong'],
  ['1e9', 'metric', 'wrong'],
] as const)('%j in %s units is %j', (typed, units, value) => {
  expect(measured(measures.limbCm, typed, units)).toEqual(value)
})

test('the ends of the range that is told may be typed', () => {
  for (const units of ['metric', 'us'] as const)
    for (const measure of Object.values(measures))
      for (const end of rangeOf(measure, units))
        expect(measured(measure, String(end), units)).toEqual(expect.any(Number))
})

test('what may be typed in inches and feet lies within what may be in SI', () => {
  for (const measure of Object.values(measures))
    for (const end of rangeOf(measure, 'us')) {
      const value = measured(measure, String(end), 'us')
      expect(value).toBeGreaterThanOrEqual(measure.least)
      expect(value).toBeLessThanOrEqual(measure.most)
    }
})
