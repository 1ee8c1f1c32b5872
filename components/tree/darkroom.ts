/** The browser's own means to read and draw a photo. */

import { type Darkroom, type Shrunk, type Size, shrinkIn } from './shrink-photo'

export function shrinkPhoto(file: Blob): Promise<Shrunk> {
  return shrinkIn(browserDarkroom, file)
}

type Picture = Size & { source: CanvasImageSource }

const browserDarkroom: Darkroom<Picture> = {
  decode: async (file) => (await asBitmap(file)) ?? (await asImage(file)),
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
    return new Promise((resolve) => canvas.toBlob(resolve, 'image/jpeg', quality))
  },
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
