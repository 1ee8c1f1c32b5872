/** Trees kept for somebody that they can still begin, in the order of the plates. */

import type { View } from '@/lib/hooks'
import { claimAt } from './claims'

export function dealtTreesOf(view: View, personId: string): number[] {
  const { state, ground } = view
  const placeOf = (no: number) => {
    const tree = ground.trees.get(no)
    return tree ? [tree.block, tree.row, tree.place] : [no]
  }
  return Object.entries(state?.deals ?? {})
    .filter(([, to]) => to.includes(personId))
    .map(([no]) => Number(no))
    .filter((no) => state?.work[no]?.state !== 'done' && !claimAt(view, no))
    .toSorted((a, b) => compare(placeOf(a), placeOf(b)))
}

function compare(a: readonly number[], b: readonly number[]): number {
  for (const [at, value] of a.entries()) {
    const difference = value - (b[at] ?? 0)
    if (difference !== 0) return difference
  }
  return 0
}
