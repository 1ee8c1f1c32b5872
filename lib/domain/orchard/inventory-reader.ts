/** The fields of one row by their columns, each checked; what is wrong is said once and something of the right type comes anyway. */

import { type Column, folded, inCm } from './inventory-columns'
import type { InventoryProblem, ProblemCode } from './inventory-problem'
import { type HazardSign, hazardIn, saysNothing, speciesIn, yesNoIn } from './inventory-words'
import type { Match } from './match-columns'
import { countedIn, degreesIn, measureIn, yearIn } from './number-in'
import { readPosition } from './read-position'
import { type Position, type Species, species } from './types'

/** What the manager said of the file as a whole. */
export type RowReading = {
  heads: readonly string[]
  matching: readonly Match[]
  thisYear: number
  /** A kind of tree that has no word here, and what it is. */
  speciesCalled: ReadonlyMap<string, Species>
  /** The line that stands alone above a row, by the row's line. */
  titles?: ReadonlyMap<number, string>
}

export type Hazard = { sign: HazardSign; note: string | null }

/** The same spelling of what was chosen for a word of the file. */
export function calledKey(text: string): string {
  return folded(text)
}

type Complain = (problem: Pick<InventoryProblem, 'code' | 'column' | 'found' | 'allowed'>) => void

const canBeUnknown: ReadonlySet<Column> = new Set([
  'cultivar',
  'planted_year',
  'trunk_cm',
  'height_cm',
  'size',
  'lat',
  'lon',
  'lat_lon',
])

/** Each complains once about its own column and gives something of the right type anyway. */
export function reader(fields: readonly string[], reading: RowReading, complain: Complain) {
  const { heads, matching, speciesCalled } = reading
  const indexOf = (column: Column) => matching.findIndex((match) => match.column === column)
  const of = (column: Column) => {
    const field = fields[indexOf(column)] ?? ''
    return canBeUnknown.has(column) && saysNothing(field) ? '' : field
  }
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
    const value = countedIn(withoutBlock(column))
    if (value === null || !Number.isInteger(value)) {
      return wrong(column, 'not_a_whole_number', `${least}–${most}`)
    }
    return within(column, value, least, most)
  }

  /** "L3" in the block L is row 3. */
  function withoutBlock(column: Column): string {
    const [field, block] = [of(column), of('block')]
    return /^\p{L}/u.test(field) && /\p{L}/u.test(block) && folded(field).startsWith(folded(block))
      ? field.slice(block.length).trim()
      : field
  }

  function year(column: Column, least: number, most: number): number | null {
    if (of(column) === '') return null
    const value = yearIn(of(column))
    if (value === null) return wrong(column, 'not_a_year', `${least}–${most}`)
    return within(column, value, least, most)
  }

  /** To the millimetre or the centimetre that the referee keeps: `steps` in a centimetre. */
  function length(column: Column, leastCm: number, mostCm: number, steps: number): number | null {
    if (of(column) === '') return null
    const measure = measureIn(of(column))
    const unit = measure?.unit ?? matching[indexOf(column)]?.unit ?? 'cm'
    const [least, most] = [leastCm, mostCm].map((cm) => Number((cm / inCm[unit]).toPrecision(3)))
    if (measure === null) return wrong(column, 'not_a_number', `${least}–${most} ${unit}`)
    const cm = Math.round(measure.value * inCm[unit] * steps) / steps
    return cm < leastCm || cm > mostCm
      ? wrong(column, 'out_of_range', `${least}–${most} ${unit}`)
      : cm
  }

  function within(column: Column, value: number, least: number, most: number): number | null {
    return value < least || value > most ? wrong(column, 'out_of_range', `${least}–${most}`) : value
  }

  function hazard(): Hazard | null {
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
    if (of('lat_lon') !== '') return positionInOne()
    const lat = degrees('lat', 90, 's')
    const lon = degrees('lon', 180, 'wo')
    if (lat !== null && lon !== null) return { lat: rounded(lat), lon: rounded(lon) }
    if (of('lat') === '' && of('lon') !== '') wrong('lat', 'position_half', '-90–90')
    if (of('lon') === '' && of('lat') !== '') wrong('lon', 'position_half', '-180–180')
    return null
  }

  function positionInOne(): Position | null {
    const read = readPosition(of('lat_lon'))
    if (read.state !== 'read') return wrong('lat_lon', 'not_a_position', '')
    return { lat: rounded(read.position.lat), lon: rounded(read.position.lon) }
  }

  return {
    text,
    optionalText,
    oneOf,
    species: kindOfTree,
    yesNo,
    whole,
    year,
    length,
    hazard,
    position,
  }
}

/** To the centimetre, as the referee keeps it. */
function rounded(degrees: number): number {
  return Math.round(degrees * 1e7) / 1e7
}
