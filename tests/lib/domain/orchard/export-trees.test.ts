/** What goes out comes in again and changes nothing. */

import fc from 'fast-check'
import type { FeatureCollection, Point } from 'geojson'
import Papa from 'papaparse'
import { describe, expect, test } from 'vitest'

import { treesCsv, treesGeoJson } from '@/lib/domain/orchard/export-trees'
import { planInventory } from '@/lib/domain/orchard/inventory'
import type { Inventory } from '@/lib/domain/orchard/inventory-placed'
import { tableOf } from '@/lib/domain/orchard/inventory-table'
import { hazardSigns, saysNothing } from '@/lib/domain/orchard/inventory-words'
import { matchColumns } from '@/lib/domain/orchard/match-columns'
import {
  budSites,
  habits,
  lives,
  sizeClasses,
  species,
  type Tree,
} from '@/lib/domain/orchard/types'

/** Names as people give them, and as nobody should. */
const name = fc
  .oneof(
    fc.constantFrom(
      'Reina Claudia',
      '=1+1',
      "'=x",
      '-',
      '@home',
      'a;b,c',
      'say "so"',
      'Níspero',
      '12,5',
      'no'
    ),
    fc.string({ unit: fc.constantFrom(...'aB é\'=+-@;,"1'), minLength: 1, maxLength: 12 })
  )
  .map((text) => text.trim())
  .filter((text) => text !== '')
const degreesE7 = (most: number) => fc.integer({ min: -most, max: most }).map((e7) => e7 / 1e7)
const orNull = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: null })

const tree = fc.record({
  block: fc.integer({ min: 1, max: 3 }),
  row: fc.integer({ min: 1, max: 4 }),
  place: fc.integer({ min: 1, max: 6 }),
  species: fc.constantFrom(...species),
  cultivar: orNull(fc.integer({ min: 1, max: 3 })),
  sizeClass: orNull(fc.constantFrom(...sizeClasses)),
  plantedYear: orNull(fc.integer({ min: 1700, max: 2026 })),
  heightCm: orNull(fc.integer({ min: 10, max: 5000 })),
  trunkCm: orNull(fc.integer({ min: 1, max: 9999 }).map((mm) => mm / 10)),
  asksSaw: fc.boolean(),
  life: fc.constantFrom(...lives),
  // All within some kilometres, as the trees of an orchard are.
  position: orNull(
    fc.record({
      lat: degreesE7(300_000).map((off) => Math.round((41 + off) * 1e7) / 1e7),
      lon: degreesE7(300_000),
    })
  ),
})
const orchard: fc.Arbitrary<Inventory> = fc
  .record({
    codes: fc.uniqueArray(fc.constantFrom('A', 'b', '=', '12', 'Ñ', "'-", 'N', 'S'), {
      minLength: 3,
      maxLength: 3,
    }),
    names: fc.array(name, { minLength: 3, maxLength: 3 }),
    // A cultivar that is called "-" is none.
    cultivarNames: fc.uniqueArray(
      name.filter((text) => !saysNothing(text)),
      { minLength: 3, maxLength: 3 }
    ),
    habits: fc.array(fc.constantFrom(...habits), { minLength: 3, maxLength: 3 }),
    buds: fc.array(fc.constantFrom(...budSites), { minLength: 3, maxLength: 3 }),
    trees: fc.array(tree, { minLength: 1, maxLength: 30 }),
  })
  .map(({ codes, names, cultivarNames, trees, ...kinds }) => {
    const places = new Set<string>()
    const standing = trees.filter(({ block, row, place, life }) => {
      const key = `${block}|${row}|${place}`
      if (life !== 'removed' && places.has(key)) return false
      if (life !== 'removed') places.add(key)
      return true
    })
    const cultivars = standing.flatMap(({ species, cultivar }) =>
      cultivar === null ? [] : [{ species, cultivar }]
    )
    const kept = [
      ...new Map(cultivars.map((one) => [`${one.species}|${one.cultivar}`, one])).values(),
    ]
    const noOf = ({ species, cultivar }: Pick<Tree, 'species' | 'cultivar'>) =>
      1 + kept.findIndex((one) => one.species === species && one.cultivar === cultivar)
    return {
      blocks: codes.map((code, index) => ({
        no: index + 1,
        code,
        name: names[index] ?? code,
        rowSpacingM: 6,
        treeSpacingM: 5,
        bearingDeg: null,
        firstTree: null,
        taggedEnd: 'low' as const,
      })),
      cultivars: kept.map(({ species, cultivar }, index) => ({
        no: index + 1,
        species,
        name: cultivarNames[cultivar - 1] ?? 'X',
        habit: kinds.habits[cultivar - 1] ?? 'unknown',
        buds: kinds.buds[cultivar - 1] ?? 'unknown',
      })),
      trees: standing.map((one, index) => ({
        ...one,
        no: index + 1,
        cultivar: one.cultivar === null ? null : noOf(one),
      })),
    }
  })

