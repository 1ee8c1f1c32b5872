/** Where the order of work matters: trees flagged for disease near this one. */

import type { Tree } from '@/lib/domain/orchard/types'
import type { View } from '@/lib/hooks'

/** As far as the map shows. */
const nearRows = 2

export type SickAround = { isThis: boolean; inRow: { row: number; trees: number } | null }

export function sickAround(
  { state, ground }: Pick<View, 'state' | 'ground'>,
  tree: Tree
): SickAround {
  const flagged = Object.values(state?.flags ?? {})
    .filter(({ kind }) => kind === 'disease')
    .flatMap((flag) => ground.trees.get(flag.tree) ?? [])
  const isThis = flagged.some(({ no }) => no === tree.no)
  const inRows = new Map<number, Set<number>>()
  for (const { no, block, row } of flagged) {
    if (no === tree.no || block !== tree.block || Math.abs(row - tree.row) > nearRows) continue
    inRows.set(row, (inRows.get(row) ?? new Set()).add(no))
  }
  const [most] = [...inRows].toSorted(([, a], [, b]) => b.size - a.size)
  return { isThis, inRow: most ? { row: most[0], trees: most[1].size } : null }
}
