/** The browser's own means to read and draw a photo. */

import { type Darkroom, type Shrunk, type Size, shrinkIn } from './shrink-photo'
import { lineWidth, pathOf, type Stroke } from './strokes'

/** What was drawn on it becomes a part of the picture. */
export function shrinkPhoto(file: Blob, strokes: readonly Stroke[] = []): Promise<Shrunk> {
  return shrinkIn(darkroomWith(strokes), file)
}

/** Of a whole orchard: larger, since one looks for single trees in it. */
export function shrinkAerial(file: Blob): Promise<Shrunk> {
  const longest = [2560, 2048, 1600, 1280, 1024]
  return shrinkIn(darkroomWith([]), file, { mostBytes: 600_000, longest })
}

type Picture = Size & { source: CanvasImageSource }

/** Null: this is no picture that can be read. */
export async function openPhoto(file: Blob): Promise<Picture | null> {
  return (await asBitmap(file)) ?? (await asImage(file))
}

const darkroomWith = (strokes: readonly Stroke[]): Darkroom<Picture> => ({
  decode: openPhoto,
  encode: (picture, size, quality) => {
    const canvas = document.createElement('canvas')
    canvas.width = size.width
    canvas.height = size.height
    const pen = canvas.getContext('2d')
    if (!pen) return Promise.resolve(null)
    // What is see-through in the picture would turn black.
    pen.fillStyle = '#fff'
    pen.fillRect(0, 0, size.width, size.height)
    pen.drawImage(picture.source, 0, 0, size.width, size.height)
    drawStrokes(pen, strokes, size)
    return new Promise((resolve) => canvas.toBlob(resolve, 'image/jpeg', quality))
  },
})

/** Vermilion on a white edge, so that it shows on bark and on sky; the same in light and dark. */
export const strokeColours = { line: '#c03a00', edge: '#ffffff' }

function drawStrokes(pen: CanvasRenderingContext2D, strokes: readonly Stroke[], size: Size): void {
  const width = lineWidth(size)
  pen.lineJoin = 'round'
  for (const [colour, wide] of [
    [strokeColours.edge, width * 1.9],
    [strokeColours.line, width],
  ] as const) {
    pen.strokeStyle = colour
    pen.lineWidth = wide
    for (const stroke of strokes) pen.stroke(new Path2D(pathOf(stroke, size)))
  }
}

async function asBitmap(file: Blob): Promise<Picture | null> {
  try {
    const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' })
    return { source: bitmap, width: bitmap.width, height: bitmap.height }
  } catch {
    return null
  }
}

/** Some phones read their own camera's format only this way. */
function asImage(file: Blob): Promise<Picture | null> {
  const url = URL.createObjectURL(file)
  const image = new Image()
  return new Promise((resolve) => {
    image.onload = () => {
      URL.revokeObjectURL(url)
      resolve({ source: image, width: image.naturalWidth, height: image.naturalHeight })
    }
    image.onerror = () => {
      URL.revokeObjectURL(url)
      resolve(null)
    }
    image.src = url
  })
}
