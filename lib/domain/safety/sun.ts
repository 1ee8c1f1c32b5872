/**
 * When the sun rises and sets, and how long it stays light after: the method of the NOAA solar calculator (after
 * Meeus, "Astronomical Algorithms"), within a minute between 72° north and south. Hills and crowns darken earlier.
 */

import type { Position } from '../orchard/types'

export type SunTimes = { from: number; to: number }

/** From and to in milliseconds. Above the polar circles there are days with neither. */
export type Light =
  | { state: 'rises'; times: SunTimes }
  | { state: 'up_all_day' }
  | { state: 'down_all_day' }

/** `sun`: the disc itself, with refraction. `civil`: light enough to walk and to see where one treads. */
export type DayLight = { sun: Light; civil: Light }

const dayMs = 86_400_000
const minuteMs = 60_000
const riseZenithDeg = 90.833
const civilZenithDeg = 96

/**
 * How high the middle of the sun stands, without refraction. Whether it is light is decided by this alone, and the referee
 * asks the same (private.sun_height); the times of rise and set say when it will be.
 */
export function sunHeightDeg({ lat, lon }: Position, atMs: number): number {
  const dec = radians(declinationDeg(atMs))
  const solarMinutes = modulo(atMs / minuteMs, 1440) + equationOfTimeMinutes(atMs) + 4 * lon
  const hourAngle = radians(solarMinutes / 4 - 180)
  const sine =
    Math.sin(radians(lat)) * Math.sin(dec) +
    Math.cos(radians(lat)) * Math.cos(dec) * Math.cos(hourAngle)
  return degrees(Math.asin(Math.min(1, Math.max(-1, sine))))
}

/** From rise to set, with refraction. */
export function isSunUp(position: Position, atMs: number): boolean {
  return sunHeightDeg(position, atMs) >= 90 - riseZenithDeg
}

/** Of the day whose noon is nearest to this moment, there. */
export function dayLightAt(position: Position, nearMs: number): DayLight {
  return {
    sun: lightAt(position, nearMs, riseZenithDeg),
    civil: lightAt(position, nearMs, civilZenithDeg),
  }
}

function lightAt({ lat, lon }: Position, nearMs: number, zenithDeg: number): Light {
  const meanNoonMs = meanNoonNear(lon, nearMs)
  // The sun moves during the day, so where it stands is asked again at the time found.
  const crossing = (side: 1 | -1) => {
    let atMs = meanNoonMs
    for (let again = 0; again < 4; again++) {
      const halfDay = halfDayMinutes(lat, declinationDeg(atMs), zenithDeg)
      if (typeof halfDay === 'string') return halfDay
      atMs = meanNoonMs + (side * halfDay - equationOfTimeMinutes(atMs)) * minuteMs
    }
    return Math.round(atMs)
  }
  const [from, to] = [crossing(-1), crossing(1)]
  if (typeof from === 'string') return { state: from }
  return typeof to === 'string' ? { state: to } : { state: 'rises', times: { from, to } }
}

function halfDayMinutes(
  latDeg: number,
  declination: number,
  zenithDeg: number
): number | 'up_all_day' | 'down_all_day' {
  const [lat, dec] = [radians(latDeg), radians(declination)]
  const cosine =
    Math.cos(radians(zenithDeg)) / (Math.cos(lat) * Math.cos(dec)) - Math.tan(lat) * Math.tan(dec)
  if (cosine < -1) return 'up_all_day'
  return cosine > 1 ? 'down_all_day' : degrees(Math.acos(cosine)) * 4
}

/** Noon by the mean sun; the true one is up to a quarter of an hour off. */
function meanNoonNear(lon: number, nearMs: number): number {
  const offsetMs = dayMs / 2 - lon * 4 * minuteMs
  return Math.round((nearMs - offsetMs) / dayMs) * dayMs + offsetMs
}

type Sun = {
  anomaly: number
  longitude: number
  obliquity: number
  eccentricity: number
  mean: number
}

/** Angles in degrees. */
function sunAt(atMs: number): Sun {
  const t = (atMs / dayMs + 2440587.5 - 2451545) / 36525
  const mean = modulo(280.46646 + t * (36000.76983 + t * 0.0003032), 360)
  const anomaly = 357.52911 + t * (35999.05029 - 0.0001537 * t)
  const m = radians(anomaly)
  const centre =
    Math.sin(m) * (1.914602 - t * (0.004817 + 0.000014 * t)) +
    Math.sin(2 * m) * (0.019993 - 0.000101 * t) +
    Math.sin(3 * m) * 0.000289
  const node = radians(125.04 - 1934.136 * t)
  const seconds = 21.448 - t * (46.815 + t * (0.00059 - t * 0.001813))
  return {
    anomaly,
    mean,
    longitude: mean + centre - 0.00569 - 0.00478 * Math.sin(node),
    obliquity: 23 + (26 + seconds / 60) / 60 + 0.00256 * Math.cos(node),
    eccentricity: 0.016708634 - t * (0.000042037 + 0.0000001267 * t),
  }
}

function declinationDeg(atMs: number): number {
  const { longitude, obliquity } = sunAt(atMs)
  return degrees(Math.asin(Math.sin(radians(obliquity)) * Math.sin(radians(longitude))))
}

function equationOfTimeMinutes(atMs: number): number {
  const sun = sunAt(atMs)
  const y = Math.tan(radians(sun.obliquity) / 2) ** 2
  const [mean, m, e] = [radians(sun.mean), radians(sun.anomaly), sun.eccentricity]
  return (
    4 *
    degrees(
      y * Math.sin(2 * mean) -
        2 * e * Math.sin(m) +
        4 * e * y * Math.sin(m) * Math.cos(2 * mean) -
        0.5 * y * y * Math.sin(4 * mean) -
        1.25 * e * e * Math.sin(2 * m)
    )
  )
}

function modulo(value: number, by: number): number {
  return ((value % by) + by) % by
}

function radians(deg: number): number {
  return (deg * Math.PI) / 180
}

function degrees(rad: number): number {
  return (rad * 180) / Math.PI
}
