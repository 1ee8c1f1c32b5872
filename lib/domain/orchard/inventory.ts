/** An orchard's inventory as a table: read whole, or not at all with every bad row named. */

import { type BlockSettings, type Inventory, inventoryOf } from './inventory-contents'
import { contradictionsIn } from './inventory-contradictions'
import { type InventoryProblem, readRow } from './inventory-row'
import { tableOf } from './inventory-table'

export type ParsedInventory =
  | ({ state: 'read' } & Inventory)
  | { state: 'refused'; problems: InventoryProblem[] }

export type InventoryQuestion = {
  file: Uint8Array
  /** A tree cannot have been planted later. */
  thisYear: number
  blockSettings?: Readonly<Record<string, BlockSettings>>
}

export function parseInventory({
  file,
  thisYear,
  blockSettings = {},
}: InventoryQuestion): ParsedInventory {
  const table = tableOf(file)
  if ('problems' in table) return { state: 'refused', problems: table.problems }

  const read = table.records.map((record) => readRow(record, table.header, thisYear))
  const rows = read.flatMap((result) => ('row' in result ? [result.row] : []))
  const problems = [
    ...read.flatMap((result) => ('problems' in result ? result.problems : [])),
    ...contradictionsIn(rows),
  ].toSorted((a, b) => a.line - b.line)
  if (problems.length > 0) return { state: 'refused', problems }
  return { state: 'read', ...inventoryOf(rows, blockSettings) }
}
