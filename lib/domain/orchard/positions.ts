/** Where every tree is drawn: as surveyed, else where spacing and bearing put it. */

import { groupBy } from '@/lib/util/group-by'

import { shapeOf } from './block-shape'
import { type Offset, offsetFrom, positionAt, step } from './distance'
import type { Block, Position, Tree } from './types'

export type Placed = { position: Position; surveyed: boolean }

/** Between a block that nobody knows the place of and what is drawn west of it. */
const asideM = 20

/** Nowhere in particular; where an orchard without a single position is drawn. */
const nowhere: Position = { lat: 0, lon: 0 }

/**
 * A place for every tree, by `no`. A block without any position is a plain grid to the east
 * of the others: right within itself, and nobody may read a direction to it from the map.
 */
export function positionsOf(
  trees: readonly Tree[],
  blocks: readonly Block[]
): ReadonlyMap<number, Placed> {
  const byBlock = groupBy(trees, (tree) => tree.block)
  const placed = new Map<number, Placed>()
  const adrift: Block[] = []
  for (const block of blocks) {
    const own = byBlock.get(block.no) ?? []
    const anchors = anchorsOf(block, own)
    if (anchors.length === 0) adrift.push(block)
    else {
      const directions = directionsOf(block, own)
      placeBlock(placed, own, { ...directions, anchors, rowsTo: sideOfRows(anchors, directions) })
    }
  }
  for (const block of adrift) {
    const own = byBlock.get(block.no) ?? []
    const grid = {
      ...directionsOf(block, own),
      anchors: [anchorAt(1, 1, nowhere)],
      rowsTo: 1 as const,
    }
    placeAside(placed, own, grid)
  }
  return placed
}

type Anchor = { row: number; place: number; position: Position; alongRow: AlongRow }

/** Where one is after walking so many metres along the anchor's own row: for all rows of a block the same. */
type AlongRow = Map<number, Position>

type Directions = { bearingDeg: number; rowSpacingM: number; treeSpacingM: number }
/** `rowsTo`: 1 where row 2 lies to the right of row 1, -1 where rows are counted the other way. */
type Grid = Directions & { anchors: Anchor[]; rowsTo: 1 | -1 }

function anchorsOf(block: Block, trees: readonly Tree[]): Anchor[] {
  const surveyed = trees.flatMap(({ row, place, position }) =>
    position ? [anchorAt(row, place, position)] : []
  )
  return block.firstTree ? [anchorAt(1, 1, block.firstTree), ...surveyed] : surveyed
}

function anchorAt(row: number, place: number, position: Position): Anchor {
  return { row, place, position, alongRow: new Map() }
}

function directionsOf(block: Block, trees: readonly Tree[]): Directions {
  const { rowSpacingM, treeSpacingM } = block
  return {
    rowSpacingM,
    treeSpacingM,
    bearingDeg: block.bearingDeg ?? shapeOf(trees).bearingDeg ?? 0,
  }
}

/** As two surveyed trees of different rows have it. */
function sideOfRows([first, ...others]: Anchor[], { bearingDeg }: Directions): 1 | -1 {
  const other = others.find(({ row }) => row !== first?.row)
  if (!first || !other) return 1
  const { eastM, northM } = offsetFrom(first.position, other.position)
  const turn = (bearingDeg * Math.PI) / 180
  const rightM = eastM * Math.cos(turn) - northM * Math.sin(turn)
  return rightM * (other.row - first.row) < 0 ? -1 : 1
}

function placeBlock(placed: Map<number, Placed>, trees: readonly Tree[], grid: Grid): void {
  for (const tree of trees)
    placed.set(tree.no, {
      position: tree.position ?? gridPosition(tree, grid),
      surveyed: tree.position !== null,
    })
}

/** Measured from the nearest known tree, so that a bent row stays bent. */
function gridPosition(tree: Tree, grid: Grid): Position {
  const fromAnchor = (anchor: Anchor) => ({
    alongM: (tree.place - anchor.place) * grid.treeSpacingM,
    acrossM: (tree.row - anchor.row) * grid.rowSpacingM,
  })
  const awayM = (anchor: Anchor) => {
    const { alongM, acrossM } = fromAnchor(anchor)
    return Math.hypot(alongM, acrossM)
  }
  const anchor = grid.anchors.reduce((best, next) => (awayM(next) < awayM(best) ? next : best))
  const { alongM, acrossM } = fromAnchor(anchor)
  const along = anchor.alongRow.get(alongM) ?? step(anchor.position, grid.bearingDeg, alongM)
  anchor.alongRow.set(alongM, along)
  return step(along, grid.bearingDeg + 90 * grid.rowsTo, acrossM)
}

/** Laid out nowhere first, then moved until its north-west corner is beside what is drawn. */
function placeAside(placed: Map<number, Placed>, trees: readonly Tree[], grid: Grid): void {
  const laid = new Map<number, Placed>()
  placeBlock(laid, trees, grid)
  const origin = placed.values().next().value?.position ?? nowhere
  const others = [...placed.values()].map(({ position }) => offsetFrom(origin, position))
  const own = [...laid].map(([no, { position }]) => ({ no, ...offsetFrom(nowhere, position) }))
  const eastM =
    others.length === 0
      ? 0
      : maxOf(others, (tree) => tree.eastM) + asideM + maxOf(own, (tree) => -tree.eastM)
  const northM =
    others.length === 0
      ? 0
      : maxOf(others, (tree) => tree.northM) - maxOf(own, (tree) => tree.northM)
  for (const tree of own)
    placed.set(tree.no, {
      position: positionAt(origin, { eastM: tree.eastM + eastM, northM: tree.northM + northM }),
      surveyed: false,
    })
}

function maxOf(offsets: readonly Offset[], of: (offset: Offset) => number): number {
  return offsets.reduce((most, offset) => Math.max(most, of(offset)), Number.NEGATIVE_INFINITY)
}
