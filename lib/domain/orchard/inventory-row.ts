/** One row of an inventory, every field checked. What a row does not say is null. */

import type { CsvRecord } from './csv'
import { type InventoryProblem, problemIn } from './inventory-problem'
import { type Hazard, type RowReading, reader } from './inventory-reader'
import { budsIn, habitIn, lifeIn, sizeIn } from './inventory-words'
import {
  type BudSite,
  budSites,
  type Habit,
  habits,
  type Life,
  lives,
  type Position,
  type SizeClass,
  type Species,
  sizeClasses,
} from './types'

export type InventoryRow = {
  line: number
  /** A code or a name. Null: the file has no such column. */
  block: string | null
  blockName: string | null
  row: number
  /** Null: the trees of a row are counted in the order of the file. */
  place: number | null
  species: Species | null
  cultivar: string | null
  habit: Habit | null
  buds: BudSite | null
  plantedYear: number | null
  trunkCm: number | null
  heightCm: number | null
  sizeClass: SizeClass | null
  asksSaw: boolean | null
  life: Life | null
  hazard: Hazard | null
  position: Position | null
}

export type ReadRow = { row: InventoryRow } | { problems: InventoryProblem[] }

export function readRow({ line, fields: told }: CsvRecord, reading: RowReading): ReadRow {
  const { heads, thisYear } = reading
  const fields = lengthened(told, reading)
  const problems: InventoryProblem[] = []
  // Spreadsheets leave empty fields at the end; any other number of them is a comma too much or too few.
  const isMiscounted = fields.length < heads.length || fields.slice(heads.length).some(Boolean)
  if (isMiscounted) {
    const counted = { found: String(fields.length), allowed: String(heads.length) }
    return { problems: [problemIn({ line, code: 'fields_miscounted', ...counted })] }
  }
  const read = reader(fields, reading, (problem) => problems.push(problemIn({ line, ...problem })))

  const row: InventoryRow = {
    line,
    block: read.text('block', 60) ?? blockIn(reading.titles?.get(line)),
    blockName: read.optionalText('block_name', 60),
    row: read.whole('row', 1, 9999) ?? 0,
    place: read.whole('place', 1, 9999),
    species: read.species(),
    cultivar: read.optionalText('cultivar', 60),
    habit: read.oneOf('habit', habitIn, habits),
    buds: read.oneOf('buds', budsIn, budSites),
    plantedYear: read.year('planted_year', 1700, thisYear),
    trunkCm: read.length('trunk_cm', 0.1, 999.9, 10),
    heightCm: read.length('height_cm', 10, 5000, 1),
    sizeClass: read.oneOf('size', sizeIn, sizeClasses),
    asksSaw: read.yesNo('asks_saw'),
    life: read.oneOf('life', lifeIn, lives),
    hazard: read.hazard(),
    position: read.position(),
  }
  return problems.length > 0 ? { problems } : { row }
}

/** Some programs leave the separators out where the last fields are empty: harmless if none of them is used. */
function lengthened(fields: string[], { heads, matching }: RowReading): string[] {
  const isUsed = matching.slice(fields.length).some(({ column }) => column !== null)
  const lacking = heads.length - fields.length
  return lacking > 0 && !isUsed && fields.length > 1
    ? [...fields, ...Array.from({ length: lacking }, () => '')]
    : fields
}

/** "Block: Long Bank", alone above its trees. */
function blockIn(title: string | undefined): string | null {
  const name = title
    ?.replace(
      /^(block|plot|section|parcel|field|bloque|parcela|sector|lote|cuartel|zona)\b[\s:.]*/i,
      ''
    )
    .replace(/[\s:]+$/, '')
  return (name || title)?.slice(0, 60) ?? null
}
