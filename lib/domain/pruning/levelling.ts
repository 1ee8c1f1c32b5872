/**
 * Lenses are darker towards their edge. What the sky loses from the middle outwards is found in the
 * picture itself and given back, before one threshold is laid over all of it.
 */

import { otsu } from './otsu'
import type { Pixels } from './pixels'

/** Of equal area, so that each says as much as another. */
const ringCount = 24

export type Rings = {
  /** The ring of each pixel, from 1 in the middle; 0 outside the circle. */
  ringAt: Uint8Array
  blue: Uint8Array
  /** Of all rings together. */
  raw: Uint32Array
  byRing: readonly Uint32Array[]
}

export function ringsOf(picture: Pixels): Rings {
  const { width, height, data } = picture
  const radius = Math.min(width, height) / 2
  const ringAt = new Uint8Array(width * height)
  const blue = new Uint8Array(width * height)
  const byRing = Array.from({ length: ringCount + 1 }, () => new Uint32Array(256))
  for (let y = 0; y < height; y++) {
    const dy = (y + 0.5 - height / 2) / radius
    for (let x = 0; x < width; x++) {
      const dx = (x + 0.5 - width / 2) / radius
      const away = dx * dx + dy * dy
      const at = y * width + x
      const value = data[at * 4 + 2] ?? 0
      blue[at] = value
      if (away >= 1) continue
      const ring = 1 + Math.floor(away * ringCount)
      ringAt[at] = ring
      const own = byRing[ring]
      if (own) own[value] = (own[value] ?? 0) + 1
    }
  }
  return { ringAt, blue, byRing, raw: addedUp(byRing) }
}

export type Levelled = {
  histogram: Uint32Array
  /** What a blue value of a ring comes to: at `ring * 256 + value`. */
  levelOf: Uint8Array
}

/** Sky that is found by a first threshold says how much is lost; the second time it is found better. */
export function levelled(rings: Rings): Levelled {
  let loss = 0
  for (let round = 0; round < 3; round++) loss = lossOf(rings, levelledBy(rings, loss), loss)
  return levelledBy(rings, loss)
}

function levelledBy({ byRing }: Rings, loss: number): Levelled {
  const levelOf = new Uint8Array((ringCount + 1) * 256)
  const histogram = new Uint32Array(256)
  byRing.forEach((own, ring) => {
    const left = 1 - (loss * (ring - 0.5)) / ringCount
    for (let value = 0; value < 256; value++) {
      const level = Math.min(255, Math.round(value / left))
      levelOf[ring * 256 + value] = level
      histogram[level] = (histogram[level] ?? 0) + (own[value] ?? 0)
    }
  })
  return { histogram, levelOf }
}

/** More than this no lens loses. */
const mostLoss = 0.7
/** A ring with less sky says nothing. */
const leastSky = 0.04

/** The share of light that is lost at the edge: a straight line through the sky of the rings. */
function lossOf({ byRing }: Rings, { histogram, levelOf }: Levelled, before: number): number {
  const threshold = otsu(histogram)
  if (!threshold) return before
  const points = byRing.flatMap((own, ring) => {
    let [sky, sum, all] = [0, 0, 0]
    for (let value = 0; value < 256; value++) {
      const count = own[value] ?? 0
      all += count
      if ((levelOf[ring * 256 + value] ?? 0) <= threshold.level) continue
      sky += count
      sum += count * value
    }
    return ring > 0 && sky > leastSky * all
      ? [{ x: (ring - 0.5) / ringCount, y: sum / sky, weight: sky }]
      : []
  })
  const line = lineThrough(points)
  if (!line || line.at0 <= 0) return before
  return Math.min(mostLoss, Math.max(0, -line.slope / line.at0))
}

type Weighed = { x: number; y: number; weight: number }

function lineThrough(points: readonly Weighed[]): { at0: number; slope: number } | null {
  const sum = (of: (point: Weighed) => number) =>
    points.reduce((total, point) => total + point.weight * of(point), 0)
  const weight = sum(() => 1)
  if (weight === 0) return null
  const [meanX, meanY] = [sum(({ x }) => x) / weight, sum(({ y }) => y) / weight]
  const spread = sum(({ x }) => (x - meanX) ** 2)
  if (spread < 1e-9) return null
  const slope = sum(({ x, y }) => (x - meanX) * (y - meanY)) / spread
  return { slope, at0: meanY - slope * meanX }
}

function addedUp(histograms: readonly Uint32Array[]): Uint32Array {
  const total = new Uint32Array(256)
  for (const own of histograms)
    for (let v = 0; v < 256; v++) total[v] = (total[v] ?? 0) + (own[v] ?? 0)
  return total
}
