/** What marks stand on: the blocks' shapes, the lines of the rows. */

import { blockEdgePx } from './block-names'
import type { Box } from './grid-index'
import type { Picture } from './paint'
import { isPictured } from './paint-aerial'
import type { Point } from './plane'
import { boxToPlane, meet, toCanvas } from './view'

export function paintGround(
  context: CanvasRenderingContext2D,
  picture: Picture,
  square: Box
): void {
  const { scene, view, sizes, palette } = picture
  const edgePx = blockEdgePx(scene.plane.unitsPerM, view)
  context.lineJoin = 'round'
  context.lineCap = 'round'

  // Over a picture of the same ground a tint says where the block is.
  context.globalAlpha = isPictured(picture) ? 0.25 : 1
  context.fillStyle = palette.block
  context.strokeStyle = palette.block
  context.lineWidth = 2 * edgePx
  const nearBlocks = boxToPlane(view, square, edgePx)
  for (const { hull, box } of scene.blocks) {
    if (!meet(box, nearBlocks)) continue
    context.beginPath()
    trace(context, picture, hull)
    context.closePath()
    context.fill()
    context.stroke()
  }

  context.globalAlpha = 1
  // Nobody sees a row between trees that are not seen singly.
  if (!sizes.isHeaped && !isPictured(picture)) paintRows(context, picture, square)
  context.lineJoin = 'miter'
  context.lineCap = 'butt'
}

function paintRows(context: CanvasRenderingContext2D, picture: Picture, square: Box): void {
  const { scene, view, sizes, palette } = picture
  context.strokeStyle = palette.alley
  context.lineWidth = sizes.spacingPx < 28 ? 3 : Math.min(24, sizes.spacingPx * 0.5)
  const nearRows = boxToPlane(view, square, context.lineWidth)
  // Between the crowns nobody sees how a line turns, and bevels are cheap.
  context.lineJoin = 'bevel'
  for (const row of scene.rows) {
    if (!meet(row.box, nearRows)) continue
    context.beginPath()
    trace(
      context,
      picture,
      row.corners.map((index) => pointAt(picture, index))
    )
    context.stroke()
  }
}

function pointAt({ scene }: Picture, index: number): Point {
  return { x: scene.xs[index] ?? 0, y: scene.ys[index] ?? 0 }
}

function trace(
  context: CanvasRenderingContext2D,
  { view }: Picture,
  points: readonly Point[]
): void {
  points.forEach((point, at) => {
    const { x, y } = toCanvas(view, point.x, point.y)
    if (at === 0) context.moveTo(x, y)
    else context.lineTo(x, y)
  })
}
