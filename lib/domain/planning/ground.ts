/** The orchard as somebody on foot meets it: rows are walls, alleys are open. */

import { groupBy } from '@/lib/util/group-by'

import { type Offset, offsetFrom } from '../orchard/distance'
import { positionsOf } from '../orchard/positions'
import { type Block, stands, type Tree } from '../orchard/types'

/** A tree in its block's own directions: along the rows upwards, and across them to the right. */
export type Spot = { no: number; block: number; row: number; alongM: number; acrossM: number }

/** A row from end to end, with the step that takes one round its last tree. */
export type Wall = { row: number; lowM: number; highM: number }

export type BlockGround = {
  block: Block
  /** In order of the rows. */
  walls: readonly Wall[]
  /** How far along each row its standing and dead trees are. */
  standing: ReadonlyMap<number, readonly number[]>
  /** Metres east and north of one point of the orchard. */
  offsetAt: (alongM: number, acrossM: number) => Offset
}

export type Ground = {
  spots: ReadonlyMap<number, Spot>
  blocks: ReadonlyMap<number, BlockGround>
}

export function groundOf(trees: readonly Tree[], blocks: readonly Block[]): Ground {
  const positions = positionsOf(trees, blocks)
  const origin = positions.values().next().value?.position ?? { lat: 0, lon: 0 }
  const offsets = new Map(
    [...positions].map(([no, { position }]) => [no, offsetFrom(origin, position)] as const)
  )
  const byBlock = groupBy(trees, (tree) => tree.block)
  const spots = new Map<number, Spot>()
  const grounds = new Map<number, BlockGround>()
  for (const block of blocks) {
    const own = byBlock.get(block.no) ?? []
    const frame = frameOf(own, offsets, block.bearingDeg)
    for (const tree of own) spots.set(tree.no, spotOf(tree, offsets, frame))
    const rows = standingRows(own, spots)
    grounds.set(block.no, {
      block,
      walls: wallsOf(rows, block.treeSpacingM / 2),
      standing: new Map([...rows].map(([row, own]) => [row, own.map((spot) => spot.alongM)])),
      offsetAt: (alongM, acrossM) => ({
        eastM: alongM * frame.east + acrossM * frame.north,
        northM: alongM * frame.north - acrossM * frame.east,
      }),
    })
  }
  return { spots, blocks: grounds }
}

/** The direction of the rows as a step of one metre. */
type Frame = { east: number; north: number }

function frameOf(
  trees: readonly Tree[],
  offsets: ReadonlyMap<number, Offset>,
  bearing: number | null
): Frame {
  if (bearing !== null) return frameAt((bearing * Math.PI) / 180)
  const inRows = trees.toSorted((a, b) => a.row - b.row || a.place - b.place)
  const first = inRows[0]
  const last = inRows.findLast((tree) => tree.row === first?.row)
  const from = first && offsets.get(first.no)
  const to = last && offsets.get(last.no)
  if (!from || !to || from === to) return frameAt(0)
  return frameAt(Math.atan2(to.eastM - from.eastM, to.northM - from.northM))
}

function frameAt(radians: number): Frame {
  return { east: Math.sin(radians), north: Math.cos(radians) }
}

function spotOf(tree: Tree, offsets: ReadonlyMap<number, Offset>, frame: Frame): Spot {
  const { eastM, northM } = offsets.get(tree.no) ?? { eastM: 0, northM: 0 }
  return {
    no: tree.no,
    block: tree.block,
    row: tree.row,
    alongM: eastM * frame.east + northM * frame.north,
    acrossM: eastM * frame.north - northM * frame.east,
  }
}

/** Where no tree stands any more, nothing is in the way. */
function standingRows(
  trees: readonly Tree[],
  spots: ReadonlyMap<number, Spot>
): Map<number, Spot[]> {
  const standing = trees.filter(stands).flatMap((tree) => spots.get(tree.no) ?? [])
  return groupBy(standing, (spot) => spot.row)
}

function wallsOf(rows: ReadonlyMap<number, readonly Spot[]>, roundM: number): Wall[] {
  return [...rows]
    .map(([row, own]) => ({
      row,
      lowM: Math.min(...own.map((spot) => spot.alongM)) - roundM,
      highM: Math.max(...own.map((spot) => spot.alongM)) + roundM,
    }))
    .toSorted((a, b) => a.row - b.row)
}
