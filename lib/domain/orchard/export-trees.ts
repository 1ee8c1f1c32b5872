/** An orchard's trees as a table and as GeoJSON (RFC 7946), such that bringing them in again changes nothing. */

import { csvPlain } from './csv'
import { columns as allColumns, type Column } from './inventory-columns'
import type { Inventory } from './inventory-placed'
import type { Cultivar, Tree } from './types'

/** The signs of open hazards, by tree. */
export type Hazards = ReadonlyMap<number, string>

/** Latitude and longitude have columns of their own. */
const columns = allColumns.filter((column) => column !== 'lat_lon')
type Facts = Record<Exclude<Column, 'lat_lon'>, string | number | null>

export function treesCsv(orchard: Inventory, hazards: Hazards): string {
  const lines = factsOf(orchard, hazards).map((facts) => columns.map((column) => facts[column]))
  return `${[[...columns], ...lines].map((line) => line.map(fieldOf).join(',')).join('\r\n')}\r\n`
}

/** A number is no formula, and never 1e-7, which is no number to a person. */
function fieldOf(value: string | number | null): string {
  if (typeof value !== 'number') return csvPlain(value)
  return Number.isInteger(value) ? String(value) : value.toFixed(7).replace(/0+$/, '')
}

/** A tree that nobody surveyed has no geometry. What is not known is left out. */
export function treesGeoJson(orchard: Inventory, hazards: Hazards): string {
  const features = factsOf(orchard, hazards).map(({ lat, lon, ...facts }) => ({
    type: 'Feature' as const,
    geometry:
      lat === null || lon === null
        ? null
        : { type: 'Point' as const, coordinates: [Number(lon), Number(lat)] },
    properties: Object.fromEntries(Object.entries(facts).filter(([, fact]) => fact !== null)),
  }))
  return `${JSON.stringify({ type: 'FeatureCollection' as const, features })}\n`
}

function factsOf({ blocks, cultivars, trees }: Inventory, hazards: Hazards): Facts[] {
  const blockOf = new Map(blocks.map((block) => [block.no, block]))
  const cultivarOf = new Map(cultivars.map((cultivar) => [cultivar.no, cultivar]))
  return trees.map((tree) => ({
    block: blockOf.get(tree.block)?.code ?? null,
    block_name: blockOf.get(tree.block)?.name ?? null,
    ...ofTree(tree),
    ...ofCultivar(cultivarOf.get(tree.cultivar ?? 0)),
    hazard: hazards.get(tree.no) ?? null,
  }))
}

function ofTree(tree: Tree) {
  return {
    row: tree.row,
    place: tree.place,
    species: tree.species,
    planted_year: tree.plantedYear,
    trunk_cm: tree.trunkCm,
    height_cm: tree.heightCm,
    size: tree.sizeClass,
    asks_saw: tree.asksSaw ? 'yes' : 'no',
    life: tree.life,
    lat: tree.position?.lat ?? null,
    lon: tree.position?.lon ?? null,
  }
}

function ofCultivar(cultivar: Cultivar | undefined) {
  return {
    cultivar: cultivar?.name ?? null,
    habit: cultivar?.habit ?? null,
    buds: cultivar?.buds ?? null,
  }
}
