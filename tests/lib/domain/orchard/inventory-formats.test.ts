/** The same three trees as different programs and people write them. */

import { describe, expect, test } from 'vitest'

import { parseInventory } from '@/lib/domain/orchard/inventory'
import { tableOf } from '@/lib/domain/orchard/inventory-table'
import { matchColumns } from '@/lib/domain/orchard/match-columns'
import { degreesIn, numberIn } from '@/lib/domain/orchard/number-in'

const thisYear = 2026
const utf8 = (text: string) => new TextEncoder().encode(text)
/** Every character here is one byte there, at its own number. */
const windows1252 = (text: string) => Uint8Array.from([...text].map((one) => one.charCodeAt(0)))
const utf16 = (text: string) =>
  Uint8Array.from([
    0xff,
    0xfe,
    ...[...text].flatMap((one) => [one.charCodeAt(0) & 255, one.charCodeAt(0) >> 8]),
  ])

const spanish = [
  'Bloque;Hilera;Árbol;Especie;Variedad;Año de plantación;Diámetro (cm);Altura (m);Línea eléctrica;Latitud;Longitud',
  'Ladera Norte;1;1;Ciruelo;Reina Claudia;1998;18,5;3,2;no;41,0512;-2,9034',
  'Ladera Norte;1;2;Manzano;;;22;;sí;41,05123;-2,9034',
  'Ladera Norte;1;3;Níspero;;;;;;;',
].join('\r\n')
const english = [
  'Block,Row,Tree,Kind,Variety,Planted,Trunk (in),Height (ft),Known hazards,Latitude,Longitude',
  'Ladera Norte,1,1,plum tree,Reina Claudia,1998,7.283,10.5,,41.0512 N,2.9034 W',
  'Ladera Norte,1,2,Apples,,,8.66,,power line near,41.05123,-2.9034',
].join('\n')
const geoJson = JSON.stringify({
  type: 'FeatureCollection',
  features: [
    {
      type: 'Feature',
      geometry: { type: 'Point', coordinates: [-2.9034, 41.0512, 612] },
      properties: {
        block: 'Ladera Norte',
        row: 1,
        place: 1,
        species: 'plum',
        cultivar: 'Reina Claudia',
        planted_year: 1998,
        trunk_cm: 18.5,
        height_cm: 320,
      },
    },
    {
      type: 'Feature',
      geometry: { type: 'Point', coordinates: [-2.9034, 41.05123] },
      properties: {
        block: 'Ladera Norte',
        row: 1,
        place: 2,
        species: 'apple',
        trunk_cm: 22,
        hazard: 'power_line',
      },
    },
  ],
})

const first = {
  block: 1,
  row: 1,
  place: 1,
  species: 'plum',
  plantedYear: 1998,
  trunkCm: 18.5,
  heightCm: 320,
  sizeClass: 'medium',
  position: { lat: 41.0512, lon: -2.9034 },
}
const second = {
  place: 2,
  species: 'apple',
  trunkCm: 22,
  heightCm: null,
  position: { lat: 41.05123, lon: -2.9034 },
}

describe('the same trees', () => {
  const twoRows = spanish.split('\r\n').slice(0, 3).join('\r\n')
  test.each<[string, Uint8Array]>([
    ['in Spanish, with semicolons and decimal commas', utf8(twoRows)],
    ['with a byte order mark', utf8(`\uFEFF${twoRows}`)],
    ['in Windows-1252', windows1252(twoRows)],
    ['in UTF-16, parted by tabs', utf16(twoRows.replaceAll(';', '\t'))],
    ['below a title and empty lines', utf8(`Finca;;;\r\n;;;\r\n${twoRows}\r\n;;;;;;;;;;\r\n`)],
    ['with a line that names the separator', utf8(`sep=;\r\n${twoRows}`)],
    ['in English, in inches and feet', utf8(english)],
    ['as GeoJSON', utf8(geoJson)],
  ])('%s', (_, file) => {
    const read = parseInventory({ file, thisYear })

    expect(read).toMatchObject({
      state: 'read',
      blocks: [{ no: 1, code: 'LN', name: 'Ladera Norte' }],
      cultivars: [{ species: 'plum', name: 'Reina Claudia' }],
      trees: [first, second],
    })
  })

  test('a kind of tree that has no word here is told with its column and line', () => {
    expect(parseInventory({ file: utf8(spanish), thisYear })).toMatchObject({
      state: 'refused',
      problems: [{ line: 4, column: 'Especie', code: 'not_one_of', found: 'Níspero' }],
    })
  })
})

