/** Where a tree of this row and place would stand, read from its neighbours. */

import { positionsOf } from './positions'
import type { Block, Position, Tree } from './types'

/** Between two neighbours of its row; else as spacing and bearing have it. Null: the block has no positions. */
export function positionFor(
  block: Block,
  trees: readonly Tree[],
  { row, place }: Pick<Tree, 'row' | 'place'>
): Position | null {
  const there = trees.find((tree) => tree.row === row && tree.place === place)
  if (there?.position) return there.position
  const inRow = trees
    .filter((tree) => tree.row === row && tree.position !== null)
    .toSorted((a, b) => a.place - b.place)
  return (
    between(
      inRow.findLast((tree) => tree.place < place),
      inRow.find((tree) => tree.place > place),
      place
    ) ?? bySpacing(block, trees, { row, place })
  )
}

function between(
  before: Tree | undefined,
  after: Tree | undefined,
  place: number
): Position | null {
  if (!before?.position || !after?.position) return null
  const share = (place - before.place) / (after.place - before.place)
  return {
    lat: before.position.lat + share * (after.position.lat - before.position.lat),
    lon: before.position.lon + share * (after.position.lon - before.position.lon),
  }
}

function bySpacing(
  block: Block,
  trees: readonly Tree[],
  at: Pick<Tree, 'row' | 'place'>
): Position | null {
  const [sample] = trees
  const isKnown = block.firstTree !== null || trees.some(({ position }) => position !== null)
  if (!sample || !isKnown) return null
  const asked: Tree = { ...sample, no: -1, ...at, position: null }
  return positionsOf([...trees, asked], [block]).get(-1)?.position ?? null
}
