/** A file against an orchard that has trees already. */

import { describe, expect, test } from 'vitest'

import { blockCodes } from '@/lib/domain/orchard/block-codes'
import { distanceM } from '@/lib/domain/orchard/distance'
import { type InventoryPlan, planInventory } from '@/lib/domain/orchard/inventory'
import { inventoryArgs } from '@/lib/domain/orchard/inventory-args'
import { toldCultivars } from '@/lib/domain/orchard/inventory-changes'
import { errorFile } from '@/lib/domain/orchard/inventory-error-file'
import { tableOf } from '@/lib/domain/orchard/inventory-table'
import { hazardIn } from '@/lib/domain/orchard/inventory-words'
import { matchColumns } from '@/lib/domain/orchard/match-columns'
import { positionsOf } from '@/lib/domain/orchard/positions'
import type { Tree } from '@/lib/domain/orchard/types'

const tree: Tree = {
  no: 7,
  block: 1,
  row: 1,
  place: 1,
  species: 'plum',
  cultivar: 1,
  sizeClass: 'medium',
  plantedYear: 1998,
  heightCm: 320,
  trunkCm: 18.5,
  asksSaw: true,
  life: 'standing',
  position: { lat: 41.05, lon: -2.9 },
}
const existing = {
  blocks: [
    {
      no: 1,
      code: 'N',
      name: 'North',
      rowSpacingM: 6,
      treeSpacingM: 5,
      bearingDeg: 0,
      firstTree: null,
      taggedEnd: 'low' as const,
    },
  ],
  cultivars: [
    {
      no: 1,
      species: 'plum' as const,
      name: 'Stanley',
      habit: 'spur' as const,
      buds: 'unknown' as const,
    },
  ],
  trees: [tree, { ...tree, no: 8, place: 2, life: 'removed' as const }],
}

function plan(
  text: string,
  question: Partial<Parameters<typeof planInventory>[0]> = {}
): InventoryPlan {
  const table = tableOf(new TextEncoder().encode(text))
  if ('problems' in table) throw new Error(table.problems[0]?.code)
  return planInventory({
    table,
    matching: matchColumns(table, 'metric'),
    thisYear: 2026,
    existing,
    ...question,
  })
}

describe('against an orchard with trees', () => {
  test('what differs is told tree by tree, and an empty field takes nothing away', () => {
    const { changed, trees, same, problems } = plan(
      'block,row,place,species,cultivar,height_cm,lat,lon\nN,1,1,,,410,,'
    )

    expect({ problems, trees, same }).toEqual({ problems: [], trees: [], same: 0 })
    expect(changed).toMatchObject([
      {
        tree,
        fields: ['heightCm'],
        to: { heightCm: 410, species: 'plum', cultivar: 'Stanley', asksSaw: true },
      },
    ])
  })

  test('another kind of tree is not of the old cultivar, and a new size follows from what was measured', () => {
    const [change] = plan('block,row,place,species,height_cm\nn,1,1,pear,550').changed

    expect(change).toMatchObject({
      fields: ['species', 'cultivar', 'heightCm', 'sizeClass'],
      to: { cultivar: null, sizeClass: 'large' },
    })
  })

  test('where a tree was removed, a new one is a new tree; the numbers of blocks and trees go on', () => {
    const read = plan(
      'block,row,place,species,cultivar\nNorth,1,2,plum,stanley\nSouth,1,1,pear,Bartlett'
    )

    expect(read).toMatchObject({
      problems: [],
      changed: [],
      blocks: [{ no: 2, code: 'S', name: 'South' }],
      cultivars: [{ no: 2, species: 'pear', name: 'Bartlett' }],
      trees: [
        { no: 9, block: 1, place: 2, cultivar: 1 },
        { no: 10, block: 2, place: 1, cultivar: 2 },
      ],
    })
  })

  test('a tree that is gone now is a change, unless another stands there in the same file', () => {
    const header = 'block,row,place,species,life\n'
    const gone = plan(`${header}N,1,1,plum,removed`)
    const replaced = plan(`${header}N,1,1,plum,removed\nN,1,1,plum,standing`)

    expect(gone.changed).toMatchObject([{ tree: { no: 7 }, fields: ['life'] }])
    expect(replaced).toMatchObject({ changed: [], same: 1, trees: [{ life: 'removed' }] })
  })

  test('a tree of which nobody says what it is does not come in, only a gap may', () => {
    const read = plan('block,row,place,height_cm,life\nN,1,1,300,\nN,2,1,300,\nN,2,2,,gap')

    expect(read.problems).toMatchObject([{ line: 3, code: 'missing', column: 'species' }])
  })

  test('changes are sent whole, by the number of the tree', () => {
    const read = plan('block,row,place,species,trunk_cm\nN,1,1,,19.25\nN,3,1,fig,')

    expect(inventoryArgs(read, existing, read.changed)).toEqual({
      blocks: [],
      cultivars: [],
      trees: [{ block: 'N', row: 3, place: 1, species: 'fig' }],
      changes: [
        {
          tree: 7,
          species: 'plum',
          cultivar: 'Stanley',
          size: 'medium',
          planted: 1998,
          heightCm: 320,
          trunkMm: 193,
          asksSaw: true,
          latE7: 410_500_000,
          lonE7: -29_000_000,
        },
      ],
    })
  })
})

