import { expect, test } from 'vitest'

import { guardDoubleTap } from '@/components/tree/guard-double-tap'

test('a glove that taps twice or thrice does one step, and the next tap does the next', () => {
  const isMeant = guardDoubleTap()

  expect([1000, 1120, 1300, 2500, 2700].map(isMeant)).toEqual([true, false, false, true, false])
})
