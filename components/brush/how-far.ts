/** How far a row is hauled, as one says it at its end: all, from tree to tree, or nothing. */

import type { BrushRow } from '@/lib/hooks'

export type HowFar = { how: 'all' | 'part' | 'nothing'; from: number; to: number }

/** Places in the row where wood lies that may be hauled. */
export function placesWithWood({ open, trees }: Pick<BrushRow, 'open' | 'trees'>): number[] {
  return trees
    .filter(({ no }) => open.includes(no))
    .map(({ place }) => place)
    .toSorted((a, b) => a - b)
}

/** Trees whose wood is gone. */
export function treesHauled(row: Pick<BrushRow, 'open' | 'trees'>, said: HowFar): number[] {
  if (said.how === 'nothing') return []
  if (said.how === 'all') return [...row.open]
  const [low, high] = [Math.min(said.from, said.to), Math.max(said.from, said.to)]
  return row.trees
    .filter(({ no, place }) => row.open.includes(no) && place >= low && place <= high)
    .map(({ no }) => no)
}
