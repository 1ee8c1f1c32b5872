/**
 * What somebody drew on a photo: a line along the wood that goes, with a bar across it where the cut is. Points
 * are shares of the picture's width and height, so that they fit it in any size.
 */

import type { Size } from './shrink-photo'

export type Point = { x: number; y: number }
/** It begins where the cut is. */
export type Stroke = readonly Point[]

/** Of the picture's longer side. */
const lineShare = 0.012
const barShare = 0.05
/** How far along the line its direction is taken: the first millimetres of a finger tremble. */
const aheadShare = 0.04

export function lineWidth({ width, height }: Size): number {
  return Math.max(2, Math.max(width, height) * lineShare)
}

/** As the `d` of an SVG path, which a canvas reads as well. */
export function pathOf(stroke: Stroke, size: Size): string {
  const points = stroke.map(({ x, y }) => ({ x: x * size.width, y: y * size.height }))
  const [from, to] = barOf(points, Math.max(size.width, size.height))
  return [`M${xy(from)}L${xy(to)}`, points.map((point, at) => `${at ? 'L' : 'M'}${xy(point)}`)]
    .flat()
    .join('')
}

/** Across the beginning of the line; level where there is only a point. */
function barOf(points: readonly Point[], longest: number): [Point, Point] {
  const start = points[0] ?? { x: 0, y: 0 }
  const ahead =
    points.find(({ x, y }) => Math.hypot(x - start.x, y - start.y) >= longest * aheadShare) ??
    points.at(-1) ??
    start
  const [along, up] = [ahead.x - start.x, ahead.y - start.y]
  const length = Math.hypot(along, up)
  const half = (longest * barShare) / 2
  const [x, y] = length === 0 ? [half, 0] : [(-up / length) * half, (along / length) * half]
  return [
    { x: start.x - x, y: start.y - y },
    { x: start.x + x, y: start.y + y },
  ]
}

function xy({ x, y }: Point): string {
  return `${x.toFixed(1)} ${y.toFixed(1)}`
}
