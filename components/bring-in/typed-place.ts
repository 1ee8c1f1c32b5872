/** Where a block is, from what was typed: degrees, and spacings in the orchard's unit. */

import type { BlockSettings } from '@/lib/domain/orchard/inventory-contents'
import { degreesIn, numberIn } from '@/lib/domain/orchard/number-in'

import type { TypedPlace } from './bring-in-draft'

export type PlaceField = 'lat' | 'lon' | 'bearing' | 'rowSpacing' | 'treeSpacing'

const inMetres = { metric: 1, us: 0.3048 } as const
export type Units = keyof typeof inMetres

/** What may be written; spacings in metres or feet, rounded so that the referee takes them. */
export function limitsOf(field: PlaceField, units: Units): readonly [least: number, most: number] {
  switch (field) {
    case 'lat':
      return [-90, 90]
    case 'lon':
      return [-180, 180]
    case 'bearing':
      return [0, 359.9]
    case 'rowSpacing':
    case 'treeSpacing':
      return units === 'us' ? [1.7, 98] : [0.5, 30]
  }
}

/** Null: nothing that can be meant. */
export function placeValue(field: PlaceField, typed: string, units: Units): number | null {
  const isDegrees = field === 'lat' || field === 'lon'
  const value = isDegrees ? degreesIn(typed, field === 'lat' ? 's' : 'wo') : numberIn(typed)
  const [least, most] = limitsOf(field, units)
  return value === null || value < least || value > most ? null : value
}

/** Null: something is missing or wrong. A plain grid takes its spacings alone, or none. */
export function settingsOf(place: TypedPlace, units: Units): BlockSettings | null {
  if (!place.isFromFirstTree) return {}
  const value = (field: PlaceField) => placeValue(field, place[field], units)
  const [lat, lon, bearingDeg] = [value('lat'), value('lon'), value('bearing')]
  const [between, along] = [value('rowSpacing'), value('treeSpacing')]
  if (lat === null || lon === null || bearingDeg === null || between === null || along === null) {
    return null
  }
  const metres = (spacing: number) => Math.round(spacing * inMetres[units] * 100) / 100
  const spacings = { rowSpacingM: metres(between), treeSpacingM: metres(along) }
  return { firstTree: { lat, lon }, bearingDeg, ...spacings }
}
