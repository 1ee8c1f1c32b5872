import { describe, expect, test } from 'vitest'

import { faultOf } from '@/lib/data/errors'
import { liveOf } from '@/lib/data/listen'
import { sheetOf } from '@/lib/data/sheet'
import { wireOf } from '@/lib/data/wire'
import { type Command, commandOf } from '@/lib/events/commands'

import { ann, idOf } from '../events/a-state'

describe('faults', () => {
  test.each([
    [0, undefined, 'offline', undefined],
    [400, 'malformed', 'malformed', 'malformed'],
    [401, 'signed_out', 'signed_out', 'signed_out'],
    [403, 'not_admitted', 'not_allowed', 'not_admitted'],
    // A door that somebody else's network or proxy shuts puts nobody out, and no work aside.
    [403, undefined, 'unknown', undefined],
    [404, undefined, 'unknown', undefined],
    [409, 'Key (id)=(1) already exists.', 'unknown', undefined],
    [404, 'no_such_tree', 'malformed', 'no_such_tree'],
    [409, 'command_id_used', 'malformed', 'command_id_used'],
    [413, 'too_large', 'too_large', 'too_large'],
    [429, 'too_many', 'busy', 'too_many'],
    [503, undefined, 'busy', undefined],
    [511, undefined, 'offline', undefined],
    [500, 'Division by zero at line 3', 'unknown', undefined],
  ])('status %i with %s is %s', (status, details, fault, code) => {
    expect(faultOf({ status, details })).toEqual({ fault, code })
  })
})

describe('a command on the wire', () => {
  const whose = { id: idOf('c'), orchardId: idOf('o'), personId: ann }

  test('has the function’s own names, and every argument of it', () => {
    const flag = {
      tree: 7,
      kind: 'arborist',
      sign: 'hanging',
      severity: 'high',
      keepOutM: 12,
    } as const

    expect(wireOf(commandOf('flag_tree', flag, whose) as Command)).toEqual({
      name: 'flag_tree',
      values: {
        p_orchard: idOf('o'),
        p_command: idOf('c'),
        p_person: ann,
        p_tree: 7,
        p_kind: 'arborist',
        p_sign: 'hanging',
        p_severity: 'high',
        p_part: null,
        p_note: null,
        p_keep_out_m: 12,
        p_share: null,
        p_reasons: null,
        p_limb: null,
      },
    })
  })

  test('of somebody who is nobody yet names no orchard', () => {
    const redeem = commandOf('redeem', { code: 'x', name: 'Cy' }, whose) as Command

    expect(wireOf(redeem).values).toEqual({
      p_command: idOf('c'),
      p_code: 'x',
      p_name: 'Cy',
      p_age_band: null,
    })
  })
})

describe('a broadcast', () => {
  const heard = {
    n: 4,
    at: '2027-01-16T09:00:00.000Z',
    command_id: idOf('c'),
    person_id: ann,
    by_person_id: ann,
    kind: 'person_arrived',
    body: {},
    more: false,
    id: 'added by the channel',
  }

  test('is read into an event', () => {
    expect(liveOf(heard)).toEqual({
      n: 4,
      at: heard.at,
      commandId: idOf('c'),
      personId: ann,
      byPersonId: ann,
      kind: 'person_arrived',
      body: {},
      more: false,
    })
  })

  test('of a number alone says that there may be more', () => {
    expect(liveOf({ n: 4, more: true })).toEqual({ n: 4, more: true })
    // What is too long to be told is only a number, too.
    expect(liveOf({ n: 4 })).toEqual({ n: 4, more: true })
  })

  test.each([null, 'garbage', {}, { n: 'four' }])('of garbage is nothing', (payload) => {
    expect(liveOf(payload)).toBeNull()
  })
})

describe('the sheet', () => {
  const columns = {
    no: [1, 2],
    block: [1, 1],
    row: [3, 3],
    place: [1, 2],
    species: [1, 0],
    cultivar: [5, 0],
    size: [3, 0],
    planted: [1988, 0],
    height: [420, 0],
    trunk: [315, 0],
    saw: [1, 0],
    life: [0, 3],
    lat: [12, null],
    lon: [-7, null],
  }
  const packed = {
    v: 4,
    blocks: [
      {
        no: 1,
        code: 'S',
        name: 'South',
        rowSpacingM: 5.5,
        treeSpacingM: 4,
        bearingDeg: 12.5,
        firstLatE7: 410000000,
        firstLonE7: -40000000,
        taggedEnd: 'high',
      },
    ],
    cultivars: [{ no: 5, species: 'plum', name: 'Santa Rosa', habit: 'both' }],
    species: ['apple', 'plum'],
    lat0: 410000000,
    lon0: -40000000,
    trees: columns,
  }

  test('is unpacked into blocks, cultivars and trees', () => {
    const sheet = sheetOf(JSON.stringify(packed))

    expect(sheet?.version).toBe(4)
    expect(sheet?.blocks[0]?.firstTree).toEqual({ lat: 41, lon: -4 })
    // This one is from before it said where the buds sit.
    expect(sheet?.cultivars[0]).toMatchObject({ habit: 'both', buds: 'unknown' })
    expect(sheet?.trees).toEqual([
      {
        no: 1,
        block: 1,
        row: 3,
        place: 1,
        species: 'plum',
        cultivar: 5,
        sizeClass: 'medium',
        plantedYear: 1988,
        heightCm: 420,
        trunkCm: 31.5,
        asksSaw: true,
        life: 'standing',
        position: { lat: 41.0000012, lon: -4.0000007 },
      },
      {
        no: 2,
        block: 1,
        row: 3,
        place: 2,
        species: 'apple',
        cultivar: null,
        sizeClass: null,
        plantedYear: null,
        heightCm: null,
        trunkCm: null,
        asksSaw: false,
        life: 'gap',
        position: null,
      },
    ])
  })

  test('with a species of a newer app shows another tree, not none', () => {
    const sheet = sheetOf(JSON.stringify({ ...packed, species: ['apple', 'medlar'] }))

    expect(sheet?.trees[0]?.species).toBe('other')
  })

  test.each(['', '<html>', '{}', JSON.stringify({ ...packed, trees: [] })])(
    'that is none is none',
    (text) => {
      expect(sheetOf(text)).toBeNull()
    }
  )

  test('of ten thousand trees is unpacked in a moment', () => {
    const many = (from: number) => Array.from({ length: 10_000 }, (_, at) => from + at)
    const same = (value: number) => Array.from({ length: 10_000 }, () => value)
    const trees = Object.fromEntries(Object.keys(columns).map((name) => [name, same(0)]))
    const text = JSON.stringify({ ...packed, trees: { ...trees, no: many(1), place: many(1) } })

    const startedAt = performance.now()
    expect(sheetOf(text)?.trees).toHaveLength(10_000)
    // 15 ms on the machine this was written on; a phone is five times slower.
    expect(performance.now() - startedAt).toBeLessThan(300)
  })
})
