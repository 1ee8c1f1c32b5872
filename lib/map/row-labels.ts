/** Where the number of a row is shown: beyond its tagged end, or where it leaves the screen. */

import type { Box } from './grid-index'
import type { Point } from './plane'
import type { Scene, SceneRow } from './scene'
import { type Sizes, toCanvas, type View } from './view'

export type RowLabel = Point & { row: SceneRow }

/** Of a label's plate. */
export const labelPx = { width: 26, height: 22 }

export function rowLabels(scene: Scene, view: View, sizes: Sizes): RowLabel[] {
  if (!sizes.hasRowLabels) return []
  const inside = shrunk(view.screen, labelPx.width * 0.7)
  return scene.rows.flatMap((row) => {
    const label = toCanvas(view, row.label.x, row.label.y)
    const point = isInside(label, inside) ? label : firstInside(pathDown(scene, view, row), inside)
    return point ? [{ ...point, row }] : []
  })
}

/** Along the trees from the upper end, since a thumb and the zoom buttons are below. */
function pathDown(scene: Scene, view: View, { indexes }: SceneRow): Point[] {
  const path = indexes.map((index) => toCanvas(view, scene.xs[index] ?? 0, scene.ys[index] ?? 0))
  return (path[0]?.y ?? 0) <= (path.at(-1)?.y ?? 0) ? path : path.toReversed()
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
