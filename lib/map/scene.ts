/** Everything of an orchard that is drawn and rarely changes, in typed arrays. */

import { hullOf } from '@/lib/domain/orchard/hull'
import { positionsOf } from '@/lib/domain/orchard/positions'
import { type Block, stands, type Tree } from '@/lib/domain/orchard/types'
import { groupBy } from '@/lib/util/group-by'

import { type Box, boxOf, type GridIndex, gridIndex } from './grid-index'
import { type Plane, type Point, planeAround } from './plane'
import { straightened } from './straightened'

export type SceneRow = {
  block: number
  row: number
  /** Indexes into the scene's arrays, in order of the places. */
  indexes: readonly number[]
  /** Those of them at which its line bends, and its ends. */
  corners: readonly number[]
  /** Where the row's number may hang: beyond its tagged end, and beyond the other. */
  taggedEnd: Point
  farEnd: Point
  box: Box
}

export type SceneBlock = {
  block: Block
  hull: readonly Point[]
  box: Box
  surveyed: boolean
}

export type Scene = {
  plane: Plane
  box: Box
  /** Trees that stand, alive or dead. */
  trees: readonly Tree[]
  indexOf: ReadonlyMap<number, number>
  /** Places where no tree stands. */
  gaps: readonly (Point & { tree: Tree })[]
  xs: Float64Array
  ys: Float64Array
  canopyR: Float32Array
  widestCanopyR: number
  index: GridIndex
  rows: readonly SceneRow[]
  rowOf: ReadonlyMap<string, SceneRow>
  blocks: readonly SceneBlock[]
  /** The smallest usual distance between trees of a row: how close marks may come. */
  spacing: number
  rowSpacing: number
}

export function sceneOf(all: readonly Tree[], blocks: readonly Block[], upDeg = 0): Scene {
  const positions = positionsOf(all, blocks)
  const trees = all.filter(stands)
  const centre = positions.get((trees[0] ?? all[0])?.no ?? 0)?.position ?? { lat: 0, lon: 0 }
  const plane = planeAround(centre, upDeg)
  const xs = new Float64Array(trees.length)
  const ys = new Float64Array(trees.length)
  const canopyR = new Float32Array(trees.length)
  const blockOf = new Map(blocks.map((block) => [block.no, block]))
  trees.forEach((tree, index) => {
    const { x, y } = plane.pointOf(positions.get(tree.no)?.position ?? centre)
    xs[index] = x
    ys[index] = y
    canopyR[index] = canopyM(tree, blockOf.get(tree.block)) * plane.unitsPerM
  })
  const byBlock = groupBy(trees.keys(), (index) => trees[index]?.block)
  const rows = blocks.flatMap((block) => {
    const own = byBlock.get(block.no) ?? []
    return rowsOf(block, own, { trees, xs, ys, unitsPerM: plane.unitsPerM })
  })
  const rowsByBlock = groupBy(rows, (row) => row.block)
  return {
    plane,
    box: trees.length > 0 ? boxOf(xs, ys) : { minX: 0, minY: 0, maxX: 0, maxY: 0 },
    trees,
    gaps: all
      .filter(({ life }) => life === 'gap')
      .map((tree) => ({ tree, ...plane.pointOf(positions.get(tree.no)?.position ?? centre) })),
    indexOf: new Map(trees.map((tree, index) => [tree.no, index])),
    xs,
    ys,
    canopyR,
    widestCanopyR: canopyR.reduce((most, radius) => Math.max(most, radius), 0),
    index: gridIndex(xs, ys),
    rows,
    rowOf: new Map(rows.map((row) => [rowKey(row), row])),
    blocks: blocks.flatMap((block) => {
      const own = rowsByBlock.get(block.no) ?? []
      return sceneBlockOf(block, own, { trees, xs, ys })
    }),
    spacing: Math.min(...blocks.map((block) => block.treeSpacingM), 8) * plane.unitsPerM,
    rowSpacing: Math.min(...blocks.map((block) => block.rowSpacingM), 8) * plane.unitsPerM,
  }
}

export function rowKey({ block, row }: Pick<Tree, 'block' | 'row'>): string {
  return `${block} ${row}`
}

/** Half the crown's width by size, common practice; no wider than leaves the next tree its room. */
function canopyM({ sizeClass }: Tree, block: Block | undefined): number {
  const byClass = { young: 0.9, small: 1.6, medium: 2, large: 2.8 }
  const roomM = (block?.treeSpacingM ?? 4) * 0.46
  return Math.min(roomM, sizeClass === null ? 1.7 : byClass[sizeClass])
}

/** A bend that nobody could see, however near they look. */
const leastBendM = 0.02

type Placed = Pick<Scene, 'trees' | 'xs' | 'ys'>

function rowsOf(
  block: Block,
  own: readonly number[],
  { trees, xs, ys, unitsPerM }: Placed & { unitsPerM: number }
): SceneRow[] {
  const spacing = block.treeSpacingM * unitsPerM
  const byRow = groupBy(own, (index) => trees[index]?.row ?? 0)
  return [...byRow].map(([row, found]) => {
    const indexes = found.toSorted((a, b) => (trees[a]?.place ?? 0) - (trees[b]?.place ?? 0))
    const points = indexes.map((index) => ({ x: xs[index] ?? 0, y: ys[index] ?? 0 }))
    const box = boxOf(
      points.map(({ x }) => x),
      points.map(({ y }) => y)
    )
    const fromTagged = block.taggedEnd === 'low' ? points : points.toReversed()
    const taggedEnd = beyondEnd(fromTagged, spacing)
    const farEnd = beyondEnd(fromTagged.toReversed(), spacing)
    const corners = straightened(points, leastBendM * unitsPerM).flatMap((at) => indexes[at] ?? [])
    return { block: block.no, row, indexes, corners, taggedEnd, farEnd, box }
  })
}

/** One spacing further than the first of the points. */
function beyondEnd(points: readonly Point[], spacing: number): Point {
  const end = points[0] ?? { x: 0, y: 0 }
  const other = points.at(-1) ?? end
  const length = Math.hypot(end.x - other.x, end.y - other.y)
  if (length === 0) return { x: end.x, y: end.y + spacing }
  return {
    x: end.x + ((end.x - other.x) / length) * spacing,
    y: end.y + ((end.y - other.y) / length) * spacing,
  }
}

function sceneBlockOf(
  block: Block,
  own: readonly SceneRow[],
  { trees, xs, ys }: Placed
): SceneBlock[] {
  if (own.length === 0) return []
  // What bends less than anybody sees does not show in the outline either, and is most of the trees.
  const corners = own.flatMap((row) => row.corners)
  const hull = hullOf(corners.map((index) => ({ x: xs[index] ?? 0, y: ys[index] ?? 0 })))
  const box = boxOf(
    own.flatMap((row) => [row.box.minX, row.box.maxX]),
    own.flatMap((row) => [row.box.minY, row.box.maxY])
  )
  // Where a first tree is known, the whole block is where it is drawn, to a metre or two.
  const surveyed =
    block.firstTree !== null ||
    own.some((row) => row.indexes.some((index) => trees[index]?.position))
  return [{ block, hull, box, surveyed }]
}
