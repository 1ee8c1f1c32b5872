/** Finds the tree that somebody types as they would say it. */

import { readTag } from '@/lib/domain/orchard/read-tag'
import { type Block, stands, type Tree } from '@/lib/domain/orchard/types'
import { type FoundByTag, findByTag } from '../tree/find-by-tag'

export type FoundByText =
  | { state: 'not_read' }
  | { state: 'no_number'; no: number }
  | { state: 'none_there'; row: number; place: number }
  /** The same row and place in several blocks. */
  | { state: 'in_which_block'; trees: readonly Tree[] }
  /** What is wrong in a block that was named. */
  | FoundByTag

export function findByText(
  text: string,
  { trees, blocks }: { trees: readonly Tree[]; blocks: readonly Block[] }
): FoundByText {
  const said = readTag(text, blocks)
  if (!said) return { state: 'not_read' }
  if (said.kind === 'number') {
    const tree = trees.find(({ no }) => no === said.no)
    return tree && stands(tree) ? { state: 'found', tree } : { state: 'no_number', no: said.no }
  }
  if (said.kind === 'row') return firstInRow(trees, said)
  const { block, row, place } = said
  if (block !== null) return findByTag(trees, { block, row: String(row), place: String(place) })
  const there = trees.filter((tree) => tree.row === row && tree.place === place && stands(tree))
  const [first] = there
  if (!first) return { state: 'none_there', row, place }
  return there.length === 1
    ? { state: 'found', tree: first }
    : { state: 'in_which_block', trees: there }
}

/** A row without a place: its first tree that stands. */
function firstInRow(
  trees: readonly Tree[],
  { block, row }: { block: number; row: number }
): FoundByText {
  const [first] = trees
    .filter((tree) => tree.block === block && tree.row === row && stands(tree))
    .toSorted((a, b) => a.place - b.place)
  return first
    ? { state: 'found', tree: first }
    : findByTag(trees, { block, row: String(row), place: '' })
}
