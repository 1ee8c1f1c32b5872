/** From the bytes of a file to rows under known columns. */

import { type CsvRecord, parseCsv } from './csv'
import {
  type Column,
  columns,
  type InventoryProblem,
  optionalColumns,
  type ProblemCode,
} from './inventory-row'

const mostBytes = 10_000_000

export type Table = { header: Column[]; records: CsvRecord[] } | { problems: InventoryProblem[] }

export function tableOf(file: Uint8Array): Table {
  const refused = (code: ProblemCode, line: number, found: string, allowed = ''): Table => ({
    problems: [{ line, column: null, code, found, allowed }],
  })
  if (file.length > mostBytes)
    return refused('file_too_big', 1, String(file.length), String(mostBytes))
  const text = decodeUtf8(file)
  if (text === null) return refused('not_utf8', firstBadLine(file), '')
  const csv = parseCsv(text)
  if ('unclosedQuoteLine' in csv) return refused('quote_not_closed', csv.unclosedQuoteLine, '')
  const [first, ...records] = csv.records
  if (!first || records.length === 0) return refused('no_trees', 1, '')
  const header = headerOf(first)
  return 'problems' in header ? header : { ...header, records }
}

function decodeUtf8(file: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(file)
  } catch {
    return null
  }
}

/** The byte for a line's end is never part of another character, so lines can be tried alone. */
function firstBadLine(file: Uint8Array): number {
  let line = 1
  for (let from = 0; from <= file.length; line++) {
    const newline = file.indexOf(10, from)
    const end = newline === -1 ? file.length : newline
    if (decodeUtf8(file.subarray(from, end)) === null) return line
    from = end + 1
  }
  return line
}

/** Columns may come in any order, and all of them must come, but for the optional ones. */
function headerOf({
  line,
  fields,
}: CsvRecord): { header: Column[] } | { problems: InventoryProblem[] } {
  const found = fields.map((field) => field.toLowerCase())
  const header = found.flatMap((field) => columns.find((column) => column === field) ?? [])
  const problem = (column: string, code: ProblemCode): InventoryProblem => ({
    line,
    column,
    code,
    found: fields.join(','),
    allowed: columns.join(','),
  })
  const problems = [
    ...columns
      .filter((column) => !found.includes(column) && !optionalColumns.includes(column))
      .map((column) => problem(column, 'column_missing')),
    ...fields
      .filter((_, index) => !columns.some((column) => column === found[index]))
      .map((field) => problem(field, 'column_unknown')),
    ...columns
      .filter((column) => found.indexOf(column) !== found.lastIndexOf(column))
      .map((column) => problem(column, 'column_twice')),
  ]
  return problems.length > 0 ? { problems } : { header }
}
