/**
 * A tree with its crown and its mark, painted once for each kind and stamped wherever one
 * stands. As one path for each status ten thousand took over 100 ms where Chromium draws in
 * software, mostly in strokes.
 */

import { type Mark, marks } from '@/lib/domain/orchard/status'

import { drawMark } from './marks'
import type { Palette } from './palette'
import { type Stamp, stampOf } from './pixels'

export type TreeKind = {
  /** Null: only the crown, where the mark is drawn by itself. */
  mark: Mark | null
  canopyR: number
  isSelected: boolean
  hasDiseaseBadge: boolean
  /** Still there, so that the orchard keeps its shape. */
  isFaint: boolean
}

export type TreeImage = {
  image: CanvasImageSource
  /** From its middle to its edge, in pixels of the page. */
  reach: number
  /** Its width and height in pixels of the screen. */
  side: number
  stamp: () => Stamp
}

export type TreeImages = (kind: TreeKind) => TreeImage

export type Style = { palette: Palette; markPx: number; sharpness: number }

/** Valid for one style; another zoom or theme wants new ones. */
export function treeImages(style: Style): TreeImages {
  const images = new Map<number, TreeImage>()
  return (kind) => {
    const key = keyOf(kind)
    const image = images.get(key) ?? painted(kind, style)
    images.set(key, image)
    return image
  }
}

/** Asked for once a tree, so it is a number and not a text. */
function keyOf({ mark, canopyR, isSelected, hasDiseaseBadge, isFaint }: TreeKind): number {
  const flags = (isSelected ? 1 : 0) + (hasDiseaseBadge ? 2 : 0) + (isFaint ? 4 : 0)
  const markCode = mark === null ? marks.length : marks.indexOf(mark)
  return (Math.round(2 * canopyR) * (marks.length + 1) + markCode) * 8 + flags
}

function painted(kind: TreeKind, { palette, markPx, sharpness }: Style): TreeImage {
  // Whole pixels of the screen to each side, so that nothing is blurred by halves.
  const side = 2 * Math.ceil((Math.max(kind.canopyR, markPx) + 3) * sharpness)
  const canvas = new OffscreenCanvas(side, side)
  const pencil = canvas.getContext('2d', { willReadFrequently: true })
  if (!pencil) throw new Error('This browser draws no canvas off the screen.')
  pencil.translate(side / 2, side / 2)
  pencil.scale(sharpness, sharpness)

  pencil.beginPath()
  pencil.arc(0, 0, kind.canopyR + (kind.isSelected ? 1 : 0), 0, 2 * Math.PI)
  pencil.fillStyle = palette.canopy
  pencil.fill()
  if (kind.isSelected) drawSelected(pencil, palette)
  if (kind.mark) drawMark(pencil, kind.mark, markPx, palette)
  if (kind.hasDiseaseBadge) {
    // Upper left, since people's initials like the upper right.
    pencil.translate(-markPx * 0.5, -markPx * 0.5)
    drawMark(pencil, 'disease', Math.max(6, markPx * 0.62), palette)
  }
  if (kind.isFaint) fade(pencil, side)

  let stamp: Stamp | null = null
  return {
    image: canvas,
    reach: side / 2 / sharpness,
    side,
    stamp: () => {
      stamp ??= stampOf(new Uint32Array(pencil.getImageData(0, 0, side, side).data.buffer), side)
      return stamp
    },
  }
}

/** Over the crown that was traced last. */
function drawSelected(pencil: OffscreenCanvasRenderingContext2D, palette: Palette): void {
  pencil.globalAlpha = 0.55
  pencil.fillStyle = palette.called
  pencil.fill()
  pencil.globalAlpha = 1
  pencil.strokeStyle = palette.ink
  pencil.lineWidth = 2
  pencil.setLineDash([5, 3])
  pencil.stroke()
  pencil.setLineDash([])
}

function fade(pencil: OffscreenCanvasRenderingContext2D, side: number): void {
  pencil.resetTransform()
  pencil.globalCompositeOperation = 'destination-in'
  pencil.fillStyle = 'rgb(0 0 0 / 25%)'
  pencil.fillRect(0, 0, side, side)
}
