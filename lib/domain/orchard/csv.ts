/** Comma-separated text as RFC 4180 has it: quotes around what needs them, doubled inside. */

export type CsvRecord = { line: number; fields: string[] }

export type Csv = { records: CsvRecord[] } | { unclosedQuoteLine: number }

/** Empty lines are passed over; line numbers are those an editor shows. */
export function parseCsv(text: string): Csv {
  const records: CsvRecord[] = []
  let line = 1
  let at = 0
  while (at < text.length) {
    const record: CsvRecord = { line, fields: [] }
    let ended = false
    while (!ended) {
      const field = text[at] === '"' ? quoted(text, at) : plain(text, at)
      if (field === null) return { unclosedQuoteLine: line }
      record.fields.push(field.value)
      line += field.value.split('\n').length - 1
      ended = text[field.end] !== ','
      at = field.end + 1
      if (text[field.end] === '\r' && text[at] === '\n') at += 1
    }
    line += 1
    if (record.fields.length > 1 || record.fields[0] !== '') records.push(record)
  }
  return { records }
}

/** A value for a field, quoted if it must be. */
export function csvField(value: string | number | null): string {
  const text = value === null ? '' : String(value)
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
}

/**
 * The same for what people typed and a spreadsheet opens: a text that begins with = + - @, a tab or a new
 * line would be run as a formula, so an apostrophe stands before it. Source: OWASP, "CSV Injection".
 */
export function csvPlain(value: string | number | null): string {
  return csvField(typeof value === 'string' && /^[=+\-@\t\r\n]/.test(value) ? `'${value}` : value)
}

type Field = { value: string; end: number }

function plain(text: string, from: number): Field {
  let end = from
  while (end < text.length && !',\r\n'.includes(text[end] ?? '')) end += 1
  return { value: text.slice(from, end).trim(), end }
}

function quoted(text: string, from: number): Field | null {
  let value = ''
  for (let at = from + 1; at < text.length; at++) {
    if (text[at] !== '"') {
      value += text[at]
      continue
    }
    if (text[at + 1] === '"') {
      value += '"'
      at += 1
      continue
    }
    const rest = plain(text, at + 1)
    // Text after a closing quote is kept: `"a"b` then fails as a value, with its line named.
    return { value: value + rest.value, end: rest.end }
  }
  return null
}
