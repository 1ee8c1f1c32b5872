/** From the plane to the pixels of the canvas, and how big things are at this zoom. */

import type { Box } from './grid-index'
import type { Point } from './plane'

export type View = {
  /** Canvas pixels a unit of the plane. */
  scale: number
  /** The plane's origin, in pixels left of and above the canvas. */
  originX: number
  originY: number
  /** Pixels of the screen in one of the page. */
  sharpness: number
  /** What of the canvas is on the screen; the rest waits beyond its edge. */
  screen: Box
}

export function toCanvas(view: View, x: number, y: number): Point {
  return { x: x * view.scale - view.originX, y: y * view.scale - view.originY }
}

export function toPlane(view: View, { x, y }: Point): Point {
  return { x: (x + view.originX) / view.scale, y: (y + view.originY) / view.scale }
}

export function boxToPlane(view: View, box: Box, marginPx: number): Box {
  const low = toPlane(view, { x: box.minX - marginPx, y: box.minY - marginPx })
  const high = toPlane(view, { x: box.maxX + marginPx, y: box.maxY + marginPx })
  return { minX: low.x, minY: low.y, maxX: high.x, maxY: high.y }
}

export function meet(a: Box, b: Box): boolean {
  return a.minX <= b.maxX && a.maxX >= b.minX && a.minY <= b.maxY && a.maxY >= b.minY
}

export type Sizes = {
  /** Between neighbours in a row. */
  spacingPx: number
  /** The side of a mark's box. */
  markPx: number
  bubbleR: number
  /** Place numbers are shown. */
  hasNumbers: boolean
  hasRowLabels: boolean
  /** And have room for their plates. */
  hasRowPlates: boolean
  /** Trees are too close together to be seen singly. */
  isHeaped: boolean
}

/** The side of a square of ground whose trees are shown as one. */
export const heapPx = 9

/** Between trees of a row and between rows, in units of the plane. */
export type Spacings = { spacing: number; rowSpacing: number }

/** Marks keep their 8 pixels until they would cover their neighbours. */
export function sizesAt({ spacing, rowSpacing }: Spacings, { scale }: View): Sizes {
  const spacingPx = spacing * scale
  // Below this a shape cannot be told from another.
  const isHeaped = spacingPx < 5
  const leastPx = isHeaped ? heapPx - 1.5 : Math.min(8, spacingPx * 1.1)
  return {
    spacingPx,
    isHeaped,
    markPx: Math.min(26, Math.max(leastPx, spacingPx * 0.5)),
    bubbleR: spacingPx < 18 ? 12.5 : 14.5,
    hasNumbers: spacingPx >= 46,
    hasRowLabels: rowSpacing * scale >= 16,
    hasRowPlates: rowSpacing * scale >= 28,
  }
}

/**
 * The crown round the mark, in half pixels so that few sizes are met; never so small that the
 * mark stands on the bare block, nor so large that it reaches into the next tree's mark.
 */
export function canopyPx(canopyR: number, view: View, { markPx, spacingPx }: Sizes): number {
  const least = markPx * 0.66
  const most = Math.max(0, spacingPx - markPx * 0.5)
  return Math.round(2 * Math.min(most, Math.max(least, canopyR * view.scale))) / 2
}
