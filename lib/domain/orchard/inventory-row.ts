/** One row of an inventory, every field checked. What a row does not say is null. */

import type { CsvRecord } from './csv'
import { type Column, folded, inCm } from './inventory-columns'
import { type InventoryProblem, type ProblemCode, problemIn } from './inventory-problem'
import {
  budsIn,
  type HazardSign,
  habitIn,
  hazardIn,
  lifeIn,
  sizeIn,
  speciesIn,
  yesNoIn,
} from './inventory-words'
import type { Match } from './match-columns'
import { degreesIn, numberIn } from './number-in'
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
  species,
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
  hazard: { sign: HazardSign; note: string | null } | null
  position: Position | null
}

/** What the manager said of the file as a whole. */
export type RowReading = {
  heads: readonly string[]
  matching: readonly Match[]
  thisYear: number
  /** A kind of tree that has no word here, and what it is. */
  speciesCalled: ReadonlyMap<string, Species>
}

export type ReadRow = { row: InventoryRow } | { problems: InventoryProblem[] }

export function readRow({ line, fields }: CsvRecord, reading: RowReading): ReadRow {
  const { heads, thisYear } = reading
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
    block: read.text('block', 60),
    blockName: read.optionalText('block_name', 60),
    row: read.whole('row', 1, 9999) ?? 0,
    place: read.whole('place', 1, 9999),
    species: read.species(),
    cultivar: read.optionalText('cultivar', 60),
    habit: read.oneOf('habit', habitIn, habits),
    buds: read.oneOf('buds', budsIn, budSites),
    plantedYear: read.optionalWhole('planted_year', 1700, thisYear),
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

/** The same spelling of what was chosen for a word of the file. */
export function calledKey(text: string): string {
  return folded(text)
}

type Complain = (problem: Pick<InventoryProblem, 'code' | 'column' | 'found' | 'allowed'>) => void

/** Each complains once about its own column and gives something of the right type anyway. */
function reader(fields: readonly string[], reading: RowReading, complain: Complain) {
  const { heads, matching, speciesCalled } = reading
  const indexOf = (column: Column) => matching.findIndex((match) => match.column === column)
  const of = (column: Column) => fields[indexOf(column)] ?? ''
  const headOf = (column: Column) => heads[indexOf(column)] ?? column
  const wrong = (column: Column, code: ProblemCode, allowed: string) => {
    complain({ column: headOf(column), code, found: of(column), allowed })
    return null
  }

  /** Needed where there is such a column at all. */
  function needed(column: Column, allowed: string): boolean {
    if (indexOf(column) === -1) return false
    if (of(column) === '') wrong(column, 'missing', allowed)
    return of(column) !== ''
  }

  function text(column: Column, mostCharacters: number): string | null {
    return needed(column, `1–${mostCharacters}`) ? optionalText(column, mostCharacters) : null
  }

  function optionalText(column: Column, mostCharacters: number): string | null {
    const value = of(column)
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
    if (/[\u0000-\u001f\u007f-\u009f]/.test(value)) return wrong(column, 'control_character', '')
    if ([...value].length > mostCharacters) return wrong(column, 'too_long', `1–${mostCharacters}`)
    return value === '' ? null : value
  }

  function oneOf<Value extends string>(
    column: Column,
    find: (text: string) => Value | null,
    allowed: readonly Value[]
  ): Value | null {
    if (of(column) === '') return null
    return find(of(column)) ?? wrong(column, 'not_one_of', allowed.join(', '))
  }

  function kindOfTree(): Species | null {
    return speciesCalled.get(calledKey(of('species'))) ?? oneOf('species', speciesIn, species)
  }

  function yesNo(column: Column): boolean | null {
    const answer = oneOf(column, yesNoIn, ['yes', 'no'])
    return answer === null ? null : answer === 'yes'
  }

  function whole(column: Column, least: number, most: number): number | null {
    return needed(column, `${least}–${most}`) ? optionalWhole(column, least, most) : null
  }

  function optionalWhole(column: Column, least: number, most: number): number | null {
    if (of(column) === '') return null
    const value = numberIn(of(column))
    if (value === null || !Number.isInteger(value)) {
      return wrong(column, 'not_a_whole_number', `${least}–${most}`)
    }
    return within(column, value, least, most)
  }

  /** To the millimetre or the centimetre that the referee keeps: `steps` in a centimetre. */
  function length(column: Column, leastCm: number, mostCm: number, steps: number): number | null {
    if (of(column) === '') return null
    const unit = matching[indexOf(column)]?.unit ?? 'cm'
    const [least, most] = [leastCm, mostCm].map((cm) => Number((cm / inCm[unit]).toPrecision(3)))
    const value = numberIn(of(column))
    if (value === null) return wrong(column, 'not_a_number', `${least}–${most} ${unit}`)
    const cm = Math.round(value * inCm[unit] * steps) / steps
    return cm < leastCm || cm > mostCm
      ? wrong(column, 'out_of_range', `${least}–${most} ${unit}`)
      : cm
  }

  function within(column: Column, value: number, least: number, most: number): number | null {
    return value < least || value > most ? wrong(column, 'out_of_range', `${least}–${most}`) : value
  }

  function hazard(): InventoryRow['hazard'] {
    const written = optionalText('hazard', 300)
    const sign = written === null ? null : hazardIn(written, headOf('hazard'))
    // A sign's own word or a cross says nothing more than the sign does.
    const isBare = sign === null || written === sign || yesNoIn(written ?? '') !== null
    return sign && { sign, note: isBare ? null : written }
  }

  function degrees(column: 'lat' | 'lon', most: number, negative: string): number | null {
    if (of(column) === '') return null
    const value = degreesIn(of(column), negative)
    if (value === null) return wrong(column, 'not_a_number', `-${most}–${most}`)
    return within(column, value, -most, most)
  }

  function position(): Position | null {
    const lat = degrees('lat', 90, 's')
    const lon = degrees('lon', 180, 'wo')
    if (lat !== null && lon !== null) return { lat: rounded(lat), lon: rounded(lon) }
    if (of('lat') === '' && of('lon') !== '') wrong('lat', 'position_half', '-90–90')
    if (of('lon') === '' && of('lat') !== '') wrong('lon', 'position_half', '-180–180')
    return null
  }

  return {
    text,
    optionalText,
    oneOf,
    species: kindOfTree,
    yesNo,
    whole,
    optionalWhole,
    length,
    hazard,
    position,
  }
}

/** To the centimetre, as the referee keeps it. */
function rounded(degrees: number): number {
  return Math.round(degrees * 1e7) / 1e7
}