describe.each([
  ['CSV', treesCsv],
  ['GeoJSON', treesGeoJson],
])('an orchard as %s', (_, written) => {
  test('brought in again has nothing to change', () => {
    fc.assert(
      fc.property(orchard, (existing) => {
        const table = tableOf(new TextEncoder().encode(`\uFEFF${written(existing, new Map())}`))
        if ('problems' in table) throw new Error(JSON.stringify(table.problems))
        const matching = matchColumns(table, 'metric')

        const plan = planInventory({ table, matching, thisYear: 2026, existing })

        expect(plan).toMatchObject({
          problems: [],
          changed: [],
          trees: [],
          blocks: [],
          cultivars: [],
        })
        expect(plan.same).toBe(existing.trees.length)
      }),
      { numRuns: 300 }
    )
  })

  test('brought in elsewhere is the same orchard', () => {
    fc.assert(
      fc.property(orchard, (existing) => {
        const known = new Set(existing.trees.map(({ block }) => block))
        const table = tableOf(new TextEncoder().encode(written(existing, new Map())))
        if ('problems' in table) throw new Error(JSON.stringify(table.problems))
        const matching = matchColumns(table, 'metric')

        const plan = planInventory({ table, matching, thisYear: 2026 })

        const byCode = ({ blocks, cultivars, trees }: Inventory) =>
          trees.map(({ no: _, block, cultivar, ...facts }) => ({
            ...facts,
            block: blocks.find(({ no }) => no === block)?.code,
            cultivar: cultivars.find(({ no }) => no === cultivar)?.name ?? null,
          }))
        // A size that was never given is then read from the measures.
        const sizes = byCode(plan).map(({ sizeClass }) => sizeClass)
        const wanted = byCode(existing).map((facts, index) => ({
          ...facts,
          sizeClass: facts.sizeClass ?? sizes[index],
        }))
        // Cultivars that differ in capitals alone are one.
        const lower = (facts: { cultivar: string | null }[]) =>
          facts.map((one) => ({
            ...one,
            cultivar: one.cultivar?.toLowerCase().normalize('NFD').replace(/\p{M}/gu, ''),
          }))
        expect(plan.problems).toEqual([])
        expect(lower(byCode(plan))).toEqual(lower(wanted))
        expect(plan.blocks.length).toBe(known.size)
      }),
      { numRuns: 200 }
    )
  })
})

const one: Inventory = {
  blocks: [
    {
      no: 1,
      code: 'N',
      name: 'North',
      rowSpacingM: 6,
      treeSpacingM: 5,
      bearingDeg: null,
      firstTree: null,
      taggedEnd: 'low',
    },
  ],
  cultivars: [],
  trees: [
    {
      no: 4,
      block: 1,
      row: 1,
      place: 2,
      species: 'fig',
      cultivar: null,
      sizeClass: null,
      plantedYear: 1999,
      heightCm: null,
      trunkCm: 12.5,
      asksSaw: false,
      life: 'standing',
      position: { lat: 41.05, lon: -2.9 },
    },
    {
      no: 5,
      block: 1,
      row: 1,
      place: 3,
      species: 'fig',
      cultivar: null,
      sizeClass: null,
      plantedYear: null,
      heightCm: null,
      trunkCm: null,
      asksSaw: false,
      life: 'standing',
      position: null,
    },
  ],
}

test('GeoJSON is as RFC 7946 has it: longitude first, and no geometry where nobody surveyed', () => {
  const collection = JSON.parse(
    treesGeoJson(one, new Map([[4, 'crack']]))
  ) as FeatureCollection<Point | null>

  expect(collection.type).toBe('FeatureCollection')
  expect(collection.features).toEqual([
    {
      type: 'Feature',
      geometry: { type: 'Point', coordinates: [-2.9, 41.05] },
      properties: {
        block: 'N',
        block_name: 'North',
        row: 1,
        place: 2,
        species: 'fig',
        planted_year: 1999,
        trunk_cm: 12.5,
        asks_saw: 'no',
        life: 'standing',
        hazard: 'crack',
      },
    },
    { type: 'Feature', geometry: null, properties: expect.objectContaining({ place: 3 }) },
  ])
})

test('papaparse reads the same fields out of the table', () => {
  const { data } = Papa.parse<Record<string, string>>(treesCsv(one, new Map([[5, 'nest']])), {
    header: true,
    skipEmptyLines: true,
  })

  expect(
    data.map(({ block, place, trunk_cm, lat, lon, hazard }) => [
      block,
      place,
      trunk_cm,
      lat,
      lon,
      hazard,
    ])
  ).toEqual([
    ['N', '2', '12.5', '41.05', '-2.9', ''],
    ['N', '3', '', '', '', 'nest'],
  ])
})

test('a known hazard goes out by its sign and comes in as the same', () => {
  for (const sign of hazardSigns) {
    const table = tableOf(new TextEncoder().encode(treesCsv(one, new Map([[4, sign]]))))
    if ('problems' in table) throw new Error('a table')
    const { rows } = planInventory({
      table,
      matching: matchColumns(table, 'metric'),
      thisYear: 2026,
    })
    expect(rows.map(({ hazard }) => hazard)).toEqual([{ sign, note: null }, null])
  }
})
