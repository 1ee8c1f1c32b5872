/** Bringing an inventory in: the sheet, the numbers, and every bad row named. */

import { gzipSync } from 'node:zlib'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import {
  codesOf,
  crewOfThree,
  faultOf,
  lastEvent,
  newOrchard,
  type Orchard,
} from '../support/orchard'

const block = { code: 'B', name: 'North Side', rowSpacingM: 6.5, treeSpacingM: 5, bearingDeg: 76 }
const tree = { block: 'B', row: 1, place: 1, species: 'plum' }
const nothing = { blocks: [], cultivars: [], trees: [] }

describe.each(engines)('bringing in on $name', ({ open }) => {
  let database: TestDatabase
  beforeAll(async () => {
    database = await open()
  }, 60_000)
  afterAll(() => database.close())

  async function sheetOf({ manager }: Orchard) {
    return JSON.parse(String(await manager.read('tree_sheet', { version: 0 }))) as {
      v: number
      trees: Record<string, unknown[]>
    } & Record<string, unknown>
  }

  async function treesOf({ id }: Orchard) {
    const [count] = await database.asOwner(
      'select count(*)::integer as count from public.trees where orchard_id = $1',
      [id]
    )
    return count?.count
  }

  test('the sheet says everything, in columns, and what is not known is 0 or null', async () => {
    const orchard = await newOrchard(database)
    const before = await sheetOf(orchard)

    const reply = await orchard.manager.must('bring_in_trees', {
      blocks: [{ ...block, firstLatE7: 410_000_000, firstLonE7: -9_000_000, taggedEnd: 'high' }],
      cultivars: [{ species: 'plum', name: 'Sweet Bell', habit: 'spur', buds: 'middle' }],
      trees: [
        {
          ...tree,
          cultivar: 'Sweet Bell',
          size: 'medium',
          planted: 1998,
          heightCm: 320,
          trunkMm: 185,
          asksSaw: true,
          latE7: 410_000_100,
          lonE7: -9_000_050,
        },
        { ...tree, place: 2, species: 'other', life: 'gap' },
      ],
    })

    expect(before.v).toBe(1)
    expect((await lastEvent(orchard)).body).toEqual({ sheet: 2, count: 2 })
    const sheet = await sheetOf(orchard)
    expect(sheet).toMatchObject({
      v: 2,
      blocks: [
        { no: 1, code: 'A' },
        {
          no: 2,
          code: 'B',
          name: 'North Side',
          rowSpacingM: 6.5,
          treeSpacingM: 5,
          bearingDeg: 76,
          firstLatE7: 410_000_000,
          firstLonE7: -9_000_000,
          taggedEnd: 'high',
        },
      ],
      cultivars: [
        { no: 1, species: 'apple', name: 'Old Keeper', habit: 'unknown', buds: 'unknown' },
        { no: 2, species: 'plum', name: 'Sweet Bell', habit: 'spur', buds: 'middle' },
      ],
      lat0: 410_000_100,
      lon0: -9_000_050,
    })
    const species = sheet.species as string[]
    const last = Object.fromEntries(
      Object.entries(sheet.trees).map(([column, values]) => [column, values.slice(-2)])
    )
    expect(last).toEqual({
      no: [41, 42],
      block: [2, 2],
      row: [1, 1],
      place: [1, 2],
      species: [species.indexOf('plum'), species.indexOf('other')],
      cultivar: [2, 0],
      size: [3, 0],
      planted: [1998, 0],
      height: [320, 0],
      trunk: [185, 0],
      saw: [1, 0],
      life: [0, 3],
      lat: [0, null],
      lon: [0, null],
    })
    expect(reply.body.n).toBeGreaterThan(0)
  })

  test('the same command again brings nothing in twice; another file under its id is an error', async () => {
    const orchard = await newOrchard(database)
    const args = { ...nothing, blocks: [block], trees: [tree] }
    const first = await orchard.manager.send('bring_in_trees', args)

    const again = await orchard.manager.send('bring_in_trees', args, first.command)
    const other = await orchard.manager.send('bring_in_trees', nothing, first.command)

    expect(again.body).toEqual(first.body)
    expect(faultOf(other)).toBe('409 command_id_used')
    expect(await treesOf(orchard)).toBe(41)
  })

  test('numbers are never used again, also not of a tree that is gone', async () => {
    const orchard = await newOrchard(database)
    await database.asOwner('delete from public.trees where orchard_id = $1 and no = 40', [
      orchard.id,
    ])

    await orchard.manager.must('bring_in_trees', { ...nothing, blocks: [block], trees: [tree] })

    expect((await sheetOf(orchard)).trees.no?.slice(-2)).toEqual([39, 41])
  })

  test('one bad row keeps all of them out, and each is named', async () => {
    const orchard = await newOrchard(database)

    const reply = await orchard.manager.send('bring_in_trees', {
      blocks: [block, { ...block, name: '' }],
      cultivars: [{ species: 'plum', name: 'X', habit: 'sideways', buds: 'all over' }],
      trees: [
        tree,
        { ...tree, place: 2, block: 'Z' },
        { ...tree, place: 3, species: 'stone' },
        { ...tree, place: 4, cultivar: 'Unheard Of' },
        { ...tree, place: 5, latE7: 1 },
        { ...tree, place: 1e9 },
        { ...tree, place: 6, heightCm: 1.5, planted: '1998' },
        { ...tree, block: 'A' },
        'not a tree',
        { ...tree, place: 7 },
        { ...tree, place: 7 },
      ],
    })

    const [refusal] = reply.body.refused ?? []
    expect(refusal?.code).toBe('rows_wrong')
    expect(rows(refusal?.detail?.rows)).toEqual([
      'blocks 0 code twice',
      'blocks 1 code twice',
      'blocks 1 name out_of_range',
      'cultivars 0 buds not_one_of',
      'cultivars 0 habit not_one_of',
      'trees 1 block not_one_of',
      'trees 2 species not_one_of',
      'trees 3 cultivar not_one_of',
      'trees 4 latE7 position_half',
      'trees 5 place out_of_range',
      'trees 6 heightCm out_of_range',
      'trees 6 planted out_of_range',
      'trees 7 place place_taken',
      'trees 8 block not_one_of',
      'trees 8 place out_of_range',
      'trees 8 row out_of_range',
      'trees 8 species not_one_of',
      'trees 9 place place_taken',
      'trees 10 place place_taken',
    ])
    expect(await treesOf(orchard)).toBe(40)
    expect((await sheetOf(orchard)).v).toBe(1)
  })

  test('what is said of a tree that is there is what is known of it from then on', async () => {
    const orchard = await newOrchard(database)
    const before = await sheetOf(orchard)
    const changes = [
      {
        tree: 40,
        species: 'plum',
        cultivar: 'Sweet Bell',
        size: 'large',
        planted: 1999,
        heightCm: 510,
        trunkMm: 305,
        asksSaw: true,
        life: 'dead',
        latE7: 5,
        lonE7: 6,
      },
      { tree: 39, species: 'fig' },
    ]

    const cultivars = [{ species: 'plum', name: 'Sweet Bell' }]
    await orchard.manager.must('bring_in_trees', { ...nothing, cultivars, changes })

    expect((await lastEvent(orchard)).body).toEqual({ sheet: 2, count: 0, changed: 2 })
    const sheet = await sheetOf(orchard)
    const last = (column: string) => sheet.trees[column]?.slice(-2)
    expect(sheet.trees.no).toEqual(before.trees.no)
    expect(
      ['row', 'place', 'cultivar', 'size', 'planted', 'height', 'trunk', 'saw', 'life'].map(last)
    ).toEqual([
      before.trees.row?.slice(-2),
      before.trees.place?.slice(-2),
      [0, 2],
      [0, 4],
      [0, 1999],
      [0, 510],
      [0, 305],
      [0, 1],
      [0, 1],
    ])
    expect(last('lat')).toEqual([null, 0])
  })

  test('one wrong change keeps everything as it is, and a tree that somebody has stays', async () => {
    const { orchard, lead, ann } = await crewOfThree(database)
    await lead.must('deal_trees', { trees: [5], to: [ann.id] })
    const gum = { kind: 'disease', sign: 'gum', severity: 'low' }
    await ann.must('flag_tree', { tree: 8, ...gum })
    const before = await sheetOf(orchard)

    const reply = await orchard.manager.send('bring_in_trees', {
      ...nothing,
      blocks: [block],
      trees: [tree],
      changes: [
        { tree: 1, species: 'pear' },
        { tree: 999, species: 'pear' },
        { tree: 2, species: 'stone' },
        { tree: 3, species: 'pear', cultivar: 'Unheard Of' },
        { tree: 4, species: 'pear', latE7: 1 },
        { tree: 5, species: 'pear', life: 'removed' },
        { tree: 6, species: 'pear', life: 'asleep' },
        { tree: 7, species: 'pear' },
        { tree: 7, species: 'apple' },
        'not a change',
        { tree: 8, species: 'pear', life: 'gap' },
      ],
    })

    expect(rows(reply.body.refused?.[0]?.detail?.rows)).toEqual([
      'changes 1 tree not_one_of',
      'changes 2 species not_one_of',
      'changes 3 cultivar not_one_of',
      'changes 4 latE7 position_half',
      'changes 5 life in_use',
      'changes 6 life not_one_of',
      'changes 7 tree twice',
      'changes 8 tree twice',
      'changes 9 species not_one_of',
      'changes 9 tree not_one_of',
      'changes 10 life in_use',
    ])
    expect(await sheetOf(orchard)).toEqual(before)
  })

  test('a removed tree frees its place', async () => {
    const orchard = await newOrchard(database)
    const trees = [{ ...tree, life: 'removed' }, tree, { ...tree, life: 'removed' }]
    const reply = await orchard.manager.send('bring_in_trees', {
      ...nothing,
      blocks: [block],
      trees,
    })
    expect(codesOf(reply)).toEqual([])
  })

  test('only a manager brings trees in', async () => {
    const { orchard, lead } = await crewOfThree(database)
    expect(faultOf(await lead.send('bring_in_trees', nothing))).toBe('403 not_allowed')
    expect(await treesOf(orchard)).toBe(40)
  })

  test.each([{ trees: {} }, { blocks: null }, { cultivars: 'none' }, { changes: null }])(
    '%j is malformed',
    async (wrong) => {
      const orchard = await newOrchard(database)
      const reply = await orchard.manager.send('bring_in_trees', { ...nothing, ...wrong })
      expect(faultOf(reply)).toBe('400 malformed')
    }
  )

  test('ten thousand surveyed trees are at most 120 kB gzipped, and more than 100,000 are too many', async () => {
    const orchard = await newOrchard(database)
    // Rows lean and trees stand up to half a metre off, so that positions do not compress away.
    const trees = Array.from({ length: 10_000 }, (_, index) => {
      const [row, place] = [1 + Math.floor(index / 100), 1 + (index % 100)]
      return {
        ...tree,
        row,
        place,
        species: ['apple', 'plum', 'cherry', 'pear'][row % 4],
        planted: 1970 + (row % 40),
        heightCm: 180 + ((index * 37) % 300),
        trunkMm: 60 + ((index * 53) % 240),
        latE7: 410_000_000 + row * 583 + ((index * 7919) % 90),
        lonE7: -9_000_000 + place * 598 + ((index * 104_729) % 90),
      }
    })

    const reply = await orchard.manager.send('bring_in_trees', {
      ...nothing,
      blocks: [block],
      trees,
    })
    expect(codesOf(reply)).toEqual([])
    const [{ body } = { body: '' }] = await database.asOwner<{ body: string }>(
      'select body from public.tree_sheets where orchard_id = $1',
      [orchard.id]
    )
    expect(gzipSync(body).length).toBeLessThan(120_000)

    const many = Array.from({ length: 100_001 }, () => 1)
    expect(faultOf(await orchard.manager.send('bring_in_trees', { ...nothing, trees: many }))).toBe(
      '413 too_large'
    )
  }, 60_000)
})

function rows(detail: unknown): string[] {
  const wrong = detail as { list: string; index: number; field: string; code: string }[]
  return wrong.map(({ list, index, field, code }) => `${list} ${index} ${field} ${code}`)
}
