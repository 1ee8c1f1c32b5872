/** Where in the file the rows are that the referee names by their index. */

import { parseCsv } from '@/lib/domain/orchard/csv'

export type WrongRow = { list: string; index: number; field: string; code: string }

/** What is wrong with a block or a cultivar is said at the first line, which is where one looks. */
export function linesOf(
  file: Uint8Array,
  rows: readonly WrongRow[]
): { line: number; field: string; code: string }[] {
  const csv = parseCsv(new TextDecoder().decode(file))
  const [, ...trees] = 'records' in csv ? csv.records : []
  return rows.map(({ list, index, field, code }) => ({
    line: (list === 'trees' ? trees[index]?.line : undefined) ?? 1,
    field,
    code,
  }))
}
