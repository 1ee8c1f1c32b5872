/** From the bytes of a file to a table of fields under headings, whatever program wrote it. */

import { type CsvRecord, parseCsv, type Separator, separatorOf, withoutApostrophes } from './csv'
import { type Encoding, textOfFile } from './file-text'
import { geoJsonTable } from './geojson'
import { type InventoryProblem, type ProblemCode, problemIn } from './inventory-problem'
import { type PassedOver, rowsOf } from './table-rows'

/** More than a hundred thousand trees with all that is known of them. */
export const mostBytes = 50_000_000
/** The referee takes as many in one command. */
export const mostTrees = 100_000

export type Table = {
  kind: 'table' | 'geojson'
  encoding: Encoding
  separator: Separator | null
  heads: string[]
  records: CsvRecord[]
  /** The line that stands alone above a record, by the record's line: its block, where no column is. */
  titles: ReadonlyMap<number, string>
  /** Lines that are no trees. */
  passedOver: PassedOver[]
}

export type ReadTable = Table | { problems: InventoryProblem[] }

export function tableOf(file: Uint8Array): ReadTable {
  if (file.length > mostBytes) return tooBig(file.length)
  const read = textOfFile(file)
  if (read.text === null) return refused(read.why)
  return tableOfText(read.text, read.encoding)
}

/** Before a file is read at all: nobody waits for 200 MB to hear that they are too many. */
export function tooBig(bytes: number): { problems: InventoryProblem[] } {
  const mb = (size: number) => `${Math.ceil(size / 1e6)} MB`
  return refused('file_too_big', { found: mb(bytes), allowed: mb(mostBytes) })
}

export function tableOfText(told: string, encoding: Encoding): ReadTable {
  const text = told.startsWith('\uFEFF') ? told.slice(1) : told
  const start = text.trimStart()
  if (start.startsWith('<')) return refused('is_markup')
  return /^(\{|\[\s*[{\]])/.test(start) ? ofGeoJson(text, encoding) : ofCsv(text, encoding)
}

function ofGeoJson(text: string, encoding: Encoding): ReadTable {
  const read = geoJsonTable(text, mostTrees)
  if ('tooMany' in read) return refused('too_many_rows', { allowed: String(mostTrees) })
  if ('problem' in read) return refused(read.problem, { line: read.feature, found: read.found })
  if (read.records.length === 0) return refused('no_trees')
  const all = { titles: new Map(), passedOver: [] }
  return { kind: 'geojson', encoding, separator: null, ...read, ...all }
}

function ofCsv(text: string, encoding: Encoding): ReadTable {
  // A line that some spreadsheet programs write for each other.
  const told = text.match(/^"?sep=([,;\t|])[^\r\n]*\r?\n/i)
  const separator = (told?.[1] as Separator | undefined) ?? separatorOf(text.trimStart())
  const csv = parseCsv(text, { separator, mostRecords: mostTrees + 10 })
  if ('tooManyAtLine' in csv) return refused('too_many_rows', { allowed: String(mostTrees) })
  if ('unclosedQuoteLine' in csv) {
    return refused('quote_not_closed', { line: csv.unclosedQuoteLine })
  }
  const filled = csv.records
    .filter(({ fields }) => fields.some((field) => field.trim() !== ''))
    .map(({ line, fields }) => ({ line, fields: fields.map(tidied) }))
  const rows = rowsOf(told ? filled.slice(1) : filled)
  if (rows === null || rows.records.length === 0) return refused('no_trees')
  if (rows.records.length > mostTrees) {
    return refused('too_many_rows', { allowed: String(mostTrees) })
  }
  return { kind: 'table', encoding, separator, ...rows }
}

function tidied(field: string): string {
  return withoutApostrophes(field.trim())
}

function refused(code: ProblemCode, said: Partial<InventoryProblem> = {}) {
  return { problems: [problemIn({ line: 1, code, ...said })] }
}
