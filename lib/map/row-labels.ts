/** Where the number of a row is shown: beyond its tagged end, or where it leaves the screen. */

import type { Box } from './grid-index'
import type { Point } from './plane'
import type { Scene, SceneRow } from './scene'
import { type Sizes, toCanvas, type View } from './view'

/** `onTrees`: where the row leaves the screen, and not beyond its end. */
export type RowLabel = Point & { row: SceneRow; onTrees: boolean }

/** Of a label's plate. */
export const labelPx = { width: 26, height: 22 }

export function rowLabels(scene: Scene, view: View, sizes: Sizes): RowLabel[] {
  if (!sizes.hasRowLabels) return []
  const inside = shrunk(view.screen, labelPx.width * 0.7)
  return scene.rows.flatMap((row): RowLabel[] => {
    const label = toCanvas(view, row.taggedEnd.x, row.taggedEnd.y)
    if (isInside(label, inside)) return [{ ...label, row, onTrees: false }]
    // There it needs its plate to be read, and plates need room: every other one will do.
    if (!sizes.hasRowPlates && row.row % 2 === 1) return []
    const point = firstInside(pathDown(scene, view, row), inside)
    return point ? [{ ...point, row, onTrees: true }] : []
  })
}

/** Along the row from its upper end, since a thumb and the zoom buttons are below. */
function pathDown(scene: Scene, view: View, { indexes, taggedEnd, farEnd }: SceneRow): Point[] {
  const trees = indexes.map((index) => ({ x: scene.xs[index] ?? 0, y: scene.ys[index] ?? 0 }))
  const first = trees[0] ?? taggedEnd
  const isFromTagged = away(first, taggedEnd) <= away(first, farEnd)
  const path = isFromTagged ? [taggedEnd, ...trees, farEnd] : [farEnd, ...trees, taggedEnd]
  const isDown = (path[0]?.y ?? 0) <= (path.at(-1)?.y ?? 0)
  return (isDown ? path : path.toReversed()).map(({ x, y }) => toCanvas(view, x, y))
}

function firstInside(path: readonly Point[], box: Box): Point | null {
  for (const [at, point] of path.entries()) {
    if (isInside(point, box)) {
      const before = path[at - 1]
      return before ? entry(before, point, box) : point
    }
  }
  return null
}

/** Where a line from outside to inside crosses the edge. */
function entry(from: Point, to: Point, box: Box): Point {
  const shares = [
    from.x < box.minX ? (box.minX - from.x) / (to.x - from.x) : 0,
    from.x > box.maxX ? (box.maxX - from.x) / (to.x - from.x) : 0,
    from.y < box.minY ? (box.minY - from.y) / (to.y - from.y) : 0,
    from.y > box.maxY ? (box.maxY - from.y) / (to.y - from.y) : 0,
  ]
  const share = Math.max(...shares)
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share }
}

function isInside({ x, y }: Point, box: Box): boolean {
  return x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY
}

function shrunk(box: Box, by: number): Box {
  return { minX: box.minX + by, minY: box.minY + by, maxX: box.maxX - by, maxY: box.maxY - by }
}

function away(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y)
}
