/** The demo's trees as an orchard's own spreadsheet would have them: merged, totalled, with units, and in a hurry. */

import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

import { parseInventory } from '@/lib/domain/orchard/inventory'
import { countedIn, degreesIn, measureIn, yearIn } from '@/lib/domain/orchard/number-in'

const [head = '', ...told] = readFileSync('supabase/seed/orchard.csv', 'utf8').trim().split('\n')
const columns = head.split(',')
const rows = told.slice(0, 40).map((line) => line.split(','))
const heads =
  'Block;Block name;Row;Tree;Species;Variety;Habit;Buds;Planted;Trunk (cm);Height (cm);Saw;State;Lat;Lon'

type Row = string[]
const at = (column: string) => columns.indexOf(column)
/** Each field of one column, written otherwise. */
const written = (column: string, as: (field: string, index: number, row: Row) => string) =>
  rows.map((row, index) => row.with(at(column), as(row[at(column)] ?? '', index, row)))
const lines = (table: readonly Row[] = rows) => [heads, ...table.map((row) => row.join(';'))]
const utf8 = (text: readonly string[]) => new TextEncoder().encode(text.join('\r\n'))
const utf16 = (text: readonly string[]) =>
  Uint8Array.from([...text.join('\r\n')].flatMap((one) => [one.charCodeAt(0), 0]))
const within = (place: number, ...more: string[]) => lines().toSpliced(place, 0, ...more)

const spanish: Record<string, string> = {
  apricot: 'Albaricoqueros',
  cherry: 'CEREZAS',
  nectarine: 'Nectarinas',
  european_plum: 'Ciruelas europeas',
}
const dates = (year: string) => [
  `12/03/${year}`,
  `${year}-03-12`,
  `marzo de ${year}`,
  `${year}/${String(Number(year) + 1).slice(2)}`,
  `12.3.${year}`,
  `ca. ${year}`,
]

function read(file: Uint8Array) {
  return parseInventory({ file, thisYear: 2026 })
}

describe('the same trees come out of', () => {
  const { passedOver: _, lines: __, ...plain } = read(utf8(lines())) as { [key: string]: unknown }

  test.each<[string, Uint8Array]>([
    ['merged headings above', utf8(within(0, 'Where;;Place;;Tree;;;;;Size;;;;GPS;'))],
    [
      'a title, who made it and empty lines above',
      utf8(within(0, 'Orchard;;;', 'Made by;J.;', '')),
    ],
    ['units below the headings', utf8(within(1, ';;;;;;;;;cm;(cm);;;;'))],
    ['a line of totals', utf8(within(41, 'Total;;;40;;;;;;;;;;;'))],
    ['totals of blocks', utf8(within(20, ';;;;SUBTOTAL;19 trees;;;;;;;;;', ';;;'))],
    ['the headings again', utf8(within(20, '', heads))],
    ['a note below', utf8(within(41, '', 'Source: walked in May'))],
    ['separators after the last field', utf8(lines().map((line) => `${line};;;`))],
    ['separators after the last heading', utf8(lines().with(0, `${heads};;`))],
    [
      'notes whose separators were left out',
      utf8(lines().map((line, index) => (index % 9 ? line : `${line};x`))),
    ],
    ['a quoted line that names the separator', utf8(within(0, '"sep=;"'))],
    ['upright lines between the fields', utf8(lines().map((line) => line.replaceAll(';', '|')))],
    ['UTF-16 without its mark', utf16(lines())],
    [
      'merged cells of blocks',
      utf8(lines(rows.map((row, index) => (index === 0 ? row : row.with(0, '').with(1, ''))))),
    ],
    [
      'merged cells of rows',
      utf8(
        lines(written('row', (row, index) => (rows[index - 1]?.[at('row')] === row ? '' : row)))
      ),
    ],
    ['numbers of the lines', utf8(lines().map((line, index) => `${index || 'N.º'};${line}`))],
    ['rows that say they are rows', utf8(lines(written('row', (row) => `Row ${row}`)))],
    ['rows with the letter of the block', utf8(lines(written('row', (row) => `L${row}`)))],
    ['units in the fields', utf8(lines(written('trunk_cm', (cm) => cm && `${cm} cm`)))],
    [
      'another unit in the fields',
      utf8(lines(written('height_cm', (cm) => cm && `${(Number(cm) / 100).toFixed(2)} m`))),
    ],
    [
      'dates for years',
      utf8(lines(written('planted_year', (year, index) => dates(year)[index % 6] ?? ''))),
    ],
    ['plurals and accents', utf8(lines(written('species', (kind) => spanish[kind] ?? kind)))],
    [
      'kinds in capitals, as trees',
      utf8(lines(written('species', (kind) => `${kind.toUpperCase()} TREES`))),
    ],
    [
      'both coordinates in one field',
      utf8([
        heads.replace('Lat;Lon', 'GPS'),
        ...rows.map((row) => [...row.slice(0, -2), row.slice(-2).join(', ')].join(';')),
      ]),
    ],
  ])('a table with %s', (_, file) => {
    expect(read(file)).toMatchObject({ state: 'read', ...plain })
  })
})

