/** The trees of an orchard and how near they are to each other, as the referee reckons it. */

import type { Block, Position, Tree } from '@/lib/domain/orchard/types'

export type Ground = {
  trees: ReadonlyMap<number, Tree>
  blocks: ReadonlyMap<number, Block>
}

/** Where the orchard is, for the sun, as private.orchard_place: the first block or tree that has a place. */
export function positionOf({ blocks, trees }: Ground): Position | null {
  for (const block of blocks.values()) if (block.firstTree) return block.firstTree
  for (const tree of trees.values()) if (tree.position) return tree.position
  return null
}

/** The same rule as private.metres_apart: rough, but both sides must agree. Null: not known. */
export function metresApart(ground: Ground, a: Tree, b: Tree): number | null {
  if (a.position && b.position) {
    const degreeM = 111_320
    const northM = (a.position.lat - b.position.lat) * degreeM
    const eastM =
      (a.position.lon - b.position.lon) * degreeM * Math.cos((a.position.lat * Math.PI) / 180)
    return Math.hypot(northM, eastM)
  }
  const block = ground.blocks.get(a.block)
  if (a.block !== b.block || !block) return null
  return Math.hypot((a.row - b.row) * block.rowSpacingM, (a.place - b.place) * block.treeSpacingM)
}

/** A cut limb of one can reach a person at the other. */
export function areNeighbours(ground: Ground, a: Tree, b: Tree, apartM: number): boolean {
  if (a.no === b.no) return false
  const adjacent =
    a.block === b.block && Math.abs(a.row - b.row) <= 1 && Math.abs(a.place - b.place) <= 1
  return adjacent || isWithin(metresApart(ground, a, b), apartM)
}

/** A centimetre short, so that rounding never makes the phone stricter than the referee. */
export function isWithin(metres: number | null, limitM: number): boolean {
  return metres !== null && metres <= limitM - 0.01
}
