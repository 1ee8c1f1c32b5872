/**
 * The picture of the way: five rows around the goal, turned so that walking is up. Geometry only,
 * in the units of the drawing.
 */

import type { BlockGround, Ground, Spot } from '@/lib/domain/planning/ground'
import type { Way } from '@/lib/domain/planning/way'

export const pictureWidth = 358
export const pictureHeight = 276

/** Where the goal stands, below the labels of the rows. */
const goalY = 84
/** From the goal down to where one stands, above the lower edge. */
const roomBelow = pictureHeight - goalY - 34
const closestTrees = 14
const widestTrees = 44
const shownRows = 2
const belowPicture = pictureHeight + 20

export type Point = { x: number; y: number }
export type PictureTree = Point & { no: number }
export type PictureRow = { row: number; labelX: number; trees: readonly PictureTree[] }

export type Picture = {
  rows: readonly PictureRow[]
  goal: Point
  /** How far two trees of a row stand apart. */
  apart: number
  /** From where one stands, or from the lower edge, to the goal. */
  way: readonly Point[]
  /** Null: nobody knows, or it is out of the picture. */
  here: Point | null
}

/** Null when the tree is not on the ground. */
export function fiveRows(
  ground: Ground,
  { from, to, way }: { from: number | null; to: number; way: Way }
): Picture | null {
  const goal = ground.spots.get(to)
  const own = goal && ground.blocks.get(goal.block)
  if (!goal || !own) return null

  const start = startOf(own, goal, from === null ? undefined : ground.spots.get(from), way)
  const turn = turnOf(own, way)
  const toX = pictureWidth / (2 * shownRows + 1) / own.block.rowSpacingM
  const toY = scaleY(own, Math.abs(goal.alongM - (start?.alongM ?? goal.alongM)), toX)
  const place = (spot: Pick<Spot, 'alongM' | 'acrossM'>): Point => ({
    x: pictureWidth / 2 + turn * (spot.acrossM - goal.acrossM) * toX,
    y: goalY - turn * (spot.alongM - goal.alongM) * toY,
  })

  const rows = rowsAround(ground, goal).map((row) => {
    const straightX = place({ ...goal, acrossM: acrossOf(own, goal, row) }).x
    return rowOf(ground, row, goal.block, { place, straightX })
  })
  const picture = { rows, goal: place(goal), apart: own.block.treeSpacingM * toY }
  if (from === to) return { ...picture, way: [], here: null }
  if (way.towards === 'across' && from !== null) {
    const here = place(ground.spots.get(from) ?? goal)
    return { ...picture, way: [here, picture.goal], here }
  }

  const trees = rows.find(({ row }) => row === goal.row)?.trees ?? []
  const alley = alleyOffset(own, way, toX)
  const startY = start ? place({ ...goal, alongM: start.alongM }).y : belowPicture
  const begin = {
    x: rowX(trees, startY, picture.goal.x) + alley,
    y: Math.min(startY, belowPicture),
  }
  return {
    ...picture,
    way: wayPoints(trees, picture.goal, begin, alley),
    here: start?.isHere && begin.y < pictureHeight - 10 ? begin : null,
  }
}

type Start = { alongM: number; isHere: boolean }

/** Where the last stretch begins, as far along the goal's row. */
function startOf(own: BlockGround, goal: Spot, from: Spot | undefined, way: Way): Start | null {
  if (way.start === 'here' && from) return { alongM: from.alongM, isHere: true }
  const wall = own.walls.find(({ row }) => row === goal.row)
  if (!wall || way.start === 'shorter_row_end') return null
  const isLow = (way.start === 'tagged_end') === (own.block.taggedEnd === 'low')
  return { alongM: isLow ? wall.lowM : wall.highM, isHere: false }
}

/** 1: walking up is towards higher places. */
function turnOf({ block }: BlockGround, { towards }: Way): 1 | -1 {
  if (towards === 'across') return 1
  return (towards === 'far') === (block.taggedEnd === 'low') ? 1 : -1
}

/** True to scale, unless the trees would touch or the start would fall out of the picture. */
function scaleY({ block }: BlockGround, walkM: number, toX: number): number {
  const apart = Math.min(widestTrees, block.treeSpacingM * toX)
  const fits = walkM > 0 ? (roomBelow / walkM) * block.treeSpacingM : apart
  return Math.max(closestTrees, Math.min(apart, fits)) / block.treeSpacingM
}

function rowsAround(ground: Ground, goal: Spot): number[] {
  const rows = ground.blocks.get(goal.block)?.walls.map(({ row }) => row) ?? []
  return rows.filter((row) => Math.abs(row - goal.row) <= shownRows)
}

/** Rows follow each other to the right, as seen from the low end. */
function acrossOf({ block }: BlockGround, goal: Spot, row: number): number {
  return goal.acrossM + (row - goal.row) * block.rowSpacingM
}

function rowOf(
  ground: Ground,
  row: number,
  block: number,
  { place, straightX }: { place: (spot: Spot) => Point; straightX: number }
): PictureRow {
  const trees = [...ground.spots.values()]
    .filter((spot) => spot.block === block && spot.row === row)
    .map((spot) => ({ no: spot.no, ...place(spot) }))
    .filter(({ y }) => y > -30 && y < pictureHeight + 30)
    .toSorted((a, b) => a.y - b.y)
  return { row, labelX: rowX(trees, 14, straightX), trees }
}

/** Left of the row is the tree when one walks in the alley on its right. */
function alleyOffset({ block }: BlockGround, { side }: Way, toX: number): number {
  if (side === 'ahead') return 0
  return (side === 'left' ? 0.42 : -0.42) * block.rowSpacingM * toX
}

function wayPoints(trees: readonly Point[], goal: Point, begin: Point, alley: number): Point[] {
  const passed = trees.filter(({ y }) => y > goal.y && y < begin.y).toReversed()
  return [
    begin,
    ...passed.map(({ x, y }) => ({ x: x + alley, y })),
    { x: goal.x + alley, y: goal.y + 6 },
    { x: goal.x + Math.sign(alley) * 26, y: goal.y },
  ]
}

/** Where a row runs at this height: rows may bend. */
function rowX(trees: readonly Point[], y: number, otherwise: number): number {
  const nearest = trees.reduce<Point | null>(
    (best, tree) => (best === null || Math.abs(tree.y - y) < Math.abs(best.y - y) ? tree : best),
    null
  )
  return nearest?.x ?? otherwise
}
