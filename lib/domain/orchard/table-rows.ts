/** Which lines of a spreadsheet are trees: not the title, the heads again, the totals, the note below. */

import type { CsvRecord } from './csv'
import { columns, folded, headings, isUnit, plainHead } from './inventory-columns'

/** Why a line is no tree. */
export const passedReasons = ['above', 'units', 'heads_again', 'total', 'title'] as const
export type PassedOver = { line: number; why: (typeof passedReasons)[number]; text: string }

export type TableRows = {
  heads: string[]
  records: CsvRecord[]
  /** The line that stands alone above each record, by the record's line: often its block. */
  titles: ReadonlyMap<number, string>
  passedOver: PassedOver[]
}

/** Of the lines that say something; null where none can be the names of columns. */
export function rowsOf(filled: readonly CsvRecord[]): TableRows | null {
  const first = headsAt(filled)
  const header = filled[first]
  if (!header) return null
  const passedOver = filled.slice(0, first).map((record) => passed(record, 'above'))
  const titles = new Map<number, string>()
  let heads = header.fields
  let title: string | null = null
  const records: CsvRecord[] = []
  for (const record of filled.slice(first + 1)) {
    const why = whyNoTree(record, header, records.length === 0)
    if (why === null) {
      records.push(record)
      if (title !== null) titles.set(record.line, title)
      continue
    }
    passedOver.push(passed(record, why))
    if (why === 'units') heads = withUnits(heads, record)
    if (why === 'title') title = textIn(record)
  }
  const width = widthOf(heads, records)
  return { heads: heads.slice(0, width), records, titles, passedOver }
}

/** How far down a title may push the names of the columns. */
const mostAbove = 20

/** The line that names most columns; where none is known, the first that has several fields. */
function headsAt(filled: readonly CsvRecord[]): number {
  const several = filled
    .slice(0, mostAbove)
    .flatMap((record, index) => (countOf(record) > 1 ? [{ index, known: knownIn(record) }] : []))
  const most = Math.max(0, ...several.map(({ known }) => known))
  const found = most > 1 ? several.find(({ known }) => known === most) : several[0]
  return found?.index ?? filled.findIndex((record) => countOf(record) > 1)
}

const headWords = new Set<string>(columns.flatMap((column) => headings[column]))

function knownIn({ fields }: CsvRecord): number {
  return new Set(fields.map(plainHead).filter((head) => headWords.has(head))).size
}

function whyNoTree(
  record: CsvRecord,
  header: CsvRecord,
  isFirst: boolean
): PassedOver['why'] | null {
  const said = record.fields.filter(Boolean)
  if (isFirst && said.every(isUnit)) return 'units'
  if (same(record, header)) return 'heads_again'
  const isShort = said.length * 2 <= header.fields.filter(Boolean).length
  if (isShort && said.some((field) => /^(sub ?-?)?(total(es)?|sumas?|sum)\b/.test(folded(field)))) {
    return 'total'
  }
  const isAlone = said.length === 1 && header.fields.filter(Boolean).length > 2
  return isAlone && record.fields[0] !== '' && /\p{L}/u.test(record.fields[0] ?? '')
    ? 'title'
    : null
}

/** The first field that differs ends it: most lines are trees. */
function same(record: CsvRecord, header: CsvRecord): boolean {
  return header.fields.every((head, index) => folded(head) === folded(record.fields[index] ?? ''))
}

/** "Trunk" above "cm" is "Trunk (cm)". */
function withUnits(heads: readonly string[], { fields }: CsvRecord): string[] {
  return heads.map((head, index) => (fields[index] ? `${head} (${fields[index]})` : head))
}

/** Programs write separators after the last name, too. A column without a name counts where something stands in it. */
function widthOf(heads: readonly string[], records: readonly CsvRecord[]): number {
  const lastOf = (fields: readonly string[]) =>
    fields.slice(0, heads.length).findLastIndex(Boolean) + 1
  return records.reduce((width, { fields }) => Math.max(width, lastOf(fields)), lastOf(heads))
}

function countOf({ fields }: CsvRecord): number {
  return fields.filter(Boolean).length
}

function passed(record: CsvRecord, why: PassedOver['why']): PassedOver {
  return { line: record.line, why, text: textIn(record) }
}

function textIn({ fields }: CsvRecord): string {
  return fields.filter(Boolean).join(' ')
}
