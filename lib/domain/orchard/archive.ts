/**
 * A whole orchard as one text of lines: a first line that says what it is, its tables one after the other, each
 * row as the referee wrote it, and a last line with the count. The format is in supabase/README.md.
 */

import * as shape from '@/lib/util/shape'

export type ArchivePart = { table: string; columns: string[]; rows: string[] }

const header = shape.object({
  format: shape.exactly('rowcall-orchard'),
  version: shape.integer,
  orchard: shape.text,
  name: shape.text,
  at: shape.text,
})
export type ArchiveHeader = shape.Out<typeof header>
const archiveVersion = 1

const tableLine = shape.object({ table: shape.text, columns: shape.array(shape.text) })
const endLine = shape.object({ end: shape.exactly(true), rows: shape.integer })

export function archiveText(
  said: Omit<ArchiveHeader, 'format' | 'version'>,
  parts: readonly ArchivePart[]
): string {
  const first = { format: 'rowcall-orchard', version: archiveVersion, ...said }
  const lines = [JSON.stringify(first)]
  let table = ''
  let count = 0
  for (const part of parts) {
    if (part.table !== table) {
      lines.push(JSON.stringify({ table: part.table, columns: part.columns }))
    }
    table = part.table
    for (const row of part.rows) lines.push(row.replaceAll('\n', ' '))
    count += part.rows.length
  }
  lines.push(JSON.stringify({ end: true, rows: count }), '')
  return lines.join('\n')
}

export type ReadArchive =
  | { state: 'read'; header: ArchiveHeader; parts: ArchivePart[] }
  | { state: 'refused'; why: 'not_archive' | 'archive_newer' | 'archive_damaged' }

/** A row never begins so: its first name is a column's, and none is called "table" or "end". */
const tableStart = '{"table":'
const endStart = '{"end":'
/** A request holds as much. */
const mostInPart = 800_000

export function readArchive(text: string): ReadArchive {
  const [first = '', ...lines] = text.split('\n')
  const said = shape.read(header, jsonOf(first))?.value
  if (!said) return { state: 'refused', why: 'not_archive' }
  if (said.version > archiveVersion) return { state: 'refused', why: 'archive_newer' }
  const damaged: ReadArchive = { state: 'refused', why: 'archive_damaged' }
  const parts: ArchivePart[] = []
  let part: ArchivePart | null = null
  let size = 0
  let count = 0
  for (const line of lines) {
    if (line.startsWith(endStart)) {
      const end = shape.read(endLine, jsonOf(line))?.value
      const filled = parts.filter(({ rows }) => rows.length > 0)
      return end?.rows === count ? { state: 'read', header: said, parts: filled } : damaged
    }
    if (line.startsWith(tableStart)) {
      const known = shape.read(tableLine, jsonOf(line))?.value
      if (!known) return damaged
      part = { ...known, rows: [] }
      parts.push(part)
      size = 0
      continue
    }
    if (part === null || !line.startsWith('{')) return damaged
    if (part.rows.length > 0 && size + line.length > mostInPart) {
      part = { ...part, rows: [] }
      parts.push(part)
      size = 0
    }
    part.rows.push(line)
    size += line.length
    count += 1
  }
  return damaged
}

const personRow = shape.object({
  id: shape.text,
  name: shape.nullable(shape.text),
  role: shape.text,
  removed_at: shape.nullable(shape.text),
})

/** Who may go on with the orchard elsewhere: one of these is who brings it in. */
export function managersIn(parts: readonly ArchivePart[]): { id: string; name: string }[] {
  const people = parts.filter(({ table }) => table === 'people').flatMap(({ rows }) => rows)
  return people.flatMap((row) => {
    const person = shape.read(personRow, jsonOf(row))?.value
    if (person?.role !== 'manager' || person.removed_at !== null) return []
    return person.name === null ? [] : [{ id: person.id, name: person.name }]
  })
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}
