/**
 * Positions on the WGS84 ellipsoid, by Karney's algorithm: what a survey is laid out with, at any distance.
 *
 * `distance.ts` does for walking what this does for planting, without these 30 kB; only the screens on which
 * blocks are laid out may import this file.
 */

import * as geographiclib from 'geographiclib-geodesic'

import type { Offset } from './distance'
import type { Position } from './types'

// Bundlers find its names; Node by itself has them all under `default`.
const { Geodesic } =
  'default' in geographiclib ? (geographiclib.default as typeof geographiclib) : geographiclib
const earth = Geodesic.WGS84
const radians = Math.PI / 180

/** The shortest line between two places: how long it is and on which bearing it leaves. */
export type Line = { metres: number; bearingDeg: number }

export function lineBetween(from: Position, to: Position): Line {
  const { s12 = Number.NaN, azi1 = Number.NaN } = earth.Inverse(from.lat, from.lon, to.lat, to.lon)
  return { metres: s12, bearingDeg: compass(azi1) }
}

/** The bearing on which that line arrives. */
export function arrivingDeg(from: Position, to: Position): number {
  return compass(earth.Inverse(from.lat, from.lon, to.lat, to.lon).azi2 ?? Number.NaN)
}

export function placeAt(from: Position, { metres, bearingDeg }: Line): Position {
  const { lat2 = Number.NaN, lon2 = Number.NaN } = earth.Direct(
    from.lat,
    from.lon,
    bearingDeg,
    metres
  )
  return { lat: lat2, lon: lon2 }
}

/** Of the ground inside the corners, in either order. */
export function areaM2(corners: readonly Position[]): number {
  const polygon = earth.Polygon(false)
  for (const { lat, lon } of corners) polygon.AddPoint(lat, lon)
  return Math.abs(polygon.Compute(false, true).area ?? 0)
}

/** A flat sheet laid on the ground at one place. */
export type Sheet = {
  toSheet: (position: Position) => Offset
  toGround: (offset: Offset) => Position
}

/**
 * Distances and bearings from the middle are exact, and lengths elsewhere wrong by a part of (r / R)² / 6:
 * a millimetre in ten kilometres at two kilometres from the middle. (Azimuthal equidistant, from memory; the
 * tests measure it.)
 */
export function sheetAround(middle: Position): Sheet {
  return {
    toSheet: (position) => {
      const { metres, bearingDeg } = lineBetween(middle, position)
      return {
        eastM: metres * Math.sin(bearingDeg * radians),
        northM: metres * Math.cos(bearingDeg * radians),
      }
    },
    toGround: ({ eastM, northM }) =>
      placeAt(middle, {
        metres: Math.hypot(eastM, northM),
        bearingDeg: Math.atan2(eastM, northM) / radians,
      }),
  }
}

/** As positions are kept: a ten-millionth of a degree is a centimetre. */
export function toE7(degrees: number): number {
  return Math.round(degrees * 1e7)
}

export function fromE7(e7: number): number {
  return e7 / 1e7
}

function compass(degrees: number): number {
  return (degrees + 360) % 360
}