test('without a column of places the trees of a row are counted, and without one of blocks all are in one', () => {
  const { trees, blocks } = plan('row,species\n1,plum\n1,plum\n2,pear', {
    existing: { blocks: [], cultivars: [], trees: [] },
    onlyBlock: 'H',
  })

  expect(blocks).toMatchObject([{ code: 'H' }])
  expect(trees.map(({ row, place }) => [row, place])).toEqual([
    [1, 1],
    [1, 2],
    [2, 1],
  ])
})

test('a first tree, a bearing and spacings put every tree of a block in its place', () => {
  const firstTree = { lat: 41, lon: -2 }
  const { trees, blocks } = plan('block,row,place,species\nW,1,1,plum\nW,3,2,plum', {
    blockSettings: { W: { firstTree, bearingDeg: 90, rowSpacingM: 6, treeSpacingM: 4 } },
  })
  const placed = positionsOf(trees, blocks)
  const [here, there] = trees.map(({ no }) => placed.get(no)?.position ?? firstTree)

  expect(here).toEqual(firstTree)
  // Two rows and one tree on: the hypotenuse of 12 m and 4 m.
  expect(distanceM(firstTree, there ?? firstTree)).toBeCloseTo(Math.hypot(12, 4), 3)
})

test('long names of blocks get short codes that differ', () => {
  const names = ['Ladera Norte', 'La Nava', 'Huerta', 'H', 'north side', 'N']
  const codes = blockCodes(names, [{ code: 'N', name: 'North Side' }])

  expect(names.map((name) => codes.get(name)?.code)).toEqual(['LN', 'L', 'HU', 'H', 'N', 'N'])
})

test.each<[string, string, string | null]>([
  ['power line near', 'Hazards', 'power_line'],
  ['sí', 'Línea eléctrica cerca', 'power_line'],
  ['x', 'Lines near', 'power_line'],
  ['no', 'Lines near', null],
  ['', 'Lines near', null],
  ['rama colgando', 'Peligros', 'hanging_limb'],
  ['avispas', 'Peligros', 'nest'],
  ['leaning', 'hazard', 'leaning'],
  ['sinkhole', 'hazard', 'other'],
  ['yes', 'hazard', 'other'],
])('%j under %j is the hazard %j', (text, head, sign) => {
  expect(hazardIn(text, head)).toBe(sign)
})

test('the error file has each wrong row once, with its sentences, and no formula', () => {
  const table = tableOf(new TextEncoder().encode('row,place,species\n0,0,"=1+1"\n1,1,plum\n'))
  if ('problems' in table) throw new Error('a table')
  const { problems } = planInventory({
    table,
    matching: matchColumns(table, 'metric'),
    thisYear: 2026,
  })

  const text = errorFile(table, problems, ({ code }) => code, {
    line: 'Line',
    problem: 'What is wrong',
  })

  expect(text).toBe(
    "Line,What is wrong,row,place,species\r\n2,out_of_range out_of_range not_one_of,0,0,'=1+1\r\n"
  )
})

test('a cultivar of the orchard is told with what the file says of its buds, and what it does not say stays', () => {
  const { rows } = plan(
    'block,row,place,species,cultivar,habit,buds\nN,2,1,plum,Stanley,?,tip\nN,2,2,plum,New,both,base'
  )

  expect(toldCultivars(rows, existing.cultivars)).toEqual([
    { cultivar: existing.cultivars[0], to: { habit: 'spur', buds: 'tip' } },
  ])
})
