/** Walking over the map with the arrow keys: along the row, and across to the next one. */

import type { Tree } from '@/lib/domain/orchard/types'

import type { Point } from './plane'
import { rowKey, type Scene, type SceneRow } from './scene'

export const arrows = {
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
} as const
export type Arrow = keyof typeof arrows

/** The tree the focus moves to; itself where there is nothing further. */
export function treeTowards(scene: Scene, from: number | null, arrow: Arrow): Tree | undefined {
  const index = scene.indexOf.get(from ?? Number.NaN)
  const tree = index === undefined ? undefined : scene.trees[index]
  const row = tree && scene.rowOf.get(rowKey(tree))
  if (index === undefined || !tree || !row) return scene.trees[0]

  const next = pointsAlong(scene, row, arrows[arrow])
    ? alongRow(scene, row, index, arrows[arrow])
    : acrossRows(scene, row, index, arrows[arrow])
  return scene.trees[next ?? beyondBlock(scene, index, arrows[arrow]) ?? index]
}

/** Rows run more up than across the screen, or the other way; the arrows that fit run along. */
function pointsAlong(scene: Scene, row: SceneRow, arrow: Point): boolean {
  // A row of one tree has no direction, so its block's longest row lends it one.
  const block = scene.rows.filter((other) => other.block === row.block)
  const longest = block.reduce((best, other) =>
    other.indexes.length > best.indexes.length ? other : best
  )
  const first = pointAt(scene, longest.indexes[0] ?? 0)
  const last = pointAt(scene, longest.indexes.at(-1) ?? 0)
  const isUpright = Math.abs(last.y - first.y) >= Math.abs(last.x - first.x)
  return isUpright === (arrow.y !== 0)
}

function alongRow(scene: Scene, row: SceneRow, index: number, arrow: Point): number | undefined {
  const at = row.indexes.indexOf(index)
  return [row.indexes[at - 1], row.indexes[at + 1]].find(
    (other) => other !== undefined && ahead(scene, index, other, arrow) > 0
  )
}

/** In the nearest row that lies that way, the tree straight across. */
function acrossRows(scene: Scene, row: SceneRow, index: number, arrow: Point): number | undefined {
  const rows = scene.rows
    .filter((other) => other.block === row.block && other.row !== row.row)
    .flatMap((other) => {
      const nearest = nearestTo(scene, index, other.indexes)
      return nearest !== undefined && ahead(scene, index, nearest, arrow) > 0
        ? [{ nearest, rowsAway: Math.abs(other.row - row.row) }]
        : []
    })
    .toSorted((a, b) => a.rowsAway - b.rowsAway)
  return rows[0]?.nearest
}

/** Where the block ends: the nearest tree of another block in that direction. */
function beyondBlock(scene: Scene, index: number, arrow: Point): number | undefined {
  const block = scene.trees[index]?.block
  const others = [...scene.trees.keys()].filter((other) => {
    if (scene.trees[other]?.block === block) return false
    const aheadBy = ahead(scene, index, other, arrow)
    return aheadBy > 0 && aheadBy >= aside(scene, index, other, arrow)
  })
  return nearestTo(scene, index, others)
}

function nearestTo(scene: Scene, index: number, others: readonly number[]): number | undefined {
  const from = pointAt(scene, index)
  const away = (other: number) => {
    const to = pointAt(scene, other)
    return Math.hypot(to.x - from.x, to.y - from.y)
  }
  return others.reduce<number | undefined>(
    (best, next) => (best === undefined || away(next) < away(best) ? next : best),
    undefined
  )
}

function ahead(scene: Scene, from: number, to: number, arrow: Point): number {
  const [a, b] = [pointAt(scene, from), pointAt(scene, to)]
  return (b.x - a.x) * arrow.x + (b.y - a.y) * arrow.y
}

function aside(scene: Scene, from: number, to: number, arrow: Point): number {
  const [a, b] = [pointAt(scene, from), pointAt(scene, to)]
  return Math.abs((b.x - a.x) * arrow.y - (b.y - a.y) * arrow.x)
}

function pointAt(scene: Scene, index: number): Point {
  return { x: scene.xs[index] ?? 0, y: scene.ys[index] ?? 0 }
}
