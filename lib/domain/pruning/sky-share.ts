/**
 * How much of each pixel is sky. A twig thinner than a pixel only dims it, and a threshold calls such a pixel sky:
 * a crown full of twigs then reads several points too open. So each pixel counts by where its light lies between
 * that of the wood and that of the sky round it. Light adds up before the camera's curve, not after it.
 */

import { lightOf, linesOfMeanLight } from './mean-light'
import { quantileOf } from './quantile'

export type Levels = {
  width: number
  height: number
  /** Brightness of each pixel, 0 to 255, as the camera wrote it. */
  level: Uint8Array
  /** What each pixel rather is: `sky`, `wood`, or outside the circle. */
  rough: Uint8Array
}

export const wood = 1
export const sky = 2

export type SkyShares = {
  /** Sky of the circle, as a share of it. */
  gap: number
  /** Pixels that are neither one nor the other. */
  mixed: number
  /** Brightness of the wood itself, without what is thinner than a pixel. */
  woodLevel: number
  /** Of each pixel, 0 to 255. */
  shares: Uint8Array
}

/** The sky is not alike everywhere: its light is taken from so many parts along each side. */
const parts = 8
/** A part with less sky says nothing of it. */
const leastSky = 0.05
/** About the middle of both, which noise leaves where it is. Tried on drawn crowns of which the sky is known. */
const skyQuantile = 0.5
const woodQuantile = 0.55
/** A little more than all sky or all wood is noise, which adds up to nothing; much more is a cloud or a shadow. */
const leastShare = -0.2
const mostShare = 1.05

export function skyShares(levels: Levels): SkyShares {
  const { width, height, level, rough } = levels
  const { ofWood, ofSky } = histogramsOf(levels)
  const woodLevel = quantileOf(ofWood, woodQuantile)
  const dark = lightOf[woodLevel] ?? 0
  const skies = filledIn(ofSky.map((own) => skyOf(own, levels)))
  const shares = new Uint8Array(level.length)
  const columns = placesAlong(width)
  let [sum, mixed, all] = [0, 0, 0]
  const rows = placesAlong(height)
  let y = 0
  for (const light of linesOfMeanLight(level, width, height)) {
    const across = skyAcross(skies, rows[y] ?? nowhere)
    for (let x = 0, at = y * width; x < width; x++, at++) {
      if (rough[at] === 0) continue
      const { from, part } = columns[x] ?? nowhere
      const bright = (across[from] ?? 0) * (1 - part) + (across[from + 1] ?? 0) * part
      const span = Math.max(1e-4, bright - dark)
      sum += between(leastShare, ((light[x] ?? 0) - dark) / span, mostShare)
      // What is drawn over the picture is as sharp as the picture.
      const own = between(0, ((lightOf[level[at] ?? 0] ?? 0) - dark) / span, 1)
      shares[at] = own * 255 + 0.5
      all++
      if (own > 0.2 && own < 0.8) mixed++
    }
    y++
  }
  return { gap: between(0, sum / all, 1), mixed: mixed / all, woodLevel, shares }
}

function between(least: number, value: number, most: number): number {
  return Math.min(most, Math.max(least, value))
}

function histogramsOf({ width, height, level, rough }: Levels) {
  const ofWood = new Uint32Array(256)
  const ofSky = Array.from({ length: parts * parts }, () => new Uint32Array(256))
  for (let y = 0; y < height; y++) {
    const firstPart = Math.floor((y / height) * parts) * parts
    for (let x = 0, at = y * width; x < width; x++, at++) {
      const kind = rough[at] ?? 0
      if (kind === 0) continue
      const own = kind === wood ? ofWood : ofSky[firstPart + Math.floor((x / width) * parts)]
      const value = level[at] ?? 0
      if (own) own[value] = (own[value] ?? 0) + 1
    }
  }
  return { ofWood, ofSky }
}

/** Light of the sky in one part; null: there is too little to say. */
function skyOf(own: Uint32Array, { width, height }: Levels): number | null {
  const count = own.reduce((sum, one) => sum + one, 0)
  if (count < leastSky * (width / parts) * (height / parts)) return null
  return lightOf[quantileOf(own, skyQuantile)] ?? 0
}

/** A part without sky of its own has that of the others, the nearer the more. */
function filledIn(skies: readonly (number | null)[]): number[] {
  return skies.map((own, at) => {
    if (own !== null) return own
    let [sum, weights] = [0, 0]
    skies.forEach((other, there) => {
      if (other === null) return
      const [dx, dy] = [
        (there % parts) - (at % parts),
        Math.floor(there / parts) - Math.floor(at / parts),
      ]
      const weight = (dx * dx + dy * dy) ** -1.5
      sum += weight * other
      weights += weight
    })
    return weights === 0 ? 1 : sum / weights
  })
}

/** A place lies between the middles of two parts, so far on from the first. */
type Place = { from: number; part: number }
const nowhere: Place = { from: 0, part: 0 }

function placesAlong(pixels: number): Place[] {
  return Array.from({ length: pixels }, (_, at) => {
    const place = Math.min(parts - 1, Math.max(0, ((at + 0.5) / pixels) * parts - 0.5))
    const from = Math.min(parts - 2, Math.floor(place))
    return { from, part: place - from }
  })
}

/** The sky of one line of pixels, part by part. */
function skyAcross(skies: readonly number[], { from, part }: Place): Float64Array {
  return Float64Array.from(
    { length: parts },
    (_, column) =>
      (skies[from * parts + column] ?? 0) * (1 - part) +
      (skies[(from + 1) * parts + column] ?? 0) * part
  )
}
