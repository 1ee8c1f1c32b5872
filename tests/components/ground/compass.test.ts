import { expect, test } from 'vitest'

import { compassPoint } from '@/components/ground/compass'
import { shownLength, typedLength } from '@/components/ground/lengths'

test.each([
  [0, 'n'],
  [22, 'n'],
  [23, 'ne'],
  [176, 's'],
  [-90, 'w'],
  [359, 'n'],
  [450, 'e'],
])('%s° is %s', (bearing, point) => {
  expect(compassPoint(bearing)).toBe(point)
})

test('a length that is shown is read back', () => {
  for (const units of ['metric', 'us'] as const)
    for (const metres of [0.5, 4.88, 6.1, 30])
      expect(typedLength(shownLength(metres, units), units)).toBeCloseTo(metres, 2)
  expect(typedLength('', 'metric')).toBeNull()
  expect(typedLength('-3', 'metric')).toBeNull()
})
