/** The trees: one stamp each, or one for a heap of them where they are too small to be seen singly. */

import type { Box } from './grid-index'
import { heapsIn } from './heaps'
import type { Picture } from './paint'
import { type Pixels, stampOnto } from './pixels'
import type { TreeImage } from './tree-images'
import { canopyPx, heapPx, toCanvas } from './view'

/** A stamp and its middle, in pixels of the canvas. */
type Set = { image: TreeImage; x: number; y: number }

/** More than this are copied pixel by pixel; for fewer the canvas is quick enough. */
const fewTrees = 400

export function paintTrees(
  context: CanvasRenderingContext2D,
  picture: Picture,
  square: Box,
  indexes: readonly number[]
): void {
  const stamps = picture.sizes.isHeaped
    ? heapStamps(picture, square)
    : indexes.map((index) => treeStamp(picture, index))
  const { sharpness } = picture.view
  if (stamps.length > fewTrees) {
    copyPixels(context, stamps, square, sharpness)
    return
  }
  for (const { image, x, y } of stamps) {
    // On whole pixels of the screen, so that it stays sharp.
    const left = Math.round((x - image.reach) * sharpness) / sharpness
    const top = Math.round((y - image.reach) * sharpness) / sharpness
    context.drawImage(image.image, left, top, 2 * image.reach, 2 * image.reach)
  }
}

function treeStamp(
  { scene, looks, view, sizes, images, selected, dimmed, called }: Picture,
  index: number
): Set {
  const no = scene.trees[index]?.no ?? 0
  const image = images({
    mark: no === called ? null : looks.markAt(index),
    canopyR: canopyPx(scene.canopyR[index] ?? 0, view, sizes),
    isSelected: selected.has(no),
    hasDiseaseBadge: looks.hasDiseaseBadge(index),
    isFaint: dimmed.has(no),
  })
  return { image, ...toCanvas(view, scene.xs[index] ?? 0, scene.ys[index] ?? 0) }
}

function heapStamps(picture: Picture, square: Box): Set[] {
  return heapsIn(picture, square).map(({ mark, isSelected, isFaint, x, y }) => {
    const kind = { mark, isSelected, isFaint, canopyR: heapPx / 2, hasDiseaseBadge: false }
    return { image: picture.images(kind), ...toCanvas(picture.view, x, y) }
  })
}

/** Of the screen's; so many rows are held in memory at once. */
const bandPx = 256

/** Band by band, because all pixels of a large screen are tens of megabytes. */
function copyPixels(
  context: CanvasRenderingContext2D,
  stamps: readonly Set[],
  square: Box,
  sharpness: number
): void {
  const left = Math.floor(square.minX * sharpness)
  const width = Math.ceil(square.maxX * sharpness) - left
  const top = Math.floor(square.minY * sharpness)
  const bottom = Math.ceil(square.maxY * sharpness)
  const canvas = new OffscreenCanvas(width, bandPx)
  const pencil = canvas.getContext('2d', { willReadFrequently: true })
  if (!pencil) throw new Error('This browser draws no canvas off the screen.')
  const data = pencil.createImageData(width, bandPx)
  const pixels = { values: new Uint32Array(data.data.buffer), width, height: bandPx }

  const bands = inBands(stamps, sharpness, { top, bottom })
  for (const [at, band] of bands.entries()) {
    const bandTop = top + at * bandPx
    pixels.values.fill(0)
    for (const one of band) copy(one, pixels, { left, top: bandTop, sharpness })
    pencil.putImageData(data, 0, 0)
    const [x, y] = [left / sharpness, bandTop / sharpness]
    context.drawImage(canvas, x, y, width / sharpness, bandPx / sharpness)
  }
}

type Corner = { left: number; top: number; sharpness: number }

function copy({ image, x, y }: Set, pixels: Pixels, { left, top, sharpness }: Corner): void {
  stampOnto(
    pixels,
    { values: image.pixels(), side: image.side },
    Math.round((x - image.reach) * sharpness) - left,
    Math.round((y - image.reach) * sharpness) - top
  )
}

/** A stamp that lies across an edge is in both. */
function inBands(
  stamps: readonly Set[],
  sharpness: number,
  { top, bottom }: { top: number; bottom: number }
): Set[][] {
  const bands = Array.from({ length: Math.ceil((bottom - top) / bandPx) }, (): Set[] => [])
  for (const one of stamps) {
    const from = Math.round((one.y - one.image.reach) * sharpness) - top
    const first = Math.max(0, Math.floor(from / bandPx))
    const last = Math.floor((from + one.image.side - 1) / bandPx)
    for (let band = first; band <= last; band++) bands[band]?.push(one)
  }
  return bands
}
