/** A position as people type or paste it: in degrees, with a point or a comma, or with minutes and seconds. */

import type { Position } from './types'

export type ReadPosition =
  | { state: 'empty' }
  | { state: 'read'; position: Position }
  /** Two numbers, but the first cannot be a latitude and the second can. */
  | { state: 'swapped'; position: Position }
  | { state: 'unreadable' }
  | { state: 'out_of_range' }

export function readPosition(typed: string): ReadPosition {
  const text = plainSigns(typed)
  if (text === '') return { state: 'empty' }
  const [lat, lon] = pointDegrees(text) ?? commaDegrees(text) ?? anglesWithLetters(text) ?? []
  if (lat === undefined || lon === undefined) return { state: 'unreadable' }
  if (isPosition(lat, lon)) return { state: 'read', position: { lat, lon } }
  return isPosition(lon, lat)
    ? { state: 'swapped', position: { lat: lon, lon: lat } }
    : { state: 'out_of_range' }
}

/** One of the two with minutes and its letter: 41°12'15"N. */
export function angleIn(typed: string): number | null {
  const text = plainSigns(typed)
  const [angle, second] = anglesIn(text) ?? []
  return angle && !second ? angle.value : null
}

function plainSigns(typed: string): string {
  return typed
    .trim()
    .toUpperCase()
    .replace(/[−–]/g, '-')
    .replace(/[º˚]/g, '°')
    .replace(/[′’]/g, "'")
    .replace(/[″”]|''/g, '"')
}

/** As it is typed back into a field. */
export function positionText({ lat, lon }: Position): string {
  return `${lat.toFixed(7)}, ${lon.toFixed(7)}`
}

function isPosition(lat: number, lon: number): boolean {
  return Math.abs(lat) <= 90 && Math.abs(lon) <= 180
}

type Pair = [number, number]

function pointDegrees(text: string): Pair | null {
  const found = /^(-?\d+(?:\.\d+)?)°?\s*[,;\s]\s*(-?\d+(?:\.\d+)?)°?$/.exec(text)
  // "41,20418": one number with a decimal comma, half of a position.
  if (!found || /^-?\d+,\d{3,}$/.test(text)) return null
  return [Number(found[1]), Number(found[2])]
}

function commaDegrees(text: string): Pair | null {
  const found =
    /^(-?\d+,\d+)°?\s*[,;\s]\s*(-?\d+,\d+)°?$/.exec(text) ??
    /^(-?\d+(?:,\d+)?)°?\s*[;\s]\s*(-?\d+(?:,\d+)?)°?$/.exec(text)
  return found ? [numberOf(found[1]), numberOf(found[2])] : null
}

const number = String.raw`\d+(?:[.,]\d+)?`
const angle = `(?<degrees>${number})\\s*°?\\s*(?:(?<minutes>${number})\\s*')?\\s*(?:(?<seconds>${number})\\s*")?`
const letterFirst = new RegExp(`(?<letter>[NSEWO])\\s*${angle}`, 'g')
const letterLast = new RegExp(`${angle}\\s*(?<letter>[NSEWO])`, 'g')

/** Letters say which is which, also the other way round. O is west in Spanish. */
function anglesWithLetters(text: string): Pair | null {
  const angles = anglesIn(text) ?? []
  const lat = angles.find(({ letter }) => letter === 'N' || letter === 'S')
  const lon = angles.find(({ letter }) => letter === 'E' || letter === 'W' || letter === 'O')
  return lat && lon ? [lat.value, lon.value] : null
}

function anglesIn(text: string): { letter: string; value: number }[] | null {
  const pattern = /^[NSEWO]/.test(text) ? letterFirst : letterLast
  const rest = text.replace(pattern, '').replace(/[,;\s]/g, '')
  if (rest !== '') return null
  return [...text.matchAll(pattern)].map(({ groups = {} }) => {
    const { letter = '', degrees, minutes, seconds } = groups
    const size = numberOf(degrees) + numberOf(minutes) / 60 + numberOf(seconds) / 3600
    return { letter, value: 'SWO'.includes(letter) ? -size : size }
  })
}

function numberOf(text: string | undefined): number {
  return text === undefined ? 0 : Number(text.replace(',', '.'))
}
