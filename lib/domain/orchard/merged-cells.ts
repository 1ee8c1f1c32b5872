/** Cells that were merged in a spreadsheet: their value stands in the first, and the others are empty. */

import type { CsvRecord } from './csv'
import type { Column } from './inventory-columns'
import type { Match } from './match-columns'

/** What a person merges down a list of trees. */
const mergedColumns: readonly Column[] = ['block', 'block_name', 'row']

/** How many fields of a column took what stands above them. */
export type FilledDown = { head: string; rows: number }

export function filledDown(
  { heads, records }: { heads: readonly string[]; records: readonly CsvRecord[] },
  matching: readonly Match[]
): { records: readonly CsvRecord[]; filled: FilledDown[] } {
  const merged = matching.flatMap(({ column }, index) => {
    if (column === null || !mergedColumns.includes(column)) return []
    const empty = records.filter(({ fields }) => !fields[index]).length
    // A few empty ones were forgotten and are told; most of them empty is how merged cells come out.
    const isMerged = Boolean(records[0]?.fields[index]) && empty * 2 > records.length
    return isMerged ? [{ index, rows: empty }] : []
  })
  if (merged.length === 0) return { records, filled: [] }
  const last = new Map<number, string>()
  const full = records.map(({ line, fields }) => {
    const filled = [...fields]
    for (const { index } of merged) {
      filled[index] ||= last.get(index) ?? ''
      last.set(index, filled[index])
    }
    return { line, fields: filled }
  })
  return {
    records: full,
    filled: merged.map(({ index, rows }) => ({ head: heads[index] ?? '', rows })),
  }
}
