/** The tree sheet: what rarely changes about trees, as columns of integers, and the rows that are in it. */

import { sizeClassOf } from '@/lib/domain/orchard/size-class'
import {
  type Block,
  budSites,
  type Cultivar,
  habits,
  lives,
  type Position,
  type SizeClass,
  species,
  type Tree,
} from '@/lib/domain/orchard/types'
import * as shape from '@/lib/util/shape'

export type Sheet = {
  version: number
  trees: readonly Tree[]
  blocks: readonly Block[]
  cultivars: readonly Cultivar[]
}

const int = shape.integer
const column = shape.array(int)
const coordinate = shape.nullable(shape.number)

const packed = shape.object({
  v: int,
  blocks: shape.array(
    shape.object({
      no: int,
      code: shape.text,
      name: shape.text,
      rowSpacingM: shape.number,
      treeSpacingM: shape.number,
      bearingDeg: coordinate,
      firstLatE7: coordinate,
      firstLonE7: coordinate,
      taggedEnd: shape.oneOf(['low', 'high']),
    })
  ),
  cultivars: shape.array(
    shape.object({
      no: int,
      species: shape.otherwise(shape.oneOf(species), 'other'),
      name: shape.text,
      habit: shape.oneOf(habits),
      // A sheet kept from before says nothing of it.
      buds: shape.otherwise(shape.oneOf(budSites), 'unknown'),
    })
  ),
  species: shape.array(shape.otherwise(shape.oneOf(species), 'other')),
  lat0: int,
  lon0: int,
  trees: shape.object({
    no: column,
    block: column,
    row: column,
    place: column,
    species: column,
    cultivar: column,
    size: column,
    planted: column,
    height: column,
    trunk: column,
    saw: column,
    life: column,
    lat: shape.array(shape.nullable(int)),
    lon: shape.array(shape.nullable(int)),
  }),
})
type Packed = shape.Out<typeof packed>

/** Null: not a sheet. */
export function sheetOf(text: string): Sheet | null {
  const read = shape.read(packed, jsonOf(text))
  if (!read) return null
  const { v, blocks, cultivars, trees } = read.value
  const rows = trees.no.map((_, at) => treeAt(read.value, at))
  return {
    version: v,
    // A column that is too short leaves trees without a place; such a tree is not one.
    trees: rows.filter((tree) => tree !== null),
    blocks: blocks.map(({ firstLatE7, firstLonE7, ...block }) => ({
      ...block,
      firstTree: positionOf(firstLatE7, firstLonE7),
    })),
    cultivars,
  }
}

const sizes: readonly (SizeClass | null)[] = [null, 'young', 'small', 'medium', 'large']

function treeAt({ trees, species, lat0, lon0 }: Packed, at: number): Tree | null {
  const no = trees.no[at]
  const block = trees.block[at]
  const row = trees.row[at]
  const place = trees.place[at]
  if (no === undefined || block === undefined || row === undefined || place === undefined)
    return null
  const heightCm = trees.height[at] || null
  const trunkMm = trees.trunk[at] || null
  const trunkCm = trunkMm === null ? null : trunkMm / 10
  const [lat, lon] = [trees.lat[at] ?? null, trees.lon[at] ?? null]
  return {
    no,
    block,
    row,
    place,
    species: species[trees.species[at] ?? -1] ?? 'other',
    cultivar: trees.cultivar[at] || null,
    sizeClass: sizes[trees.size[at] ?? 0] ?? sizeClassOf({ heightCm, trunkCm }),
    plantedYear: trees.planted[at] || null,
    heightCm,
    trunkCm,
    asksSaw: trees.saw[at] === 1,
    life: lives[trees.life[at] ?? 0] ?? 'standing',
    position: lat === null || lon === null ? null : positionOf(lat + lat0, lon + lon0),
  }
}

function positionOf(latE7: number | null, lonE7: number | null): Position | null {
  return latE7 === null || lonE7 === null ? null : { lat: latE7 / 1e7, lon: lonE7 / 1e7 }
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}
