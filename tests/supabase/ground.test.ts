/** Trees, blocks and cultivars after they were brought in: changed, numbered, moved, and never from under somebody. */

import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import {
  type Crew,
  codesOf,
  crewOfThree,
  lastEvent,
  newOrchard,
  type Orchard,
  readyCrew,
} from '../support/orchard'

describe.each(engines)('the ground on $name', ({ open }) => {
  let database: TestDatabase
  beforeAll(async () => {
    database = await open()
  }, 60_000)
  afterAll(() => database.close())

  type Kept = Record<string, unknown>
  const treesOf = async ({ id }: Orchard, ...trees: number[]): Promise<Kept[]> =>
    database.asOwner(
      `select no, block_no, row_no, place, species, cultivar_no, size_class, planted_year, height_cm, trunk_cm::float8, asks_saw,
         life, lat_e7, lon_e7
       from public.trees where orchard_id = $1 and no = any ($2::integer[]) order by no`,
      [id, `{${trees.join(',')}}`]
    )
  const placesOf = async (orchard: Orchard, ...trees: number[]) =>
    (await treesOf(orchard, ...trees)).map(({ no, row_no, place }) => `${no}: ${row_no}·${place}`)

  /** Ann holds tree 3, tree 5 is dealt to Bo, tree 7 has a disease flag and tree 9 a hazard. */
  async function busyCrew(): Promise<Crew> {
    const crew = await readyCrew(database)
    const { ann, bo, lead } = crew
    await ann.must('claim_tree', { tree: 3 })
    await lead.must('deal_trees', { trees: [5], to: [bo.id] })
    await bo.must('flag_tree', { tree: 7, kind: 'disease', sign: 'gum', severity: 'low' })
    const crack = { kind: 'arborist', sign: 'crack', severity: 'high', keepOutM: 0 }
    await bo.must('flag_tree', { tree: 9, ...crack })
    return crew
  }

  describe('setting many at once', () => {
    test('what is named is set, what is null is not known any more, all else stays', async () => {
      const orchard = await newOrchard(database)
      const set = { size: 'medium', planted: 1998, heightCm: null, trunkMm: 185, asksSaw: true }

      await orchard.manager.must('change_trees', { trees: [1, 2], set })

      const kept = { species: 'apple', cultivar_no: 1, life: 'standing' }
      const now = { size_class: 'medium', planted_year: 1998, height_cm: null, trunk_cm: 18.5 }
      expect(await treesOf(orchard, 1, 2, 3)).toMatchObject([
        { ...kept, ...now, asks_saw: true },
        { ...kept, ...now, asks_saw: true },
        { ...kept, size_class: null, height_cm: 220, asks_saw: false },
      ])
      expect(await lastEvent(orchard)).toMatchObject({
        kind: 'trees_changed',
        body: { sheet: 2, count: 2 },
      })
    })

    test('the same command with null where a value was is another one', async () => {
      const { manager } = await newOrchard(database)
      const { command } = await manager.send('change_trees', { trees: [1], set: { size: 'small' } })

      const other = await manager.send('change_trees', { trees: [1], set: { size: null } }, command)

      expect(other.status).toBe(409)
    })

    test('a cultivar belongs to its species: trees of another one are named', async () => {
      const orchard = await newOrchard(database)
      const { manager } = orchard
      await manager.must('write_cultivar', { species: 'plum', name: 'Sweet Bell', habit: 'spur' })

      const refused = await manager.send('change_trees', { trees: [1, 2], set: { cultivar: 2 } })
      await manager.must('change_trees', { trees: [1], set: { species: 'plum', cultivar: 2 } })
      await manager.must('change_trees', { trees: [2], set: { species: 'pear' } })

      expect(refused.body.refused).toEqual([
        { code: 'other_species', detail: { species: 'plum', trees: [1, 2] } },
      ])
      expect(await treesOf(orchard, 1, 2)).toMatchObject([
        { species: 'plum', cultivar_no: 2 },
        { species: 'pear', cultivar_no: null },
      ])
    })

    test('nobody’s tree is removed from under them, and everything in the way is named', async () => {
      const { orchard } = await busyCrew()
      const trees = [3, 5, 7, 9, 11]

      const reply = await orchard.manager.send('change_trees', { trees, set: { life: 'removed' } })

      expect(reply.body.refused).toEqual([
        { code: 'trees_dealt', detail: { trees: [5] } },
        { code: 'trees_flagged', detail: { trees: [7, 9] } },
        { code: 'trees_in_progress', detail: { trees: [3] } },
      ])
      expect((await treesOf(orchard, ...trees)).map(({ life }) => life)).toEqual(
        Array(5).fill('standing')
      )
      await orchard.manager.must('change_trees', { trees: [11], set: { life: 'removed' } })
      await orchard.manager.must('change_trees', { trees, set: { size: 'large' } })
    })

    test('a removed tree comes back to its place only while nobody else stands there', async () => {
      const orchard = await newOrchard(database)
      const { manager } = orchard
      await manager.must('change_trees', { trees: [1, 2], set: { life: 'removed' } })
      await manager.must('add_tree', { block: 1, row: 1, place: 1, species: 'plum' })

      const back = { life: 'standing' }
      const reply = await manager.send('change_trees', { trees: [1, 2], set: back })
      await manager.must('change_trees', { trees: [2], set: back })

      expect(reply.body.refused).toEqual([{ code: 'places_taken', detail: { trees: [1] } }])
      expect(await treesOf(orchard, 1, 2)).toMatchObject([{ life: 'removed' }, back])
    })

    test.each<[string, Record<string, unknown>]>([
      ['nothing', {}],
      ['a word nobody knows', { colour: 'red' }],
      ['a year before any tree', { planted: 1200 }],
      ['half a year', { planted: 1998.5 }],
      ['a cultivar of nowhere', { cultivar: 99 }],
      ['a saw that is a word', { asksSaw: 'yes' }],
      ['a life after life', { life: 'reborn' }],
    ])('malformed: %s', async (_, set) => {
      const { manager } = await newOrchard(database)

      expect((await manager.send('change_trees', { trees: [1], set })).status).toBe(400)
    })
  })

  describe('one tree', () => {
    test('a new one gets the next number, and the gap that it fills is gone', async () => {
      const orchard = await newOrchard(database)
      const { manager } = orchard
      await manager.must('change_trees', { trees: [4], set: { life: 'gap' } })
      await manager.must('move_tree', { tree: 4, latE7: 412_000_000, lonE7: -28_000_000 })

      await manager.must('add_tree', { block: 1, row: 1, place: 4, species: 'pear', size: 'young' })
      const taken = await manager.send('add_tree', { block: 1, row: 1, place: 5, species: 'pear' })

      expect(await treesOf(orchard, 4, 41)).toMatchObject([
        // Where the gap was.
        { no: 41, row_no: 1, place: 4, species: 'pear', lat_e7: 412_000_000, life: 'standing' },
      ])
      expect(taken.body.refused).toEqual([{ code: 'places_taken', detail: { trees: [5] } }])
    })

    test('a gap that once was a tree keeps its record', async () => {
      const { orchard, ann } = await readyCrew(database)
      const { command: claim } = await ann.must('claim_tree', { tree: 4 })
      await ann.must('finish_tree', { tree: 4, claim })
      await orchard.manager.must('change_trees', { trees: [4], set: { life: 'gap' } })

      await orchard.manager.must('add_tree', { block: 1, row: 1, place: 4, species: 'pear' })

      expect(await treesOf(orchard, 4, 41)).toMatchObject([{ life: 'removed' }, { place: 4 }])
    })

    test('it is moved, but not while somebody looks for it or an arborist is to come', async () => {
      const { orchard } = await busyCrew()
      const there = { latE7: 412_000_000, lonE7: -28_000_000 }
      const codes = async (tree: number) =>
        codesOf(await orchard.manager.send('move_tree', { tree, ...there }))

      expect(await codes(3)).toEqual(['trees_in_progress'])
      expect(await codes(5)).toEqual(['trees_dealt'])
      expect(await codes(9)).toEqual(['trees_flagged'])
      expect(await codes(7)).toEqual([])
      expect(await treesOf(orchard, 7)).toMatchObject([{ lat_e7: there.latE7 }])
      await orchard.manager.must('move_tree', { tree: 7 })
      expect(await treesOf(orchard, 7)).toMatchObject([{ lat_e7: null, lon_e7: null }])
    })
  })

  describe('numbers', () => {
    test('trees exchange places, and keep their own numbers', async () => {
      const orchard = await newOrchard(database)
      const numbers = Array.from({ length: 20 }, (_, i) => [i + 1, 1, 20 - i])

      await orchard.manager.must('number_trees', { block: 1, numbers })

      expect(await placesOf(orchard, 1, 2, 20, 21)).toEqual([
        '1: 1·20',
        '2: 1·19',
        '20: 1·1',
        '21: 2·1',
      ])
    })

    test('two trees never share a place, also with one that is not renumbered', async () => {
      const { manager } = await newOrchard(database)
      const refused = async (...numbers: number[][]) =>
        (await manager.send('number_trees', { block: 1, numbers })).body.refused

      expect(await refused([1, 2, 1])).toEqual([{ code: 'places_taken', detail: { trees: [1] } }])
      expect(await refused([1, 7, 1], [2, 7, 1])).toEqual([
        { code: 'places_taken', detail: { trees: [1, 2] } },
      ])
    })

    test('a plate does not change while somebody holds the tree, or goes by it', async () => {
      const { orchard, lead } = await busyCrew()
      const codes = async (tree: number) =>
        codesOf(
          await orchard.manager.send('number_trees', { block: 1, numbers: [[tree, 9, tree]] })
        )

      expect(await codes(3)).toEqual(['trees_in_progress'])
      expect(await codes(5)).toEqual(['trees_dealt'])
      await lead.must('take_back', { trees: [5] })
      expect(await codes(5)).toEqual([])
    })

    test('where the wood of a row goes is forgotten with the row’s number', async () => {
      const { orchard, lead } = await crewOfThree(database)
      await lead.must('direct_brush', { block: 1, rows: [2], goes: 'burn' })
      const number = (row: number) => ({ block: 1, numbers: [[40, row, 40]] })

      await orchard.manager.must('number_trees', number(2))
      const before = await lastEvent(orchard)
      await orchard.manager.must('number_trees', number(3))

      expect(before.body).toEqual({ block: 1, sheet: 2 })
      expect((await lastEvent(orchard)).body).toEqual({ block: 1, sheet: 3, rows: [2] })
      expect(await lead.read('snapshot', { person: lead.id })).toMatchObject({ brushGoes: {} })
    })

    test.each<[string, unknown[]]>([
      ['nothing', []],
      ['half a number', [[1, 1.5, 1]]],
      ['a place below one', [[1, 1, 0]]],
      [
        'a tree twice',
        [
          [1, 5, 1],
          [1, 5, 2],
        ],
      ],
      ['no list', [{ tree: 1 }]],
    ])('malformed: %s', async (_, numbers) => {
      const { manager } = await newOrchard(database)

      expect((await manager.send('number_trees', { block: 1, numbers })).status).toBe(400)
    })
  })

  describe('blocks', () => {
    const facts = { code: 'L', name: 'Long Piece', rowSpacingM: 6.1, treeSpacingM: 5 }

    test('a block is called and lies as a manager says, and no two have the same letters', async () => {
      const orchard = await newOrchard(database)
      const { manager } = orchard
      const mistake = { ...facts, code: 'M', name: 'Mistake' }
      await manager.must('bring_in_trees', { blocks: [mistake], cultivars: [], trees: [] })

      const taken = await manager.send('change_block', { block: 1, ...facts, code: 'M' })
      await manager.must('change_block', { block: 1, ...facts, bearingDeg: 176, taggedEnd: 'high' })

      expect(taken.body.refused).toEqual([{ code: 'code_taken', detail: { block: 2 } }])
      const sheet = JSON.parse(String(await manager.read('tree_sheet', { version: 0 })))
      expect(sheet.blocks[0]).toMatchObject({ ...facts, bearingDeg: 176, taggedEnd: 'high' })
    })

    test('one that was laid out by mistake goes, and its trees’ numbers are not used again', async () => {
      const orchard = await newOrchard(database)
      const { manager } = orchard
      const tree = (place: number) => ({ block: 'L', row: 1, place, species: 'apple' })
      const laid = { blocks: [facts], cultivars: [], trees: [tree(1), tree(2)] }
      await manager.must('bring_in_trees', laid)

      await manager.must('remove_block', { block: 2 })
      await manager.must('bring_in_trees', { ...laid, trees: [tree(1)] })

      expect(await treesOf(orchard, 41, 42, 43)).toMatchObject([{ no: 43 }])
    })

    test('one in which anything is recorded stays whole', async () => {
      const { orchard, bo } = await crewOfThree(database)
      await bo.must('flag_tree', { tree: 7, kind: 'disease', sign: 'gum', severity: 'low' })

      const reply = await orchard.manager.send('remove_block', { block: 1 })

      expect(codesOf(reply)).toEqual(['block_has_history'])
      expect(await treesOf(orchard, 1, 7, 40)).toHaveLength(3)
    })
  })

  describe('cultivars', () => {
    test('one is added, changed and removed, and what is not known stays so', async () => {
      const orchard = await newOrchard(database)
      const { manager } = orchard
      const cultivars = async () =>
        JSON.parse(String(await manager.read('tree_sheet', { version: 0 }))).cultivars
      const bell = { species: 'plum', name: 'Sweet Bell' }

      await manager.must('write_cultivar', bell)
      const added = (await cultivars())[1]
      await manager.must('write_cultivar', { ...bell, cultivar: 2, habit: 'both', buds: 'middle' })
      const changed = (await cultivars())[1]
      await manager.must('remove_cultivar', { cultivar: 2 })

      expect(added).toMatchObject({ no: 2, ...bell, habit: 'unknown' })
      expect(changed).toMatchObject({ no: 2, ...bell, habit: 'both' })
      expect(await cultivars()).toHaveLength(1)
    })

    test('a name is there once in a species, and no tree loses its cultivar', async () => {
      const { manager } = await newOrchard(database)

      const twice = await manager.send('write_cultivar', { species: 'apple', name: ' Old Keeper' })
      const used = await manager.send('remove_cultivar', { cultivar: 1 })
      const other = await manager.send('write_cultivar', {
        cultivar: 1,
        species: 'pear',
        name: 'P',
      })

      expect(twice.body.refused).toEqual([{ code: 'cultivar_known', detail: { cultivar: 1 } }])
      expect(codesOf(used)).toEqual(['cultivar_in_use'])
      expect(other.status).toBe(404)
    })
  })

  describe('not this round', () => {
    const wet = { reason: 'Wet ground' }

    test('trees are left out with the reason, which is read and not told, and come back', async () => {
      const { orchard, lead, ann } = await readyCrew(database)

      await lead.must('leave_out_trees', { trees: [1, 2], ...wet })

      const event = await lastEvent(orchard)
      expect(event.body).toEqual({
        work: [
          [1, 'left_out', null],
          [2, 'left_out', null],
        ],
      })
      expect(JSON.stringify(event)).not.toContain('Wet')
      expect(codesOf(await ann.send('claim_tree', { tree: 1 }))).toEqual(['tree_left_out'])
      expect(await ann.read('tree_notes', { tree: 1 })).toMatchObject([
        { kind: 'left_out', note: 'Wet ground', personId: lead.id },
      ])
      await lead.must('leave_out_trees', { trees: [1, 3] })
      expect((await lastEvent(orchard)).body).toEqual({ work: [[1, 'unpruned', null]] })
      await ann.must('claim_tree', { tree: 1 })
    })

    test('a half done tree is half done again when it comes back', async () => {
      const { orchard, lead, ann } = await readyCrew(database)
      const { command: claim } = await ann.must('claim_tree', { tree: 1 })
      await ann.must('release_tree', { tree: 1, claim, share: 40, note: 'East side left' })

      await lead.must('leave_out_trees', { trees: [1], ...wet })
      await lead.must('leave_out_trees', { trees: [1] })

      expect((await lastEvent(orchard)).body).toEqual({ work: [[1, 'begun', 40]] })
    })

    test('not what somebody holds, waits for, or has finished', async () => {
      const { lead, ann, bo } = await busyCrew()
      const { command: claim } = await bo.must('claim_tree', { tree: 12 })
      await bo.must('finish_tree', { tree: 12, claim })

      const reply = await lead.send('leave_out_trees', { trees: [3, 5, 7, 12], ...wet })

      expect(reply.body.refused).toEqual([
        { code: 'trees_dealt', detail: { trees: [5] } },
        { code: 'trees_in_progress', detail: { trees: [3] } },
        { code: 'trees_done', detail: { trees: [12] } },
      ])
      expect((await ann.send('leave_out_trees', { trees: [20], ...wet })).status).toBe(403)
      await lead.must('leave_out_trees', { trees: [7], ...wet })
      expect((await lead.send('leave_out_trees', { trees: [7], reason: '' })).status).toBe(400)
    })
  })
})
