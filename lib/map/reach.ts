/** How far a tree reaches on the canvas, and so which trees a part of it shows. */

import type { Box } from './grid-index'
import type { Picture } from './paint'
import { boxToPlane, canopyPx, heapPx, toCanvas } from './view'

/** The square that a change of one tree touches. */
export function squareOf(picture: Picture, index: number): Box {
  const { scene, view } = picture
  const { x, y } = toCanvas(view, scene.xs[index] ?? 0, scene.ys[index] ?? 0)
  const reach = Math.ceil(reachPx(picture, scene.canopyR[index] ?? 0))
  // Whole pixels: a clip through the middle of one would leave a seam.
  const [middleX, middleY] = [Math.round(x), Math.round(y)]
  return {
    minX: middleX - reach,
    minY: middleY - reach,
    maxX: middleX + reach,
    maxY: middleY + reach,
  }
}

/** How far from its middle anything of a tree reaches, but for its bubbles. */
function reachPx({ view, sizes }: Picture, canopyR: number): number {
  // Its square of ground begins up to a side away, and its mark stands out by another.
  if (sizes.isHeaped) return 2 * heapPx
  return canopyPx(canopyR, view, sizes) + (sizes.hasNumbers ? 20 : 8)
}

/** Indexes of the trees of which anything is in the square. */
export function treesNear(picture: Picture, square: Box): number[] {
  const { scene, view } = picture
  return scene.index.within(boxToPlane(view, square, reachPx(picture, scene.widestCanopyR)))
}