test('titles between the trees are their blocks where no column is', () => {
  const [, ...trees] = lines().map((line) => line.split(';').slice(2).join(';'))
  const file = utf8([
    heads.split(';').slice(2).join(';'),
    'Block Long Bank;;;',
    ...trees.slice(0, 20),
    '',
    'Bloque: Ladera',
    ...trees.slice(20),
    'In all;;40 trees counted',
  ])

  expect(read(file)).toMatchObject({
    state: 'refused',
    problems: [{ line: 45, code: 'fields_miscounted' }],
  })
  expect(read(utf8(new TextDecoder().decode(file).split('\r\n').slice(0, -1)))).toMatchObject({
    blocks: [{ name: 'Long Bank' }, { name: 'Ladera' }],
  })
})

test('what is passed over is told with its line and why', () => {
  const file = utf8(within(20, 'Subtotal;;;19', 'Lower rows;;;', heads).toSpliced(0, 0, 'Orchard'))

  expect(read(file)).toMatchObject({
    passedOver: [
      { line: 1, why: 'above', text: 'Orchard' },
      { line: 22, why: 'total', text: 'Subtotal 19' },
      { line: 23, why: 'title', text: 'Lower rows' },
      { line: 24, why: 'heads_again' },
    ],
  })
})

test('a few empty blocks were forgotten, and are told', () => {
  const file = utf8(lines(written('block', (block, index) => (index === 7 ? '' : block))))

  expect(read(file)).toMatchObject({ problems: [{ line: 9, column: 'Block', code: 'missing' }] })
})

test.each<[string, string]>([
  ['<html><table><tr><td>Row</td></tr></table></html>', 'is_markup'],
  ['[{"row": 1}]', 'not_geojson'],
  [lines(written('planted_year', () => '12/03/98')).join('\n'), 'not_a_year'],
  [lines(written('planted_year', () => '36861')).join('\n'), 'not_a_year'],
  [lines(written('planted_year', () => '1998, again 2004')).join('\n'), 'not_a_year'],
  [lines(written('height_cm', () => '2-3 m')).join('\n'), 'not_a_number'],
])('%#: what cannot be known is asked for', (text, code) => {
  expect(read(utf8([text]))).toMatchObject({
    state: 'refused',
    problems: expect.arrayContaining([expect.objectContaining({ code })]),
  })
})

test.each<[string, number | null]>([
  ['3', 3],
  ['Row 3', 3],
  ['R3', 3],
  ['#12', 12],
  ['3.ª', 3],
  ['B3', null],
  ['3-4', null],
])('%j is counted as %j', (text, number) => {
  expect(countedIn(text)).toBe(number)
})

test.each<[string, ReturnType<typeof measureIn>]>([
  ['12', { value: 12, unit: null }],
  ['12 cm', { value: 12, unit: 'cm' }],
  ['3,5m', { value: 3.5, unit: 'm' }],
  ['~ 4 pies', { value: 4, unit: 'ft' }],
  ['10"', { value: 10, unit: 'in' }],
  ['7 ft 6 in', { value: 90, unit: 'in' }],
  ['5\' 4"', { value: 64, unit: 'in' }],
  ['12 palms', null],
  ['3-4 m', null],
])('%j measures %j', (text, measure) => {
  expect(measureIn(text)).toEqual(measure)
})

test.each<[string, number | null]>([
  ['1998', 1998],
  ['winter 1998/99', 1998],
  ['1998 or 2001', null],
  ["'98", null],
])('%j is the year %j', (text, year) => {
  expect(yearIn(text)).toBe(year)
})

// 41° 12′ 15″ is 41 + 12 / 60 + 15 / 3600.
test.each<[string, number]>([
  ['41°12\'15"N', 41.204166],
  ['2º 30′ O', -2.5],
])('%j is %d degrees', (text, degrees) => {
  expect(degreesIn(text, 'wo')).toBeCloseTo(degrees, 5)
})
