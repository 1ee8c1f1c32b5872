/** The trees: one stamp each, or one for a heap of them where they are too small to be seen singly. */

import type { Box } from './grid-index'
import { heapsIn } from './heaps'
import type { Picture } from './paint'
import { stampOnto } from './pixels'
import { treesNear } from './reach'
import type { TreeImage } from './tree-images'
import { canopyPx, heapPx } from './view'

/** Sets down a stamp with its middle at a place of the canvas. */
type SetDown = (image: TreeImage, x: number, y: number) => void

/** More than this are copied pixel by pixel; for fewer the canvas is quick enough. */
const fewStamps = 400

export function paintTrees(
  context: CanvasRenderingContext2D,
  picture: Picture,
  square: Box,
  indexes: readonly number[]
): void {
  const { sizes, view } = picture
  const side = { x: square.maxX - square.minX, y: square.maxY - square.minY }
  const stamps = sizes.isHeaped ? (side.x * side.y) / heapPx ** 2 : indexes.length
  if (stamps > fewStamps) {
    copyPixels(context, picture, square)
    return
  }
  setStamps(picture, square, ({ image, reach }, x, y) => {
    // On whole pixels of the screen, so that it stays sharp.
    const left = Math.round((x - reach) * view.sharpness) / view.sharpness
    const top = Math.round((y - reach) * view.sharpness) / view.sharpness
    context.drawImage(image, left, top, 2 * reach, 2 * reach)
  })
}

function setStamps(picture: Picture, square: Box, setDown: SetDown): void {
  if (picture.sizes.isHeaped) setHeaps(picture, square, setDown)
  else setTrees(picture, treesNear(picture, square), setDown)
}

/** Nothing is kept of each tree: what ten thousand leave behind is felt in the next frames. */
function setTrees(picture: Picture, indexes: readonly number[], setDown: SetDown): void {
  const { scene, looks, view, sizes, images, selected, dimmed, called } = picture
  for (const index of indexes) {
    const no = scene.trees[index]?.no ?? 0
    const image = images({
      mark: no === called ? null : looks.markAt(index),
      canopyR: canopyPx(scene.canopyR[index] ?? 0, view, sizes),
      isSelected: selected.has(no),
      hasDiseaseBadge: looks.hasDiseaseBadge(index),
      isFaint: dimmed.has(no),
    })
    const x = (scene.xs[index] ?? 0) * view.scale - view.originX
    setDown(image, x, (scene.ys[index] ?? 0) * view.scale - view.originY)
  }
}

function setHeaps(picture: Picture, square: Box, setDown: SetDown): void {
  const { view, images } = picture
  for (const { mark, isSelected, isFaint, x, y } of heapsIn(picture, square)) {
    const kind = { mark, isSelected, isFaint, canopyR: heapPx / 2, hasDiseaseBadge: false }
    setDown(images(kind), x * view.scale - view.originX, y * view.scale - view.originY)
  }
}

/** Of the screen's; so many rows are held in memory at once. */
const bandPx = 256

/** Band by band, because all pixels of a large screen are tens of megabytes. */
function copyPixels(context: CanvasRenderingContext2D, picture: Picture, square: Box): void {
  const { sharpness } = picture.view
  const left = Math.floor(square.minX * sharpness)
  const width = Math.ceil(square.maxX * sharpness) - left
  const canvas = new OffscreenCanvas(width, bandPx)
  const pencil = canvas.getContext('2d', { willReadFrequently: true })
  if (!pencil) throw new Error('This browser draws no canvas off the screen.')
  const data = pencil.createImageData(width, bandPx)
  const pixels = { values: new Uint32Array(data.data.buffer), width, height: bandPx }

  const bottom = Math.ceil(square.maxY * sharpness)
  for (let top = Math.floor(square.minY * sharpness); top < bottom; top += bandPx) {
    const band = { ...square, minY: top / sharpness, maxY: (top + bandPx) / sharpness }
    pixels.values.fill(0)
    // A stamp that lies across an edge of it is in both bands.
    setStamps(picture, band, ({ stamp, reach }, x, y) => {
      const stampLeft = Math.round((x - reach) * sharpness) - left
      stampOnto(pixels, stamp(), stampLeft, Math.round((y - reach) * sharpness) - top)
    })
    pencil.putImageData(data, 0, 0)
    const size = [width / sharpness, bandPx / sharpness] as const
    context.drawImage(canvas, left / sharpness, band.minY, ...size)
  }
}
