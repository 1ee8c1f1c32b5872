/** From the camera's file to a number: made small, measured beside the page, and kept small. */

import { type Openness, opennessOf, sky, type Unusable } from '@/lib/domain/pruning/openness'
import type { Pixels } from '@/lib/domain/pruning/pixels'
import { askWorker } from '@/lib/util/ask-worker'
import { openPhoto } from '../tree/darkroom'
import { mostBytesToDecode, type Size, sizeWithin } from '../tree/shrink-photo'
import type { Shot } from './shots'

export type Read =
  | { state: 'read'; shot: Shot }
  | { state: 'unusable'; why: Unusable['why'] | 'not_a_photo' | 'too_large' }

/** More pixels tell no more, and a phone takes longer. */
const mostPixels = 1_500_000
const previewPx = 480

const asking = {
  open: () => new Worker(new URL('./openness-worker.ts', import.meta.url)),
  here: opennessOf,
}

export async function readCanopy(file: Blob): Promise<Read> {
  if (file.size > mostBytesToDecode) return { state: 'unusable', why: 'too_large' }
  const picture = file.size === 0 ? null : await openPhoto(file)
  if (!picture || picture.width === 0 || picture.height === 0)
    return { state: 'unusable', why: 'not_a_photo' }

  const canvas = canvasOf(sizeOfPixels(picture))
  const pen = penOf(canvas)
  pen.drawImage(picture.source, 0, 0, canvas.width, canvas.height)
  const { width, height, data } = pen.getImageData(0, 0, canvas.width, canvas.height)
  const found = await askWorker<Pixels, Openness | Unusable>(asking, { width, height, data })
  if (!found || found.state === 'unusable')
    return { state: 'unusable', why: found?.why ?? 'not_a_photo' }

  const photo = preview(canvas)
  pen.drawImage(overlayOf(found.mask, canvas), 0, 0)
  const { gap, low, high, confidence, doubts } = found
  return {
    state: 'read',
    shot: { gap, low, high, confidence, doubts, photo, seen: preview(canvas) },
  }
}

/** The same shape with at most so many pixels. */
export function sizeOfPixels({ width, height }: Size): Size {
  const scale = Math.min(1, Math.sqrt(mostPixels / (width * height)))
  return { width: Math.floor(width * scale), height: Math.floor(height * scale) }
}

/** Apricot over the sky, and nothing but a shade outside the circle; the same in light and dark. */
const skyColour = [255, 178, 36, 190] as const
const outsideColour = [28, 22, 17, 170] as const

function overlayOf(mask: Uint8Array, { width, height }: Size): HTMLCanvasElement {
  const canvas = canvasOf({ width, height })
  const pen = penOf(canvas)
  const overlay = pen.createImageData(width, height)
  for (let at = 0; at < mask.length; at++) {
    const colour = mask[at] === sky ? skyColour : mask[at] === 0 ? outsideColour : null
    if (colour) overlay.data.set(colour, at * 4)
  }
  pen.putImageData(overlay, 0, 0)
  return canvas
}

function preview(from: HTMLCanvasElement): string {
  const canvas = canvasOf(sizeWithin(from, previewPx))
  penOf(canvas).drawImage(from, 0, 0, canvas.width, canvas.height)
  return canvas.toDataURL('image/jpeg', 0.75)
}

function canvasOf({ width, height }: Size): HTMLCanvasElement {
  return Object.assign(document.createElement('canvas'), { width, height })
}

function penOf(canvas: HTMLCanvasElement): CanvasRenderingContext2D {
  const pen = canvas.getContext('2d', { willReadFrequently: true })
  if (!pen) throw new Error('This browser draws no canvas.')
  return pen
}
