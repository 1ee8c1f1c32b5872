import { expect, test } from 'vitest'

import { asTyped, metresTyped } from '@/components/flags/keep-out-typed'

test.each([
  ['10', 'metric', 10],
  ['7,5', 'metric', 7.5],
  [' 7.51 ', 'metric', 7.6],
  ['33', 'us', 10.1],
  ['0', 'metric', 0],
  ['', 'metric', null],
  ['ten', 'metric', null],
  ['-1', 'metric', null],
  ['201', 'metric', null],
] as const)('"%s" typed in %s is %s m, never less than meant', (typed, units, metres) => {
  expect(metresTyped(typed, units)).toBe(metres)
})

test.each([
  [10, 'metric', '10'],
  [10, 'us', '33'],
  [7.5, 'metric', '7.5'],
] as const)(
  '%s m in %s is typed as %s, and typed again is not narrower',
  (metres, units, typed) => {
    expect(asTyped(metres, units)).toBe(typed)
    expect(metresTyped(typed, units)).toBeGreaterThanOrEqual(metres)
  }
)
