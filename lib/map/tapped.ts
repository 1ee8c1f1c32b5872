/** What a thumb meant. */

import type { Tree } from '@/lib/domain/orchard/types'

import { gapAt } from './paint-gaps'
import type { Point } from './plane'
import { rowLabels } from './row-labels'
import type { Scene } from './scene'
import { sizesAt, toPlane, type View } from './view'

export type Tapped =
  | { kind: 'tree'; tree: Tree }
  | { kind: 'row'; block: number; row: number }
  | { kind: 'nothing' }

/** Half of the 56 pixels that a gloved thumb needs. */
const thumbPx = 28

/** The nearest thing within reach: a tree, an empty place where those are shown, or a row's number. */
export function tappedAt(scene: Scene, view: View, at: Point, hasGaps = false): Tapped {
  const { x, y } = toPlane(view, at)
  const index = scene.index.nearest(x, y, thumbPx / view.scale)
  const standingPx =
    index === null
      ? Number.POSITIVE_INFINITY
      : Math.hypot((scene.xs[index] ?? 0) - x, (scene.ys[index] ?? 0) - y) * view.scale
  const gap = hasGaps ? gapAt(scene, view, at) : null
  const isGap = gap !== null && gap.px <= thumbPx && gap.px < standingPx
  const treePx = isGap ? gap.px : standingPx
  const label = rowLabels(scene, view, sizesAt(scene, view))
    .map((found) => ({ ...found, px: Math.hypot(found.x - at.x, found.y - at.y) }))
    .filter(({ px }) => px <= thumbPx && px < treePx)
    .reduce<{ px: number; row: { block: number; row: number } } | null>(
      (best, next) => (best === null || next.px < best.px ? next : best),
      null
    )
  if (label) return { kind: 'row', block: label.row.block, row: label.row.row }
  const standing = index === null ? undefined : scene.trees[index]
  const tree = isGap ? gap.tree : standing
  return tree ? { kind: 'tree', tree } : { kind: 'nothing' }
}
