/**
 * How open a crown is, from a photo taken straight up: which share of a circle round the middle is
 * sky. The blue channel tells sky from wood best, and Otsu's threshold finds the limit; what lies between the two
 * counts in part. A lens that is darker towards its edge is levelled first. Limits for doubts are common practice,
 * no source.
 */

import { levelled, type Rings, ringsOf } from './levelling'
import { otsu, type Threshold } from './otsu'
import type { Pixels } from './pixels'
import { quantileOf } from './quantile'
import { type SkyShares, sky, skyShares, wood } from './sky-share'
import { isSunIn } from './sun-in-picture'

export type Doubt =
  /** Sky so bright that it eats twigs. */
  | 'burnt_out'
  /** Wood that is pale with stray light. */
  | 'glare'
  /** Sky and wood are hardly apart. */
  | 'soft'
  /** A little more or less light would change the number. */
  | 'unsteady'

export type Openness = {
  state: 'measured'
  /** The share of sky, and between which shares it lies. */
  gap: number
  low: number
  high: number
  confidence: 'good' | 'fair' | 'poor'
  doubts: readonly Doubt[]
  separability: number
  clippedShare: number
  /** 0 outside the circle, else `wood` or `sky`, pixel by pixel. */
  mask: Uint8Array
}

export type Unusable = {
  state: 'unusable'
  why: 'too_small' | 'dark' | 'no_sky' | 'no_wood' | 'sun' | 'not_upward'
}

export { sky, wood }

const fewestPx = 200
const darkest = 70
/** Sky and wood of a usable photo are farther apart, of 255. */
const leastContrast = 40
const dimmestSky = 90
/** Half a circle so much more open than the other looks at the horizon; a crown with one bare side is less so. */
const mostLopsided = 0.75
/** What the method keeps on drawn crowns of known openness: this, and the more the more twigs are thin. */
const leastDoubt = 0.03
const doubtOfMixed = 0.12
/** A burnt-out sky eats twigs, pale wood is taken for sky in part. */
const moreDoubt = 0.03
const palestWood = 100
const leastApart = 0.75
const widestRange = 0.15

export function opennessOf(picture: Pixels): Openness | Unusable {
  const { width, height } = picture
  if (Math.min(width, height) < fewestPx) return unusable('too_small')
  const rings = ringsOf(picture)
  const brightest = quantileOf(rings.raw, 0.995)
  if (brightest < darkest) return unusable('dark')
  if (isSunIn(picture)) return unusable('sun')

  const { histogram, levelOf } = levelled(rings)
  const threshold = otsu(histogram)
  if (!threshold || threshold.brightMean - threshold.darkMean < leastContrast)
    return unusable(brightest < 140 ? 'no_sky' : 'no_wood')
  if (threshold.brightMean < dimmestSky) return unusable('no_sky')

  const rough = roughOf(rings, levelOf, threshold.level)
  const read = skyShares({ width, height, level: rings.blue, rough })
  const mask = rough.map((own, at) => (own === 0 ? 0 : (read.shares[at] ?? 0) >= 128 ? sky : wood))
  if (lopsidedness(mask, width, height) > mostLopsided) return unusable('not_upward')
  return { state: 'measured', mask, ...figuresOf(read, threshold, rings) }
}

function unusable(why: Unusable['why']): Unusable {
  return { state: 'unusable', why }
}

function figuresOf(read: SkyShares, { separability }: Threshold, rings: Rings) {
  const { gap, mixed, woodLevel } = read
  const clippedShare = Math.min(1, shareAbove(rings.raw, 249) / Math.max(gap, 1e-9))
  const isBurntOut = clippedShare > 0.5
  const isPale = woodLevel > palestWood
  const doubt = leastDoubt + doubtOfMixed * mixed
  const [low, high] = [
    gap - doubt - (isBurntOut ? moreDoubt : 0),
    gap + doubt + (isPale ? moreDoubt : 0),
  ]
  const doubts: Doubt[] = []
  if (isBurntOut) doubts.push('burnt_out')
  if (isPale) doubts.push('glare')
  if (separability < leastApart) doubts.push('soft')
  if (high - low > widestRange) doubts.push('unsteady')
  return {
    gap,
    low: Math.max(0, low),
    high: Math.min(1, high),
    confidence: confidenceOf(doubts),
    doubts,
    separability,
    clippedShare,
  }
}

function confidenceOf(doubts: readonly Doubt[]): Openness['confidence'] {
  if (doubts.length === 0) return 'good'
  return doubts.length === 1 ? 'fair' : 'poor'
}

function shareAbove(histogram: Uint32Array, level: number): number {
  let [above, all] = [0, 0]
  for (let at = 0; at < histogram.length; at++) {
    all += histogram[at] ?? 0
    if (at > level) above += histogram[at] ?? 0
  }
  return above / all
}

function roughOf({ ringAt, blue }: Rings, levelOf: Uint8Array, threshold: number): Uint8Array {
  const rough = new Uint8Array(ringAt.length)
  for (let at = 0; at < ringAt.length; at++) {
    const ring = ringAt[at] ?? 0
    if (ring === 0) continue
    rough[at] = (levelOf[(ring << 8) | (blue[at] ?? 0)] ?? 0) > threshold ? sky : wood
  }
  return rough
}

/** How much more open one half of the circle is than the other, in whichever of eight directions. */
function lopsidedness(mask: Uint8Array, width: number, height: number): number {
  const sectors = 16
  const open = new Float64Array(sectors)
  const all = new Float64Array(sectors)
  // Every third pixel says it as well.
  for (let y = 0; y < height; y += 3)
    for (let x = 0; x < width; x += 3) {
      const value = mask[y * width + x] ?? 0
      if (value === 0) continue
      const angle = Math.atan2(y - height / 2, x - width / 2) / (2 * Math.PI) + 0.5
      const sector = Math.min(sectors - 1, Math.floor(angle * sectors))
      all[sector] = (all[sector] ?? 0) + 1
      if (value === sky) open[sector] = (open[sector] ?? 0) + 1
    }
  const half = (from: number) => {
    let [openHere, allHere] = [0, 0]
    for (let step = 0; step < sectors / 2; step++) {
      openHere += open[(from + step) % sectors] ?? 0
      allHere += all[(from + step) % sectors] ?? 0
    }
    return openHere / Math.max(1, allHere)
  }
  return Math.max(
    ...Array.from({ length: sectors }, (_, from) => half(from) - half(from + sectors / 2))
  )
}
