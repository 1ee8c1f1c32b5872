import { expect, test } from 'vitest'

import { barLengthM, rowLabels } from '@/components/paper/map-facts'
import type { Tree } from '@/lib/domain/orchard/types'

test('a row’s number stands one spacing before its first tree, in the line of the row', () => {
  const dots = [
    { no: 1, x: 100, y: 50 },
    { no: 2, x: 130, y: 90 },
    { no: 3, x: 10, y: 10 },
  ]
  const at = (no: number, row: number, place: number) => [no, { no, row, place } as Tree] as const
  const trees = new Map([at(1, 7, 1), at(2, 7, 2), at(3, 8, 4)])

  expect(rowLabels({ dots, spacing: 50 }, trees)).toEqual([
    { row: 7, x: 70, y: 10 },
    { row: 8, x: -40, y: 10 },
  ])
})

test.each([
  [{ width: 720, scale: 2 }, 'metric', 100],
  [{ width: 720, scale: 100 }, 'metric', 5],
  [{ width: 720, scale: 2 }, 'us', 60.96],
] as const)('the scale bar of %j in %s is %d m', (picture, units, metres) => {
  expect(barLengthM(picture, units)).toBeCloseTo(metres, 5)
})
