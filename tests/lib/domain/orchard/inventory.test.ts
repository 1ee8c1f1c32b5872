import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { distanceM } from '@/lib/domain/orchard/distance'
import { type ParsedInventory, parseInventory } from '@/lib/domain/orchard/inventory'
import { demoBlockSettings } from '@/supabase/seed/demo-blocks'
import { demoInventory } from '@/supabase/seed/make-orchard'

const columns = [
  'block',
  'block_name',
  'row',
  'place',
  'species',
  'cultivar',
  'habit',
  'planted_year',
  'trunk_cm',
  'height_cm',
  'asks_saw',
  'life',
  'lat',
  'lon',
]
const header = columns.join(',')
const good = 'S,South,1,1,plum,Stanley,spur,2001,20,310,no,standing,47.2,0.5'

function read(...lines: string[]): ParsedInventory {
  return parseInventory({ file: bytes([header, ...lines].join('\n')), thisYear: 2026 })
}

function bytes(text: string): Uint8Array {
  return new TextEncoder().encode(text)
}

function problemsIn(answer: ParsedInventory) {
  return answer.state === 'refused' ? answer.problems : []
}

describe('an inventory', () => {
  test('becomes blocks, cultivars and trees, numbered in order', () => {
    expect(read(good, 'S,South,1,2,,,,,,,,gap,,', 'N,North,7,3,apple,,,,,,yes,,,')).toEqual({
      state: 'read',
      lines: [2, 3, 4],
      passedOver: [],
      blocks: [
        expect.objectContaining({ no: 1, code: 'S', name: 'South', taggedEnd: 'low' }),
        expect.objectContaining({ no: 2, code: 'N', name: 'North', firstTree: null }),
      ],
      cultivars: [{ no: 1, species: 'plum', name: 'Stanley', habit: 'spur', buds: 'unknown' }],
      trees: [
        {
          no: 1,
          block: 1,
          row: 1,
          place: 1,
          species: 'plum',
          cultivar: 1,
          sizeClass: 'medium',
          plantedYear: 2001,
          heightCm: 310,
          trunkCm: 20,
          asksSaw: false,
          life: 'standing',
          position: { lat: 47.2, lon: 0.5 },
        },
        expect.objectContaining({ no: 2, species: 'other', life: 'gap', position: null }),
        expect.objectContaining({
          no: 3,
          block: 2,
          row: 7,
          place: 3,
          asksSaw: true,
          sizeClass: null,
        }),
      ],
    })
  })

  test('may have its columns in any order, Windows line ends and a byte order mark', () => {
    const shuffled = columns.toReversed().join(',')
    const row = good.split(',').toReversed().join(',')

    const answer = parseInventory({
      file: bytes(`\uFEFF${shuffled}\r\n${row}\r\n`),
      thisYear: 2026,
    })

    expect(answer).toMatchObject({ state: 'read', trees: [{ species: 'plum', trunkCm: 20 }] })
  })

  test('may name a removed tree and the one planted in its place', () => {
    const removed = good.replace('standing', 'removed')

    expect(read(removed, good, removed).state).toBe('read')
  })

  test.each<[string, string, string | null, string]>([
    ['a block without a code', good.replace('S,', ','), 'block', 'missing'],
    [
      'a name too long for a block',
      good.replace('S,', `${'South '.repeat(11)},`),
      'block',
      'too_long',
    ],
    ['a row that is no number', good.replace(',1,1,', ',one,1,'), 'row', 'not_a_whole_number'],
    ['place 0', good.replace(',1,1,', ',1,0,'), 'place', 'out_of_range'],
    ['no species at a tree', good.replace('plum', ''), 'species', 'missing'],
    ['a species nobody knows', good.replace('plum', 'plumb'), 'species', 'not_one_of'],
    ['a habit nobody knows', good.replace('spur', 'tips'), 'habit', 'not_one_of'],
    ['a tree from the future', good.replace('2001', '2027'), 'planted_year', 'out_of_range'],
    ['a trunk in thousands', good.replace(',20,', ',"1,200.5",'), 'trunk_cm', 'not_a_number'],
    ['a height in metres', good.replace('310', '3.1'), 'height_cm', 'out_of_range'],
    ['a saw asked for maybe', good.replace(',no,', ',maybe,'), 'asks_saw', 'not_one_of'],
    ['a life nobody knows', good.replace('standing', 'asleep'), 'life', 'not_one_of'],
    ['half a position', good.replace(',0.5', ','), 'lon', 'position_half'],
    ['a latitude off the earth', good.replace('47.2', '147.2'), 'lat', 'out_of_range'],
    [
      'a hidden character',
      good.replace('Stanley', 'Stan\u0000ley'),
      'cultivar',
      'control_character',
    ],
    ['a field too few', good.replace(',0.5', ''), null, 'fields_miscounted'],
  ])('%s is refused with its line and column', (_, row, column, code) => {
    expect(problemsIn(read(good.replace(',1,1,', ',9,9,'), row))).toContainEqual(
      expect.objectContaining({ line: 3, column, code })
    )
  })

  test('names every bad row at once and brings in nothing', () => {
    const answer = read('S,South,x,y,plumb,,,,,,,,,', good, 'S,South,1,2,apple,,,,,,,,1,')

    expect(answer).not.toHaveProperty('trees')
    expect(problemsIn(answer).map(({ line, column }) => [line, column])).toEqual([
      [2, 'row'],
      [2, 'place'],
      [2, 'species'],
      [4, 'lon'],
    ])
  })

  test('rows that contradict each other are refused with the line they quarrel with', () => {
    const answer = read(
      good,
      good.replace('South', 'Southern').replace('spur', 'both'),
      good.replace(',1,1,', ',1,2,').replace('47.2,0.5', '0.5,47.2'),
      good.replace(',1,1,', ',1,3,')
    )

    expect(problemsIn(answer)).toEqual([
      { line: 3, column: 'place', code: 'place_taken', found: 'S 1·1', allowed: '2' },
      {
        line: 3,
        column: 'block_name',
        code: 'block_name_differs',
        found: 'Southern',
        allowed: '2',
      },
      { line: 3, column: 'habit', code: 'habit_differs', found: 'both', allowed: '2' },
      expect.objectContaining({ line: 4, column: 'lat', code: 'position_far_away' }),
    ])
  })

  test('may say where the fruit buds sit, once for each cultivar', () => {
    const file = (second: string) =>
      bytes(
        [`${header},buds`, `${good},tip`, `${good.replace(',1,1,', ',1,2,')},${second}`].join('\n')
      )

    const answer = parseInventory({ file: file('tip'), thisYear: 2026 })
    const differing = parseInventory({ file: file('base'), thisYear: 2026 })

    expect(answer).toMatchObject({ cultivars: [{ name: 'Stanley', buds: 'tip' }] })
    expect(problemsIn(differing)).toEqual([
      { line: 3, column: 'buds', code: 'habit_differs', found: 'base', allowed: '2' },
    ])
  })

  test.each<[string, Uint8Array, { line: number; code: string; column: string | null }]>([
    ['nothing', bytes(''), { line: 1, code: 'no_trees', column: null }],
    ['a header alone', bytes(header), { line: 1, code: 'no_trees', column: null }],
    [
      'a table without rows of trees',
      bytes('block,place,species\nS,1,plum'),
      { line: 1, code: 'column_missing', column: 'row' },
    ],
    [
      'a quote left open',
      bytes(`${header}\n${good}\n"S,South`),
      { line: 3, code: 'quote_not_closed', column: null },
    ],
    ['a file of zeros', new Uint8Array(1000), { line: 1, code: 'not_text', column: null }],
    [
      'what a spreadsheet program keeps for itself',
      new Uint8Array([0x50, 0x4b, 0x03, 0x04, 20, 0]),
      { line: 1, code: 'is_spreadsheet', column: null },
    ],
    [
      'a file of fifty megabytes',
      new Uint8Array(50_000_001),
      { line: 1, code: 'file_too_big', column: null },
    ],
    [
      'ten times ten thousand rows and one',
      bytes(`row,place,species\n${'1,1,plum\n'.repeat(100_001)}`),
      { line: 1, code: 'too_many_rows', column: null },
    ],
  ])('%s is refused', (_, file, problem) => {
    expect(problemsIn(parseInventory({ file, thisYear: 2026 }))).toContainEqual(
      expect.objectContaining(problem)
    )
  })

  test('whatever comes in, the answer is one of the two and never a crash', () => {
    const text = fc.string({ unit: fc.constantFrom(...'S,1"\n\r é'), maxLength: 60 })

    fc.assert(
      fc.property(text, (noise) => {
        expect(['read', 'refused']).toContain(read(good, noise).state)
      })
    )
  })
})

