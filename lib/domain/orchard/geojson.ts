/** Trees as GeoJSON (RFC 7946): each a point, or without a place, with its facts as properties. */

import type { CsvRecord } from './csv'

const geoJsonProblems = ['not_geojson', 'other_crs', 'not_a_point'] as const

export type GeoJsonTable =
  | { heads: string[]; records: CsvRecord[] }
  | { problem: (typeof geoJsonProblems)[number]; feature: number; found: string }
  | { tooMany: true }

/** The same columns and fields as a table has; `line` counts the features from 1. */
export function geoJsonTable(text: string, mostRecords: number): GeoJsonTable {
  const value = parsed(text)
  if (!isObject(value) || value.type !== 'FeatureCollection' || !Array.isArray(value.features)) {
    const found = isObject(value) ? String(value.type ?? '') : ''
    return { problem: 'not_geojson', feature: 0, found }
  }
  const crs = crsOf(value)
  if (crs !== null) return { problem: 'other_crs', feature: 0, found: crs }
  if (value.features.length > mostRecords) return { tooMany: true }

  const heads: string[] = []
  const places = new Map<string, number>()
  const facts: Record<string, unknown>[] = []
  for (const [index, feature] of value.features.entries()) {
    const tree = factsOf(feature)
    if (typeof tree === 'string') {
      return { problem: 'not_a_point', feature: index + 1, found: tree }
    }
    for (const head of Object.keys(tree)) {
      if (places.has(head) || heads.length === mostHeads) continue
      places.set(head, heads.length)
      heads.push(head)
    }
    facts.push(tree)
  }
  const records = facts.map((tree, index) => ({
    line: index + 1,
    fields: heads.map((head) => (Object.hasOwn(tree, head) ? fieldOf(tree[head]) : '')),
  }))
  return { heads, records }
}

const mostHeads = 200

/** A text says what the feature is instead of a tree. */
function factsOf(feature: unknown): Record<string, unknown> | string {
  if (!isObject(feature) || feature.type !== 'Feature') return 'no Feature'
  const properties = isObject(feature.properties) ? feature.properties : {}
  // The geometry is the place, whatever a property says.
  const said = Object.entries(properties).filter(
    ([name]) => !/^(lat|lon|lng|latitude|longitude)$/i.test(name)
  )
  const known = Object.fromEntries(said)
  const { geometry } = feature
  if (geometry === null || geometry === undefined) return known
  if (!isObject(geometry) || geometry.type !== 'Point') {
    return isObject(geometry) ? String(geometry.type) : 'no geometry'
  }
  const [lon, lat] = Array.isArray(geometry.coordinates) ? geometry.coordinates : []
  if (typeof lon !== 'number' || typeof lat !== 'number') return 'Point'
  return { ...known, lat, lon }
}

function fieldOf(value: unknown): string {
  switch (typeof value) {
    case 'string':
      return value.trim()
    case 'boolean':
      return value ? 'yes' : 'no'
    case 'number':
      // Never 1e-7, which is no number to a person.
      return Number.isInteger(value) ? String(value) : value.toFixed(9).replace(/0+$/, '')
    default:
      return ''
  }
}

/** RFC 7946 knows one system; files from before it may name another, whose numbers would put trees elsewhere. */
function crsOf(value: Record<string, unknown>): string | null {
  if (!isObject(value.crs)) return null
  const name = isObject(value.crs.properties) ? String(value.crs.properties.name ?? '') : ''
  return /CRS84|EPSG:+4326$/.test(name) ? null : name || 'crs'
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}