test.each<[string, (string | null)[]]>([
  ['Block,Row,Tree,Tree height,Notes', ['block', 'row', 'place', 'height_cm', null]],
  ['N.º de árbol;Fila;Tipo de frutal', ['place', 'row', 'species']],
  [
    'fila;planta;especie;diámetro tronco cm;altura total',
    ['row', 'place', 'species', 'trunk_cm', 'height_cm'],
  ],
  ['Row;Row', ['row', null]],
  ['x;;row', [null, null, 'row']],
])('%s', (header, columns) => {
  const table = tableOf(utf8(`${header}\n1;2`))

  expect('heads' in table && matchColumns(table, 'metric').map(({ column }) => column)).toEqual(
    columns
  )
})

test.each<[string, string[], 'metric' | 'us', string | null]>([
  ['height_cm', ['3'], 'metric', 'cm'],
  ['Altura [m]', ['310'], 'metric', 'm'],
  ['Height in cm', [], 'us', 'cm'],
  // Without a unit: what makes the middle one a tree's height.
  ['Altura', ['3,1', '2,8', '4'], 'metric', 'm'],
  ['Altura', ['310', '280', ''], 'metric', 'cm'],
  ['Height', ['10', '9.5', '14'], 'us', 'ft'],
  ['Height', ['120', '96'], 'us', 'in'],
  ['Trunk', ['7', '8'], 'us', 'in'],
  ['Tronco', ['120', '185'], 'metric', 'mm'],
])('a column %s of %j is, in %s units, in %s', (head, values, units, unit) => {
  const records = values.map((value, index) => ({ line: index + 2, fields: [value] }))

  expect(matchColumns({ heads: [head], records }, units)[0]?.unit).toBe(unit)
})

test.each<[string, number | null]>([
  ['12,5', 12.5],
  ['12.5', 12.5],
  ['-0,5', -0.5],
  [',5', 0.5],
  ['1 200', 1200],
  ['1.200,5', null],
  ['1,200.5', null],
  ['12 cm', null],
  ['', null],
])('%j as a number is %j', (text, number) => {
  expect(numberIn(text)).toBe(number)
})

test.each<[string, string, number | null]>([
  ['41.05 S', 's', -41.05],
  ['2,9 O', 'wo', -2.9],
  ['2.9° E', 'wo', 2.9],
  ['-2.9', 'wo', -2.9],
  ['north', 's', null],
])('%j as degrees is %j', (text, negative, degrees) => {
  expect(degreesIn(text, negative)).toBe(degrees)
})

test.each<[string, unknown, string]>([
  ['a lone feature', { type: 'Feature', geometry: null, properties: {} }, 'not_geojson'],
  ['a broken file', '{"type":', 'not_geojson'],
  [
    'another system',
    {
      type: 'FeatureCollection',
      crs: { type: 'name', properties: { name: 'urn:ogc:def:crs:EPSG::25830' } },
      features: [],
    },
    'other_crs',
  ],
  [
    'a polygon',
    {
      type: 'FeatureCollection',
      features: [
        { type: 'Feature', geometry: { type: 'Polygon', coordinates: [] }, properties: {} },
      ],
    },
    'not_a_point',
  ],
  ['no trees', { type: 'FeatureCollection', features: [] }, 'no_trees'],
])('%s is refused', (_, content, code) => {
  const text = typeof content === 'string' ? content : JSON.stringify(content)

  expect(parseInventory({ file: utf8(text), thisYear })).toMatchObject({
    state: 'refused',
    problems: [{ code }],
  })
})
