/** What a manager said of a file, and what comes of it. */

import { describe, expect, test } from 'vitest'

import { noPlace, nothingSaid, type Said } from '@/components/bring-in/bring-in-draft'
import { flagOf, hazardsHere } from '@/components/bring-in/hazards-here'
import { hazardsIn } from '@/components/bring-in/hazards-in'
import { readingOf } from '@/components/bring-in/reading'
import { placeValue, settingsOf } from '@/components/bring-in/typed-place'
import { whyNot } from '@/components/bring-in/why-not'
import { tableOfText } from '@/lib/domain/orchard/inventory-table'
import type { Block, Tree } from '@/lib/domain/orchard/types'
import type { View } from '@/lib/hooks'

const block: Block = {
  no: 1,
  code: 'N',
  name: 'North',
  rowSpacingM: 6,
  treeSpacingM: 5,
  bearingDeg: 0,
  firstTree: null,
  taggedEnd: 'low',
}
const tree: Tree = {
  no: 1,
  block: 1,
  row: 1,
  place: 1,
  species: 'plum',
  cultivar: null,
  sizeClass: null,
  plantedYear: null,
  heightCm: null,
  trunkCm: null,
  asksSaw: false,
  life: 'standing',
  position: null,
}
const existing = { blocks: [block], cultivars: [], trees: [tree] }

function read(text: string, change: Partial<Said> = {}) {
  const table = tableOfText(text, 'utf-8')
  if ('problems' in table) throw new Error(table.problems[0]?.code)
  const said = { ...nothingSaid, ...change }
  const reading = readingOf({ table, said, existing, thisYear: 2026, units: 'metric' })
  return { ...reading, lacks: whyNot(reading, said.ticked.length, said)?.code ?? null }
}

describe('rows that are wrong', () => {
  const text = 'block,row,place,species\nN,2,1,plum\nN,2,x,plum\nN,2,1,pear\nN,2,3,fig'

  test('keep all others out until somebody leaves just them out', () => {
    const before = read(text)
    const after = read(text, { leftOut: [...before.wrongLines] })

    expect(before).toMatchObject({ wrongLines: [3, 4], isLeftOut: false, lacks: 'whyWrong' })
    expect(after).toMatchObject({ wrongLines: [3, 4], isLeftOut: true, lacks: null })
    expect(after.trees.map(({ species }) => species)).toEqual(['plum', 'fig'])
  })

  test('are asked for again when one more is wrong', () => {
    const { isLeftOut, lacks } = read(`${text}\nN,2,y,fig`, { leftOut: [3, 4] })

    expect({ isLeftOut, lacks }).toEqual({ isLeftOut: false, lacks: 'whyWrong' })
  })
})

describe('a file', () => {
  test('with an unknown kind of tree asks once, and not row by row', () => {
    const text = 'block,row,place,species\nN,2,1,níspero\nN,2,2,Níspero\nN,2,3,plum'

    const asked = read(text)
    const answered = read(text, { species: { nispero: 'other' } })

    expect(asked).toMatchObject({ strangeSpecies: ['níspero'], lacks: 'whySpecies', problems: [] })
    expect(answered).toMatchObject({ strangeSpecies: ['níspero'], lacks: null })
    expect(answered.trees.map(({ species }) => species)).toEqual(['other', 'other', 'plum'])
  })

  test('may give two blocks the same letters only until somebody says otherwise', () => {
    const text = 'block,row,place,species\nLadera Norte,1,1,plum\nHuerta,1,1,plum'

    expect(read(text).newBlocks.map(({ block: { code } }) => code)).toEqual(['LN', 'H'])
    expect(read(text, { codes: { Huerta: 'LN' } })).toMatchObject({ lacks: 'whyBlocks' })
    expect(read(text, { codes: { Huerta: 'N' } })).toMatchObject({ lacks: 'whyBlocks' })
    expect(read(text, { codes: { Huerta: 'HU' } })).toMatchObject({ lacks: null })
  })

  test('puts a block where its first tree is said to be, once all of it is said', () => {
    const text = 'block,row,place,species\nW,1,1,plum\nW,1,2,plum'
    const half = { ...noPlace, isFromFirstTree: true, lat: '41,5', lon: '2 O', bearing: '90' }
    const whole = { ...half, rowSpacing: '6', treeSpacing: '4,5' }

    expect(read(text, { places: { W: half } })).toMatchObject({ lacks: 'whyBlocks' })
    expect(read(text, { places: { W: whole } })).toMatchObject({
      lacks: null,
      blocks: [
        { bearingDeg: 90, rowSpacingM: 6, treeSpacingM: 4.5, firstTree: { lat: 41.5, lon: -2 } },
      ],
    })
  })

  test('with nothing new comes in only where something is ticked', () => {
    const header = 'block,row,place,species,height_cm\n'

    expect(read(`${header}N,1,1,plum,`).lacks).toBe('whyNothing')
    expect(read(`${header}N,1,1,plum,300`).lacks).toBe('whyTick')
    expect(read(`${header}N,1,1,plum,300`, { ticked: [1] }).lacks).toBe(null)
    expect(read(`${header}N,1,1,plum,9`).lacks).toBe('whyWrong')
  })
})

test('feet are kept as metres, and what the referee would refuse is refused here', () => {
  const typed = { ...noPlace, isFromFirstTree: true, lat: '41', lon: '-2', bearing: '0' }

  expect(settingsOf({ ...typed, rowSpacing: '20', treeSpacing: '15' }, 'us')).toMatchObject({
    rowSpacingM: 6.1,
    treeSpacingM: 4.57,
  })
  expect(settingsOf(noPlace, 'metric')).toEqual({})
  expect(placeValue('bearing', '360', 'metric')).toBe(null)
  for (const [least, most, units] of [
    ['0.5', '30', 'metric'],
    ['1.7', '98', 'us'],
  ] as const) {
    for (const spacing of [least, most]) {
      const settings = settingsOf({ ...typed, rowSpacing: spacing, treeSpacing: spacing }, units)
      expect(settings?.rowSpacingM).toBeGreaterThanOrEqual(0.5)
      expect(settings?.rowSpacingM).toBeLessThanOrEqual(30)
    }
  }
})

test('a hazard is proposed for a tree that stands here and is closed for none yet', () => {
  const { rows } = read(
    'block,row,place,species,life,hazard\nN,1,1,,,power line\nN,1,2,plum,,nest\nN,1,3,plum,gap,crack'
  )
  const hazards = hazardsIn(rows)
  const trees = [tree, { ...tree, no: 2, place: 2 }]
  const sheet = { version: 1, ...existing, trees }
  const view = (flags: object) => ({ sheet, state: { flags } }) as unknown as View

  expect(hazards.map(({ place }) => place)).toEqual([1, 2])
  expect(hazardsHere(view({}), hazards).map(flagOf)).toEqual([
    { tree: 1, kind: 'arborist', sign: 'power_line', severity: 'danger_now', note: 'power line' },
    { tree: 2, kind: 'arborist', sign: 'nest', severity: 'high', note: null },
  ])
  const closed = view({ f1: { kind: 'arborist', tree: 1 }, f2: { kind: 'disease', tree: 2 } })
  expect(hazardsHere(closed, hazards).map(({ tree: no }) => no)).toEqual([2])
})
