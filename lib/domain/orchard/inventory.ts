/** A file of trees against what the orchard has: read whole, or not at all with every bad row named. */

import { type ChangedTree, changedTrees } from './inventory-changes'
import { type Column, columns } from './inventory-columns'
import { type BlockSettings, inventoryOf } from './inventory-contents'
import { contradictionsIn } from './inventory-contradictions'
import { type Inventory, nothingYet, type PlacedRow, placedRows } from './inventory-placed'
import { type InventoryProblem, problemIn } from './inventory-problem'
import { readRow } from './inventory-row'
import { type Table, tableOf } from './inventory-table'
import { type Match, matchColumns } from './match-columns'
import { type FilledDown, filledDown } from './merged-cells'
import type { PassedOver } from './table-rows'
import type { Species } from './types'

export type { Inventory } from './inventory-placed'

export type PlanQuestion = {
  table: Table
  matching: readonly Match[]
  /** A tree cannot have been planted later. */
  thisYear: number
  existing?: Inventory
  blockSettings?: Readonly<Record<string, BlockSettings>>
  speciesCalled?: ReadonlyMap<string, Species>
  onlyBlock?: string
  codes?: Readonly<Record<string, string>>
  /** Lines that stay outside, because somebody said so. */
  leftOut?: ReadonlySet<number>
}

/** What would come in. With problems nothing does, unless all their lines are left out. */
export type InventoryPlan = Inventory & {
  problems: InventoryProblem[]
  /** Every row that could be read, in the order of the file. */
  rows: PlacedRow[]
  changed: ChangedTree[]
  /** Trees that the orchard has just so. */
  same: number
  filled: FilledDown[]
}

export function planInventory(question: PlanQuestion): InventoryPlan {
  const { table, matching, existing = nothingYet } = question
  const missing = columnProblems(table, matching)
  if (missing.length > 0) {
    return { ...nothingYet, problems: missing, rows: [], changed: [], same: 0, filled: [] }
  }
  const reading = {
    heads: table.heads,
    matching,
    thisYear: question.thisYear,
    speciesCalled: question.speciesCalled ?? new Map(),
    titles: table.titles,
  }
  const { records, filled } = filledDown(table, matching)
  const read = records.map((record) => readRow(record, reading))
  const all = placedRows(
    read.flatMap((result) => ('row' in result ? [result.row] : [])),
    { existing, onlyBlock: question.onlyBlock ?? 'A', codes: question.codes ?? {} }
  )
  const headOf = (column: Column) => headIn(table, matching, column)
  const known = existing.trees.flatMap(({ position }) => position ?? [])
  const problems = [
    ...read.flatMap((result) => ('problems' in result ? result.problems : [])),
    ...withoutSpecies(all, headOf('species')),
    ...contradictionsIn(all, headOf, known),
  ].toSorted((a, b) => a.line - b.line)
  const rows = all.filter(({ line }) => !question.leftOut?.has(line))
  const names = new Map(existing.cultivars.map(({ no, name }) => [no, name]))
  const changed = changedTrees(rows, names)
  const here = rows.filter((row) => row.existing !== null).length
  return {
    ...inventoryOf(rows, existing, question.blockSettings ?? {}),
    problems,
    rows,
    changed,
    same: here - changed.length,
    filled,
  }
}

export type ParsedInventory =
  | ({ state: 'read'; lines: number[]; passedOver: PassedOver[] } & Inventory)
  | { state: 'refused'; problems: InventoryProblem[] }

export type InventoryQuestion = {
  file: Uint8Array
  thisYear: number
  blockSettings?: Readonly<Record<string, BlockSettings>>
}

/** A file for a new orchard, its columns taken for what their headings say. `lines`: of each tree. */
export function parseInventory({ file, ...question }: InventoryQuestion): ParsedInventory {
  const table = tableOf(file)
  if ('problems' in table) return { state: 'refused', problems: table.problems }
  const matching = matchColumns(table, 'metric')
  const { passedOver } = table
  const { problems, rows, blocks, cultivars, trees } = planInventory({
    table,
    matching,
    ...question,
  })
  if (problems.length > 0) return { state: 'refused', problems }
  const lines = rows.map(({ line }) => line)
  return { state: 'read', blocks, cultivars, trees, lines, passedOver }
}

/** As the file calls a column; what it does not have is called by ours. */
function headIn(table: Table, matching: readonly Match[], column: Column): string {
  return table.heads[matching.findIndex((match) => match.column === column)] ?? column
}

function columnProblems({ records }: Table, matching: readonly Match[]): InventoryProblem[] {
  const line = records[0] ? Math.max(1, records[0].line - 1) : 1
  const times = (column: Column) => matching.filter((match) => match.column === column).length
  return columns.flatMap((column) => {
    if (times(column) > 1) return [problemIn({ line, column, code: 'column_twice' })]
    const isNeeded = column === 'row' && times(column) === 0
    return isNeeded ? [problemIn({ line, column, code: 'column_missing' })] : []
  })
}

function withoutSpecies(rows: readonly PlacedRow[], column: string): InventoryProblem[] {
  return rows
    .filter(({ species }) => species === null)
    .map(({ line }) => problemIn({ line, column, code: 'missing' }))
}
