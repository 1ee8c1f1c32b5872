/**
 * Stamps set down pixel by pixel.
 *
 * Where a canvas is drawn in software each `drawImage` costs some microseconds whatever it
 * draws, and ten thousand of them were most of a first draw. Small stamps are copied here in a
 * fraction of that, and the canvas takes the whole band at once.
 */

/** One number a pixel, as in `ImageData`: red, green, blue, alpha from the lowest byte. */
export type Pixels = { values: Uint32Array; width: number; height: number }

export type Stamp = {
  values: Uint32Array
  side: number
  /** Of each of its rows where something begins and where nothing follows: half of a stamp is clear. */
  spans: Uint16Array
}

export function stampOf(values: Uint32Array, side: number): Stamp {
  const spans = new Uint16Array(2 * side)
  for (let y = 0; y < side; y++) {
    const row = values.subarray(y * side, (y + 1) * side)
    const first = row.findIndex((value) => value >>> 24 > 0)
    if (first < 0) continue
    spans[2 * y] = first
    spans[2 * y + 1] = row.findLastIndex((value) => value >>> 24 > 0) + 1
  }
  return { values, side, spans }
}

/** Over what is there already, as a canvas would; what lies outside is left out. */
export function stampOnto(
  pixels: Pixels,
  { values, side, spans }: Stamp,
  left: number,
  top: number
): void {
  const toY = Math.min(side, pixels.height - top)
  for (let y = Math.max(0, -top); y < toY; y++) {
    const row = (top + y) * pixels.width + left
    const toX = Math.min(spans[2 * y + 1] ?? 0, pixels.width - left)
    for (let x = Math.max(spans[2 * y] ?? 0, -left); x < toX; x++) {
      const above = values[y * side + x] ?? 0
      const alpha = above >>> 24
      if (alpha === 0) continue
      const below = pixels.values[row + x] ?? 0
      pixels.values[row + x] = alpha === 255 || below >>> 24 === 0 ? above : over(above, below)
    }
  }
}

function over(above: number, below: number): number {
  const a = above >>> 24
  const rest = ((below >>> 24) * (255 - a)) / 255
  const alpha = a + rest
  const channel = (shift: number) =>
    Math.round((((above >>> shift) & 255) * a + ((below >>> shift) & 255) * rest) / alpha) << shift
  // Shifting by 24 makes it negative; >>> 0 counts it from 0 again.
  return ((Math.round(alpha) << 24) | channel(16) | channel(8) | channel(0)) >>> 0
}
