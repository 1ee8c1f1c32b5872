/** Photos as a phone's camera makes them: large, noisy like bark, and telling where they were taken. */

import type { Page } from '@playwright/test'

export type PhotoFile = { name: string; mimeType: string; buffer: Buffer }

export const secretPlace = 'TAKEN-HERE-IN-SECRET'

export async function photoFile(page: Page, width: number, height: number): Promise<PhotoFile> {
  const base64 = await page.evaluate(takePhoto, { width, height })
  const jpeg = Buffer.from(base64, 'base64')
  // After the two bytes that begin every JPEG: where and by what it was taken.
  const buffer = Buffer.concat([jpeg.subarray(0, 2), exif(secretPlace), jpeg.subarray(2)])
  return { name: 'bark.jpg', mimeType: 'image/jpeg', buffer }
}

function exif(text: string): Buffer {
  const body = Buffer.from(`Exif\0\0${text}`)
  const head = Buffer.from([0xff, 0xe1, 0, 0])
  head.writeUInt16BE(body.length + 2, 2)
  return Buffer.concat([head, body])
}

/** Runs in a page, since only a browser has an encoder here. */
async function takePhoto({ width, height }: { width: number; height: number }): Promise<string> {
  const canvas = new OffscreenCanvas(width, height)
  const pen = canvas.getContext('2d')
  if (!pen) throw new Error('This browser cannot draw.')
  const dots = pen.createImageData(width, height)
  const noise = new Uint32Array(dots.data.buffer)
  let seed = 1
  for (let at = 0; at < noise.length; at++) {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0
    noise[at] = seed | 0xff000000
  }
  pen.putImageData(dots, 0, 0)
  const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.92 })
  const url = await new Promise<string>((resolve) => {
    const reader = new FileReader()
    reader.onload = () => resolve(String(reader.result))
    reader.readAsDataURL(blob)
  })
  return url.slice(url.indexOf(',') + 1)
}

/** Straight up through a crown of so many limbs, and which share of the circle is sky. */
export async function canopyPhoto(
  page: Page,
  limbs: number
): Promise<{ file: PhotoFile; sharePercent: number }> {
  const { bytes, share } = await page.evaluate(takeCanopy, limbs)
  const file = { name: 'up.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(bytes) }
  return { file, sharePercent: 100 * share }
}

/** Runs in a page. */
async function takeCanopy(limbs: number): Promise<{ bytes: number[]; share: number }> {
  const [width, height] = [1600, 1200]
  const canvas = new OffscreenCanvas(width, height)
  const pen = canvas.getContext('2d')
  if (!pen) throw new Error('This browser cannot draw.')
  pen.fillStyle = '#8ab4e6'
  pen.fillRect(0, 0, width, height)
  pen.strokeStyle = '#30281f'
  for (let limb = 0; limb < limbs; limb++) {
    // Spread evenly by the golden angle.
    const angle = limb * 2.399963
    pen.lineWidth = 12 + (limb % 5) * 14
    pen.beginPath()
    pen.moveTo(width / 2 + 60 * Math.cos(angle), height / 2 + 60 * Math.sin(angle))
    pen.lineTo(width / 2 + 900 * Math.cos(angle), height / 2 + 900 * Math.sin(angle))
    pen.stroke()
  }
  const { data } = pen.getImageData(0, 0, width, height)
  let [open, all] = [0, 0]
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      if (Math.hypot(x + 0.5 - width / 2, y + 0.5 - height / 2) >= height / 2) continue
      all++
      if ((data[(y * width + x) * 4 + 2] ?? 0) > 130) open++
    }
  const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.9 })
  return { bytes: [...new Uint8Array(await blob.arrayBuffer())], share: open / all }
}
