/** The blocks, cultivars and trees that the rows of an inventory amount to. */

import { groupBy } from '@/lib/util/group-by'

import { shapeOf } from './block-shape'
import type { InventoryRow } from './inventory-row'
import { sizeClassOf } from './size-class'
import type { Block, Cultivar, Tree } from './types'

export type Inventory = { blocks: Block[]; cultivars: Cultivar[]; trees: Tree[] }

/** What the table has no columns for. */
export type BlockSettings = Partial<
  Pick<Block, 'rowSpacingM' | 'treeSpacingM' | 'bearingDeg' | 'firstTree' | 'taggedEnd'>
>

/** Numbers are given in the order of the rows; shapes not set are read from the positions. */
export function inventoryOf(
  rows: readonly InventoryRow[],
  settings: Readonly<Record<string, BlockSettings>>
): Inventory {
  const cultivarRows = numbered(rows, cultivarKey)
  const cultivarNos = new Map(cultivarRows.map(([key, no]) => [key, no]))
  const blockRows = numbered(rows, ({ block }) => block)
  const blockNos = new Map(blockRows.map(([code, no]) => [code, no]))
  const trees = rows.map((row, index): Tree => {
    const {
      row: treeRow,
      place,
      species,
      plantedYear,
      heightCm,
      trunkCm,
      asksSaw,
      life,
      position,
    } = row
    return {
      no: index + 1,
      block: blockNos.get(row.block) ?? 0,
      row: treeRow,
      place,
      species,
      cultivar: cultivarNos.get(cultivarKey(row) ?? '') ?? null,
      sizeClass: sizeClassOf(row),
      plantedYear,
      heightCm,
      trunkCm,
      asksSaw,
      life,
      position,
    }
  })
  const treesOf = groupBy(trees, (tree) => tree.block)
  const blocks = blockRows.map(
    ([code, no, { blockName }]): Block => ({
      no,
      code,
      name: blockName,
      taggedEnd: 'low',
      ...shapeOf(treesOf.get(no) ?? []),
      ...settings[code],
    })
  )
  const cultivars = cultivarRows.map(
    ([, no, { species, cultivar, habit, buds }]): Cultivar => ({
      no,
      species,
      name: cultivar ?? '',
      habit,
      buds,
    })
  )
  return { blocks, cultivars, trees }
}

/** Each key once, with its number and the first row that has it. */
function numbered(
  rows: readonly InventoryRow[],
  keyOf: (row: InventoryRow) => string | null
): [key: string, no: number, first: InventoryRow][] {
  const firsts = new Map<string, InventoryRow>()
  for (const row of rows) {
    const key = keyOf(row)
    if (key !== null && !firsts.has(key)) firsts.set(key, row)
  }
  return [...firsts].map(([key, first], index) => [key, index + 1, first])
}

function cultivarKey({ species, cultivar }: InventoryRow): string | null {
  return cultivar && JSON.stringify([species, cultivar])
}
