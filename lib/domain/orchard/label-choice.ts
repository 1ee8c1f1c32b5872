/** Which trees get a label, and in which order: as somebody walks who ties them on. */

import { stands, type Tree } from './types'

export type LabelChoice = { block: number; fromRow: number; toRow: number }

export function treesToLabel(trees: Iterable<Tree>, choice: LabelChoice): Tree[] {
  return [...trees]
    .filter(
      (tree) =>
        tree.block === choice.block &&
        tree.row >= choice.fromRow &&
        tree.row <= choice.toRow &&
        stands(tree)
    )
    .toSorted((a, b) => a.row - b.row || a.place - b.place)
}

/** The lowest and the highest row of a block with a tree in it; null where none stands. */
export function rowsOfBlock(
  trees: Iterable<Tree>,
  block: number
): { from: number; to: number } | null {
  const rows = [...trees]
    .filter((tree) => tree.block === block && stands(tree))
    .map(({ row }) => row)
  return rows.length === 0
    ? null
    : {
        from: rows.reduce((least, row) => Math.min(least, row)),
        to: rows.reduce((most, row) => Math.max(most, row)),
      }
}
