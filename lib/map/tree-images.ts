/**
 * A tree with its crown and its mark, painted once for each kind and stamped wherever one
 * stands. Stamping ten thousand costs 20 ms where Chromium draws in software; as one path for
 * each status the same took over 100 ms, mostly in strokes.
 */

import type { Mark } from '@/lib/domain/orchard/status'

import { drawMark } from './marks'
import type { Palette } from './palette'

export type TreeKind = {
  /** Null: only the crown, where the mark is drawn by itself. */
  mark: Mark | null
  canopyR: number
  isSelected: boolean
  hasDiseaseBadge: boolean
}

export type TreeImage = {
  image: CanvasImageSource
  /** From its middle to its edge, in pixels of the page. */
  reach: number
}

export type TreeImages = (kind: TreeKind) => TreeImage

export type Style = { palette: Palette; markPx: number; sharpness: number }

/** Valid for one style; another zoom or theme wants new ones. */
export function treeImages(style: Style): TreeImages {
  const images = new Map<string, TreeImage>()
  return (kind) => {
    const { mark, canopyR, isSelected, hasDiseaseBadge } = kind
    const key = `${mark} ${canopyR} ${isSelected} ${hasDiseaseBadge}`
    const image = images.get(key) ?? painted(kind, style)
    images.set(key, image)
    return image
  }
}

function painted(kind: TreeKind, { palette, markPx, sharpness }: Style): TreeImage {
  // Whole pixels of the screen to each side, so that nothing is blurred by halves.
  const reach = Math.ceil((Math.max(kind.canopyR, markPx) + 3) * sharpness) / sharpness
  const canvas = new OffscreenCanvas(2 * reach * sharpness, 2 * reach * sharpness)
  const pencil = canvas.getContext('2d')
  if (!pencil) throw new Error('This browser draws no canvas off the screen.')
  pencil.scale(sharpness, sharpness)
  pencil.translate(reach, reach)

  pencil.beginPath()
  pencil.arc(0, 0, kind.canopyR + (kind.isSelected ? 1 : 0), 0, 2 * Math.PI)
  pencil.fillStyle = palette.canopy
  pencil.fill()
  if (kind.isSelected) {
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
  if (kind.mark) drawMark(pencil, kind.mark, markPx, palette)
  if (kind.hasDiseaseBadge) {
    // Upper left, since people's initials like the upper right.
    pencil.translate(-markPx * 0.5, -markPx * 0.5)
    drawMark(pencil, 'disease', Math.max(6, markPx * 0.62), palette)
  }
  return { image: canvas.transferToImageBitmap(), reach }
}
