import { expect, test } from 'vitest'

import { isEqual } from '@/lib/hooks/is-equal'

test.each([
  [[{ code: 'stopped' }], [{ code: 'stopped' }], true],
  [[{ code: 'stopped' }], [{ code: 'on_break' }], false],
  [{ a: 1 }, { a: 1, b: undefined }, false],
  [null, {}, false],
  [Number.NaN, Number.NaN, true],
  [[], {}, false],
])('%j and %j: %s', (one, other, expected) => {
  expect(isEqual(one, other)).toBe(expected)
})

test('large things and maps are compared by identity: looking through them would cost more than drawing', () => {
  const large = () => Object.fromEntries(Array.from({ length: 200 }, (_, at) => [at, at]))
  const map = new Map()

  expect(isEqual(large(), large())).toBe(false)
  expect(isEqual(map, map)).toBe(true)
  expect(isEqual(map, new Map())).toBe(false)
})
