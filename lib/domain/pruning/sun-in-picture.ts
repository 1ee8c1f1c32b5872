/**
 * Whether the sun is in a picture: a small round patch that is white beyond measure, with a bright
 * veil round it. A gap in the crown that shows a white sky has dark wood round it, and a sky that is
 * white all over is no small patch. Limits are common practice, no source.
 */

import type { Pixels } from './pixels'

const white = 250
const largestShare = 0.12
const smallestShare = 0.0004
/** How far its pixels lie from its middle, against those of a disc. */
const mostScattered = 1.5
const dimmestVeil = 140

export function isSunIn(picture: Pixels): boolean {
  const patch = whitePatch(picture)
  if (!patch) return false
  const { share, scattered } = patch
  if (share < smallestShare || share > largestShare || scattered > mostScattered) return false
  return veilRound(picture, patch) > dimmestVeil
}

type Patch = { x: number; y: number; radius: number; share: number; scattered: number }

function whitePatch({ width, height, data }: Pixels): Patch | null {
  let [count, sumX, sumY, squares] = [0, 0, 0, 0]
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const at = (y * width + x) * 4
      if (lightAt(data, at) < white) continue
      count++
      sumX += x
      sumY += y
      squares += x * x + y * y
    }
  if (count === 0) return null
  const [x, y] = [sumX / count, sumY / count]
  const away = Math.sqrt(Math.max(0, squares / count - x * x - y * y))
  const radius = Math.sqrt(count / Math.PI)
  return { x, y, radius, share: count / (width * height), scattered: away / (radius / Math.SQRT2) }
}

/** Mean light of the ring from the patch's edge to as far again. */
function veilRound({ width, height, data }: Pixels, { x, y, radius }: Patch): number {
  let [count, sum] = [0, 0]
  const [near, far] = [1.15 * radius, 2 * radius]
  for (let row = Math.max(0, Math.floor(y - far)); row < Math.min(height, y + far); row++)
    for (
      let column = Math.max(0, Math.floor(x - far));
      column < Math.min(width, x + far);
      column++
    ) {
      const away = Math.hypot(column - x, row - y)
      if (away < near || away > far) continue
      count++
      sum += lightAt(data, (row * width + column) * 4)
    }
  return count === 0 ? 0 : sum / count
}

/** The darkest of its colours: a blue sky is never white. */
function lightAt(data: Uint8ClampedArray, at: number): number {
  return Math.min(data[at] ?? 0, data[at + 1] ?? 0, data[at + 2] ?? 0)
}
