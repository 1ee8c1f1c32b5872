/** Whether corners lie where this orchard can be: latitude and longitude are easily typed the wrong way round. */

import { lineBetween } from './ellipsoid'
import type { Position } from './types'

export type KnownOf = {
  /** A tree or a phone of this orchard, if any has a position. */
  position: Position | null
  timeZone: string
  /** Hours that the zone is ahead of UTC; the sun makes an hour of fifteen degrees. */
  utcOffsetH: number
}

/** Further from the other blocks, and something is wrong. */
const farM = 100_000
/** Zones follow borders: China keeps one hour over sixty degrees. */
const lonSlackDeg = 45

/**
 * The latitudes of the land that names of zones begin with. Rough, from memory; wide enough that only a
 * swapped pair falls out.
 */
const latitudes: Readonly<Record<string, readonly [number, number]>> = {
  Africa: [-36, 38],
  America: [-56, 72],
  Asia: [-12, 78],
  Australia: [-45, -9],
  Europe: [34, 72],
}

/** True when the position makes no sense, and makes sense with its two numbers exchanged. */
export function seemsSwapped(position: Position, known: KnownOf): boolean {
  const exchanged = { lat: position.lon, lon: position.lat }
  if (Math.abs(exchanged.lat) > 90) return false
  return !isLikely(position, known) && isLikely(exchanged, known)
}

/** Where another block is, that decides; else the time zone, roughly. */
export function isLikely(position: Position, { position: other, timeZone, utcOffsetH }: KnownOf) {
  if (other) return lineBetween(other, position).metres < farM
  const [south, north] = latitudes[timeZone.split('/')[0] ?? ''] ?? [-60, 75]
  const lonOff = Math.abs(((position.lon - utcOffsetH * 15 + 540) % 360) - 180)
  return position.lat >= south && position.lat <= north && lonOff <= lonSlackDeg
}
