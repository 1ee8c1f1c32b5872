/**
 * A tree described as one finds it standing there: "Row 7, fourth from the tagged end. A
 * cherry, between two plums."
 */

import { type Block, type Species, stands, type Tree } from '../orchard/types'

export type Neighbour =
  | { kind: 'tree'; species: Species }
  /** A place without a tree, with the row going on behind it. */
  | { kind: 'gap' }
  | { kind: 'row_end' }

export type PlaceInWords = {
  row: number
  /** From the tagged end; the first tree that stands there is the first. */
  nth: number
  species: Species
  left: Neighbour
  right: Neighbour
}

/** How one comes: which end one walks towards, with the tree on which side. */
export type Coming = { towards: 'tagged' | 'far'; side: 'left' | 'right' }

/**
 * Gaps count, since they are seen between the trees; empty places before the first tree do
 * not. Left and right are as seen when one turns to the tree; unless told otherwise, one
 * comes from the tagged end with the row on the left.
 */
export function placeInWords(
  tree: Tree,
  block: Block,
  trees: readonly Tree[],
  coming: Coming = { towards: 'far', side: 'left' }
): PlaceInWords {
  const isTaggedLow = block.taggedEnd === 'low'
  const row = trees
    .filter((other) => other.block === tree.block && other.row === tree.row && stands(other))
    .toSorted((a, b) => (isTaggedLow ? a.place - b.place : b.place - a.place))
  const firstPlace = row[0]?.place ?? tree.place
  const up = isTaggedLow ? 1 : -1
  const tagged = neighbourOf(row, tree.place, -up)
  const far = neighbourOf(row, tree.place, up)
  const isTaggedLeft = (coming.towards === 'far') === (coming.side === 'left')
  return {
    row: tree.row,
    nth: Math.abs(tree.place - firstPlace) + 1,
    species: tree.species,
    left: isTaggedLeft ? tagged : far,
    right: isTaggedLeft ? far : tagged,
  }
}

function neighbourOf(row: readonly Tree[], place: number, step: number): Neighbour {
  const next = row.find((tree) => tree.place === place + step)
  if (next) return { kind: 'tree', species: next.species }
  const goesOn = row.some((tree) => (tree.place - place) * step > 0)
  return goesOn ? { kind: 'gap' } : { kind: 'row_end' }
}
