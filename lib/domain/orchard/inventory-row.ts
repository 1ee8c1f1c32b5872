/** One row of an inventory, every field checked. */

import type { CsvRecord } from './csv'
import {
  type BudSite,
  budSites,
  type Habit,
  habits,
  type Life,
  lives,
  type Position,
  type Species,
  species,
} from './types'

export const columns = [
  'block',
  'block_name',
  'row',
  'place',
  'species',
  'cultivar',
  'habit',
  'buds',
  'planted_year',
  'trunk_cm',
  'height_cm',
  'asks_saw',
  'life',
  'lat',
  'lon',
] as const
export type Column = (typeof columns)[number]

/** What a file may do without; all other columns must be there. */
export const optionalColumns: readonly Column[] = ['buds']

export const problemCodes = [
  'file_too_big',
  'not_utf8',
  'quote_not_closed',
  'no_trees',
  'column_missing',
  'column_unknown',
  'column_twice',
  'fields_miscounted',
  'missing',
  'too_long',
  'control_character',
  'not_one_of',
  'not_a_whole_number',
  'not_a_number',
  'out_of_range',
  'position_half',
  'position_far_away',
  'place_taken',
  'block_name_differs',
  'habit_differs',
] as const
/** Each says what to do about it: lib/text has the sentence. */
export type ProblemCode = (typeof problemCodes)[number]

export type InventoryProblem = {
  line: number
  /** Null where the whole row or file is meant. */
  column: string | null
  code: ProblemCode
  /** What stands there. */
  found: string
  /** What may stand there, or the line it quarrels with. */
  allowed: string
}

export type InventoryRow = {
  line: number
  block: string
  blockName: string
  row: number
  place: number
  species: Species
  cultivar: string | null
  habit: Habit
  buds: BudSite
  plantedYear: number | null
  trunkCm: number | null
  heightCm: number | null
  asksSaw: boolean
  life: Life
  position: Position | null
}

export type ReadRow = { row: InventoryRow } | { problems: InventoryProblem[] }

/** Empty means: species other (at a gap only), habit and buds unknown, no saw, standing, and else not known. */
export function readRow(
  { line, fields }: CsvRecord,
  header: readonly Column[],
  thisYear: number
): ReadRow {
  const problems: InventoryProblem[] = []
  if (fields.length !== header.length) {
    const counted = { found: String(fields.length), allowed: String(header.length) }
    return { problems: [{ line, column: null, code: 'fields_miscounted', ...counted }] }
  }
  const fieldsOf = new Map(header.map((column, index) => [column, fields[index] ?? '']))
  const read = reader(fieldsOf, (column, code, allowed) =>
    problems.push({ line, column, code, found: fieldsOf.get(column) ?? '', allowed })
  )

  const life = read.oneOf('life', lives, 'standing')
  const row: InventoryRow = {
    line,
    block: read.text('block', 4) ?? '',
    blockName: read.text('block_name', 60) ?? '',
    row: read.whole('row', 1, 9999) ?? 0,
    place: read.whole('place', 1, 9999) ?? 0,
    species: read.oneOf('species', species, life === 'gap' ? 'other' : null),
    cultivar: read.optionalText('cultivar', 60),
    habit: read.oneOf('habit', habits, 'unknown'),
    buds: read.oneOf('buds', budSites, 'unknown'),
    plantedYear: read.optionalWhole('planted_year', 1700, thisYear),
    trunkCm: read.optionalNumber('trunk_cm', 0.1, 999),
    heightCm: read.optionalWhole('height_cm', 10, 5000),
    asksSaw: read.oneOf('asks_saw', ['yes', 'no'], 'no') === 'yes',
    life,
    position: read.position(),
  }
  return problems.length > 0 ? { problems } : { row }
}

type Complain = (column: Column, code: ProblemCode, allowed: string) => void

/** Each complains once about its own column and gives something of the right type anyway. */
function reader(fields: ReadonlyMap<Column, string>, complain: Complain) {
  const of = (column: Column) => fields.get(column) ?? ''

  function text(column: Column, mostCharacters: number): string | null {
    if (of(column) === '') complain(column, 'missing', `1–${mostCharacters}`)
    return optionalText(column, mostCharacters)
  }

  function optionalText(column: Column, mostCharacters: number): string | null {
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
    if (/[\u0000-\u001f\u007f]/.test(of(column))) complain(column, 'control_character', '')
    else if (of(column).length > mostCharacters) complain(column, 'too_long', `1–${mostCharacters}`)
    return of(column) === '' ? null : of(column)
  }

  function oneOf<Value extends string>(
    column: Column,
    allowed: readonly [Value, ...Value[]],
    whenEmpty: Value | null
  ): Value {
    const found = allowed.find((value) => value === of(column).toLowerCase())
    if (found) return found
    if (of(column) === '' && whenEmpty !== null) return whenEmpty
    complain(column, of(column) === '' ? 'missing' : 'not_one_of', allowed.join(', '))
    return allowed[0]
  }

  function whole(column: Column, least: number, most: number): number | null {
    if (of(column) === '') complain(column, 'missing', `${least}–${most}`)
    return optionalWhole(column, least, most)
  }

  function optionalWhole(column: Column, least: number, most: number): number | null {
    if (of(column) === '' || /^\d+$/.test(of(column))) return inRange(column, least, most)
    complain(column, 'not_a_whole_number', `${least}–${most}`)
    return null
  }

  function optionalNumber(column: Column, least: number, most: number): number | null {
    if (of(column) === '' || /^-?\d+(\.\d+)?$/.test(of(column))) return inRange(column, least, most)
    complain(column, 'not_a_number', `${least}–${most}`)
    return null
  }

  function inRange(column: Column, least: number, most: number): number | null {
    if (of(column) === '') return null
    const value = Number(of(column))
    if (value < least || value > most) complain(column, 'out_of_range', `${least}–${most}`)
    return value
  }

  function position(): Position | null {
    const lat = optionalNumber('lat', -90, 90)
    const lon = optionalNumber('lon', -180, 180)
    if (lat !== null && lon !== null) return { lat, lon }
    if (of('lat') === '' && of('lon') !== '') complain('lat', 'position_half', '-90–90')
    if (of('lon') === '' && of('lat') !== '') complain('lon', 'position_half', '-180–180')
    return null
  }

  return { text, optionalText, oneOf, whole, optionalWhole, optionalNumber, position }
}
