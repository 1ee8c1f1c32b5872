/** Where in the file the rows are that the referee names by their index. */

export type WrongRow = { list: string; index: number; field: string; code: string }

/** What is wrong with a block or a cultivar is said at the first line, which is where one looks. */
export function linesOf(
  lines: readonly number[],
  rows: readonly WrongRow[]
): { line: number; field: string; code: string }[] {
  return rows.map(({ list, index, field, code }) => ({
    line: (list === 'trees' ? lines[index] : undefined) ?? 1,
    field,
    code,
  }))
}
