/** Separated text as RFC 4180 has it: quotes around what needs them, doubled inside. */

export type CsvRecord = { line: number; fields: string[] }

export type Csv =
  | { records: CsvRecord[] }
  | { unclosedQuoteLine: number }
  | { tooManyAtLine: number }

export const separators = [',', ';', '\t', '|'] as const
export type Separator = (typeof separators)[number]

type Reading = { separator?: Separator; mostRecords?: number }

/** Empty lines are passed over; line numbers are those an editor shows. */
export function parseCsv(
  text: string,
  { separator = ',', mostRecords = Number.POSITIVE_INFINITY }: Reading = {}
): Csv {
  const records: CsvRecord[] = []
  let line = 1
  let at = 0
  while (at < text.length) {
    const record: CsvRecord = { line, fields: [] }
    let ended = false
    while (!ended) {
      const field = text[at] === '"' ? quoted(text, at, separator) : plain(text, at, separator)
      if (field === null) return { unclosedQuoteLine: line }
      record.fields.push(field.value)
      line += linesIn(field.value)
      ended = text[field.end] !== separator
      at = field.end + 1
      if (text[field.end] === '\r' && text[at] === '\n') at += 1
    }
    line += 1
    if (record.fields.length === 1 && record.fields[0] === '') continue
    if (records.length === mostRecords) return { tooManyAtLine: record.line }
    records.push(record)
  }
  return { records }
}

/** A title may stand above the table, so several lines are asked. */
const linesAsked = 20

/** Which of them parts the first lines, outside quotes; a comma where none does. */
export function separatorOf(text: string): Separator {
  const start = text.slice(0, linesAsked * 5_000).replace(/"(?:[^"]|"")*"/g, '""')
  const lines = start.split(/[\r\n]+/, linesAsked)
  const count = (separator: Separator) =>
    // A comma before a space belongs to words: "diameter, cm".
    lines.reduce(
      (sum, line) => sum + line.split(separator === ',' ? /,(?! )/ : separator).length,
      0
    )
  return separators.reduce((best, next) => (count(next) > count(best) ? next : best))
}

/** A value for a field, quoted if it must be. */
export function csvField(value: string | number | null): string {
  const text = value === null ? '' : String(value)
  return /[",;\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
}

/**
 * The same for what people typed and a spreadsheet opens: a text that begins with = + - @, a tab or a new line would be run
 * as a formula, so an apostrophe stands before it; and before the four where a field could begin within the text, since a
 * spreadsheet of another language parts fields at semicolons. Source: OWASP, "CSV Injection".
 */
export function csvPlain(value: string | number | null): string {
  return csvField(typeof value === 'string' ? withApostrophes(value) : value)
}

function withApostrophes(text: string): string {
  const whole = formula.test(text) ? `'${text}` : text
  return whole.replace(/([;\t\r\n])(?=['"]*[=+\-@])/g, "$1'")
}

/** Lines of such values as a file. */
export function csvTable(lines: readonly (readonly (string | number | null)[])[]): string {
  return `${lines.map((line) => line.map(csvPlain).join(',')).join('\r\n')}\r\n`
}

/** Takes away the apostrophes that `csvPlain` put in. */
export function withoutApostrophes(text: string): string {
  const whole = text.startsWith("'") && formula.test(text) ? text.slice(1) : text
  return whole.replace(/([;\t\r\n])'(?=['"]*[=+\-@])/g, '$1')
}

/** With the apostrophes that were there already, so that one more or less is always told apart. */
const formula = /^'*[=+\-@\t\r\n]/

type Field = { value: string; end: number }

function plain(text: string, from: number, separator: string): Field {
  let end = from
  while (end < text.length && !isEnd(text[end], separator)) end += 1
  return { value: text.slice(from, end).trim(), end }
}

function isEnd(character: string | undefined, separator: string): boolean {
  return character === separator || character === '\n' || character === '\r'
}

function quoted(text: string, from: number, separator: string): Field | null {
  let value = ''
  for (let at = from + 1; ; ) {
    const quote = text.indexOf('"', at)
    if (quote === -1) return null
    value += text.slice(at, quote)
    at = quote + 1
    if (text[at] === '"') {
      value += '"'
      at += 1
      continue
    }
    const rest = plain(text, at, separator)
    // Text after a closing quote is kept: `"a"b` then fails as a value, with its line named.
    return { value: value + rest.value, end: rest.end }
  }
}

function linesIn(text: string): number {
  let lines = 0
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) lines += 1
  return lines
}