describe('the demo orchard', () => {
  const file = readFileSync(new URL('../../../../supabase/seed/orchard.csv', import.meta.url))
  const demo = parseInventory({ file, thisYear: 2026, blockSettings: demoBlockSettings })

  test('is what its script makes', () => {
    expect(file.toString()).toBe(demoInventory())
  })

  test('has about 400 trees in three blocks, one of them without positions', () => {
    if (demo.state === 'refused') throw new Error(JSON.stringify(demo.problems))

    expect(demo.trees.length).toBeGreaterThan(380)
    expect(demo.trees.length).toBeLessThan(420)
    expect(demo.blocks.map(({ code }) => code)).toEqual(['L', 'W', 'S'])
    for (const tree of demo.trees) expect(tree.position === null).toBe(tree.block === 3)
    expect(new Set(demo.trees.map((tree) => tree.life)).size).toBe(4)
  })

  test('is an orchard one can walk through: no two trees closer than two metres', () => {
    if (demo.state === 'refused') throw new Error('read above')
    const places = demo.trees.flatMap((tree) => tree.position ?? [])

    const nearestM = places.map((here) =>
      Math.min(...places.filter((there) => there !== here).map((there) => distanceM(here, there)))
    )
    expect(Math.min(...nearestM)).toBeGreaterThan(2)
  })
})
