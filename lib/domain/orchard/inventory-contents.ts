/** The blocks, cultivars and trees that the rows of a file add to an orchard. */

import { groupBy } from '@/lib/util/group-by'

import { shapeOf } from './block-shape'
import type { Inventory, PlacedRow } from './inventory-placed'
import type { Block, Cultivar, Tree } from './types'

/** What the table has no columns for, by what it calls the block. */
export type BlockSettings = Partial<
  Pick<Block, 'rowSpacingM' | 'treeSpacingM' | 'bearingDeg' | 'firstTree' | 'taggedEnd'>
>

/** The row of each tree that is new, with its species known. */
type NewRow = PlacedRow & { species: NonNullable<PlacedRow['species']> }

/** Numbers go on from those that are there, in the order of the rows; shapes not set are read from the positions. */
export function inventoryOf(
  rows: readonly PlacedRow[],
  existing: Inventory,
  settings: Readonly<Record<string, BlockSettings>>
): Inventory {
  const isNew = (row: PlacedRow): row is NewRow => row.existing === null && row.species !== null
  const newRows = rows.filter(isNew)
  const blockNos = new Map(existing.blocks.map(({ code, no }) => [code, no]))
  const newBlocks = numbered(newRows, ({ block }) => block, blockNos)
  const cultivarNos = new Map(
    existing.cultivars.map(({ species, name, no }) => [cultivarKey(species, name), no])
  )
  const named = rows.filter(({ cultivar }) => cultivar !== null)
  const newCultivars = numbered(named, (row) => cultivarKey(row.species, row.cultivar), cultivarNos)

  const lastTree = lastOf(existing.trees)
  const trees = newRows.map((row, index) => ({
    ...factsOf(row),
    no: lastTree + index + 1,
    block: blockNos.get(row.block) ?? 0,
    cultivar: cultivarNos.get(cultivarKey(row.species, row.cultivar)) ?? null,
  }))
  const treesOf = groupBy(trees, (tree) => tree.block)
  const blocks = newBlocks.map(
    ({ no, first: { label, block, blockName } }): Block => ({
      no,
      code: block,
      name: blockName,
      taggedEnd: 'low',
      ...shapeOf(treesOf.get(no) ?? []),
      ...settings[label],
    })
  )
  const cultivars = newCultivars.map(
    ({ no, first: { species, cultivar, habit, buds } }): Cultivar => ({
      no,
      species: species ?? 'other',
      name: cultivar ?? '',
      habit: habit ?? 'unknown',
      buds: buds ?? 'unknown',
    })
  )
  return { blocks, cultivars, trees }
}

function factsOf(row: NewRow): Omit<Tree, 'no' | 'block' | 'cultivar'> {
  const { row: ofRow, place, species, sizeClass, plantedYear, heightCm, trunkCm } = row
  const { asksSaw, life, position } = row
  const measures = { sizeClass, plantedYear, heightCm, trunkCm }
  return { row: ofRow, place, species, ...measures, asksSaw, life, position }
}

/** Gives what has no number yet the next one, into `nos`; each with the first row that has it. */
function numbered<Row>(
  rows: readonly Row[],
  keyOfRow: (row: Row) => string,
  nos: Map<string, number>
): { no: number; first: Row }[] {
  let last = Math.max(0, ...nos.values())
  return rows.flatMap((first) => {
    const key = keyOfRow(first)
    if (nos.has(key)) return []
    last += 1
    nos.set(key, last)
    return [{ no: last, first }]
  })
}

function lastOf(trees: readonly Tree[]): number {
  return trees.reduce((last, { no }) => Math.max(last, no), 0)
}

function cultivarKey(species: string | null, name: string | null): string {
  return JSON.stringify([species, name])
}
