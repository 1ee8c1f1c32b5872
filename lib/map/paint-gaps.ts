/** Empty places: a cross where a tree would stand, for whoever is to plant there. */

import type { Tree } from '@/lib/domain/orchard/types'

import type { Box } from './grid-index'
import type { Picture } from './paint'
import type { Scene } from './scene'
import { meet, toCanvas, toPlane, type View } from './view'

export function paintGaps(
  context: CanvasRenderingContext2D,
  { scene, view, sizes, palette, hasGaps }: Picture,
  square: Box
): void {
  if (!hasGaps || sizes.isHeaped) return
  const arm = Math.max(2.5, Math.min(9, sizes.markPx * 0.4))
  for (const { x: planeX, y: planeY } of scene.gaps) {
    const { x, y } = toCanvas(view, planeX, planeY)
    if (!meet({ minX: x - arm, maxX: x + arm, minY: y - arm, maxY: y + arm }, square)) continue
    context.beginPath()
    context.moveTo(x - arm, y - arm)
    context.lineTo(x + arm, y + arm)
    context.moveTo(x + arm, y - arm)
    context.lineTo(x - arm, y + arm)
    // On any ground: over a picture from above, too.
    for (const [colour, width] of [
      [palette.paper, 5],
      [palette.text, 2.25],
    ] as const) {
      context.strokeStyle = colour
      context.lineWidth = width
      context.stroke()
    }
  }
}

/** The empty place under a thumb, and how far from it in pixels. */
export function gapAt(
  { gaps }: Scene,
  view: View,
  at: { x: number; y: number }
): { tree: Tree; px: number } | null {
  const { x, y } = toPlane(view, at)
  const found = gaps.map((gap) => ({
    tree: gap.tree,
    px: Math.hypot(gap.x - x, gap.y - y) * view.scale,
  }))
  return found.reduce<{ tree: Tree; px: number } | null>(
    (best, next) => (best === null || next.px < best.px ? next : best),
    null
  )
}
