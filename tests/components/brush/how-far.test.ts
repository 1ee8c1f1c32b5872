import { expect, test } from 'vitest'

import { placesWithWood, treesHauled } from '@/components/brush/how-far'
import type { BrushRow } from '@/lib/hooks'

// Places 1 to 6; wood lies under those of 2, 4 and 5.
const row = {
  trees: [1, 2, 3, 4, 5, 6].map((place) => ({ no: 100 + place, place })),
  open: [105, 102, 104],
} as unknown as BrushRow

test('only where wood lies can it be hauled from or to, along the row', () => {
  expect(placesWithWood(row)).toEqual([2, 4, 5])
})

test.each([
  { said: { how: 'all', from: 0, to: 0 }, trees: [105, 102, 104] },
  { said: { how: 'nothing', from: 2, to: 5 }, trees: [] },
  { said: { how: 'part', from: 2, to: 4 }, trees: [102, 104] },
  // Whoever came from the other end says it the other way round.
  { said: { how: 'part', from: 5, to: 4 }, trees: [104, 105] },
] as const)('$said.how from $said.from to $said.to', ({ said, trees }) => {
  expect(treesHauled(row, said)).toEqual(trees)
})
