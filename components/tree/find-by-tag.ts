/** Finds the tree whose tag somebody reads out: block, row and place as they are written on it. */

import type { Tree } from '@/lib/domain/orchard/types'

export type TagAsked = { block: number; row: string; place: string }

export type FoundByTag =
  | { state: 'found'; tree: Tree }
  | { state: 'no_row'; first: number; last: number }
  | { state: 'no_place'; row: number; first: number; last: number }
  | { state: 'no_tree'; row: number; place: number }

/** Gaps and removed trees have no tag any more. */
export function findByTag(trees: readonly Tree[], asked: TagAsked): FoundByTag {
  const inBlock = trees.filter(({ block }) => block === asked.block)
  const row = wholeNumber(asked.row)
  const inRow = inBlock.filter((tree) => tree.row === row)
  if (row === null || inRow.length === 0)
    return { state: 'no_row', ...ends(inBlock.map((tree) => tree.row)) }

  const place = wholeNumber(asked.place)
  const there = inRow.find((tree) => tree.place === place)
  if (place === null || !there)
    return { state: 'no_place', row, ...ends(inRow.map((tree) => tree.place)) }
  if (there.life === 'gap' || there.life === 'removed') return { state: 'no_tree', row, place }
  return { state: 'found', tree: there }
}

/** The tree at an end of a row, to stand for where one is. */
export function treeAtEnd(
  trees: readonly Tree[],
  {
    block,
    row,
    end,
  }: { block: { no: number; taggedEnd: 'low' | 'high' }; row: number; end: 'tagged' | 'far' }
): Tree | null {
  const inRow = trees
    .filter((tree) => tree.block === block.no && tree.row === row)
    .toSorted((a, b) => a.place - b.place)
  const isLow = (end === 'tagged') === (block.taggedEnd === 'low')
  return inRow.at(isLow ? 0 : -1) ?? null
}

function wholeNumber(text: string): number | null {
  return /^\s*\d{1,5}\s*$/.test(text) ? Number(text) : null
}

function ends(numbers: readonly number[]): { first: number; last: number } {
  return numbers.reduce(
    ({ first, last }, number) => ({ first: Math.min(first, number), last: Math.max(last, number) }),
    { first: numbers[0] ?? 0, last: numbers[0] ?? 0 }
  )
}
