/** Circles and lines over the ground: keep-outs, and the shape that somebody draws round trees. */

import type { Picture } from './paint'
import { toCanvas } from './view'

/** Nobody works in this circle but the arborist. */
export type KeepOut = { tree: number; metres: number }

export function paintKeepOuts(
  context: CanvasRenderingContext2D,
  { scene, view, palette, keepOuts }: Picture
): void {
  for (const { tree, metres } of keepOuts) {
    const index = scene.indexOf.get(tree)
    if (index === undefined || metres <= 0) continue
    const { x, y } = toCanvas(view, scene.xs[index] ?? 0, scene.ys[index] ?? 0)
    context.beginPath()
    context.arc(x, y, metres * scene.plane.unitsPerM * view.scale, 0, 2 * Math.PI)
    context.globalAlpha = 0.12
    context.fillStyle = palette.arborist
    context.fill()
    context.globalAlpha = 1
    context.strokeStyle = palette.arborist
    context.lineWidth = 2
    context.setLineDash([8, 5])
    context.stroke()
    context.setLineDash([])
  }
}

/** This device: a dot, and round it the circle in which it is. */
export function paintMe(
  context: CanvasRenderingContext2D,
  { scene, view, palette, me }: Picture
): void {
  if (!me) return
  const point = scene.plane.pointOf(me.position)
  const { x, y } = toCanvas(view, point.x, point.y)
  context.beginPath()
  context.arc(x, y, me.accuracyM * scene.plane.unitsPerM * view.scale, 0, 2 * Math.PI)
  context.globalAlpha = 0.12
  context.fillStyle = palette.ink
  context.fill()
  context.globalAlpha = 1
  context.strokeStyle = palette.ink
  context.lineWidth = 2
  context.stroke()
  context.beginPath()
  context.arc(x, y, 7, 0, 2 * Math.PI)
  context.fillStyle = palette.ink
  context.fill()
  context.strokeStyle = palette.paper
  context.lineWidth = 3
  context.stroke()
}

/** Closed by itself, with a dot at each corner that was tapped. */
export function paintOutline(context: CanvasRenderingContext2D, picture: Picture): void {
  const { palette, outline } = picture
  if (outline.length === 0) return
  const points = outline.map(({ x, y }) => toCanvas(picture.view, x, y))
  context.beginPath()
  for (const { x, y } of points) context.lineTo(x, y)
  context.closePath()
  context.globalAlpha = 0.15
  context.fillStyle = palette.called
  context.fill()
  context.globalAlpha = 1
  context.lineJoin = 'round'
  context.strokeStyle = palette.ink
  context.lineWidth = 2.5
  context.setLineDash([6, 4])
  context.stroke()
  context.setLineDash([])
  context.lineJoin = 'miter'
  for (const { x, y } of points.length <= mostCorners ? points : points.slice(0, 1)) {
    context.beginPath()
    context.arc(x, y, 5, 0, 2 * Math.PI)
    context.fillStyle = palette.paper
    context.fill()
    context.stroke()
  }
}

/** More than somebody taps: a line drawn by hand, of which only the beginning is marked. */
const mostCorners = 24
