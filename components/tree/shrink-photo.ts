/**
 * Makes a photo small on the phone: at most 200 kB, JPEG, and drawn anew, so that nothing of what
 * the camera wrote into it (place, time, device) leaves the phone.
 */

export type Shrunk =
  /** Base64, as it is sent. */
  { state: 'shrunk'; jpeg: string } | { state: 'not_a_photo' } | { state: 'too_large' }

export const mostBytes = 200_000

/** A phone that decodes more than this may end the page. */
export const mostBytesToDecode = 60_000_000

/** Smaller and plainer, until it fits. */
const qualities = [0.82, 0.66, 0.5]

export type Limits = { mostBytes: number; longest: readonly number[] }

/** Of a tree: one limb, or one sign. */
const photoLimits: Limits = { mostBytes, longest: [1600, 1280, 1024, 800, 640] }

export type Size = { width: number; height: number }

/** What it takes from the browser, so that the rest can be tried without one. */
export type Darkroom<Picture extends Size> = {
  /** Null: this is no picture that can be read. */
  decode: (file: Blob) => Promise<Picture | null>
  encode: (picture: Picture, size: Size, quality: number) => Promise<Blob | null>
}

export async function shrinkIn<Picture extends Size>(
  { decode, encode }: Darkroom<Picture>,
  file: Blob,
  limits: Limits = photoLimits
): Promise<Shrunk> {
  if (file.size > mostBytesToDecode) return { state: 'too_large' }
  const picture = file.size === 0 ? null : await decode(file)
  if (!picture || picture.width === 0 || picture.height === 0) return { state: 'not_a_photo' }
  for (const longest of limits.longest)
    for (const quality of qualities) {
      const jpeg = await encode(picture, sizeWithin(picture, longest), quality)
      if (jpeg && jpeg.size > 0 && jpeg.size <= limits.mostBytes)
        return { state: 'shrunk', jpeg: await base64Of(jpeg) }
    }
  return { state: 'too_large' }
}

/** The same shape, its longer side no longer than this. */
export function sizeWithin({ width, height }: Size, longest: number): Size {
  const scale = Math.min(1, longest / Math.max(width, height))
  return {
    width: Math.max(1, Math.round(width * scale)),
    height: Math.max(1, Math.round(height * scale)),
  }
}

async function base64Of(blob: Blob): Promise<string> {
  const bytes = new Uint8Array(await blob.arrayBuffer())
  const chunk = 0x8000
  let text = ''
  for (let at = 0; at < bytes.length; at += chunk)
    text += String.fromCharCode(...bytes.subarray(at, at + chunk))
  return btoa(text)
}
