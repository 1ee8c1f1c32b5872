/**
 * Hourly weather as a table that somebody pasted: a heading, then a line an hour. Columns are found by words of
 * English and Spanish, in any order; numbers may have a decimal comma; a unit in the heading is converted.
 */

import { parseCsv } from '../orchard/csv'
import { celsiusOf, kmPerHOf } from './units'

export type HourlyRow = {
  /** On the orchard's clock. */
  day: string
  time: string
  temperatureC: number | null
  humidity: number | null
  windKmh: number | null
  gustKmh: number | null
  rainMm: number | null
}

export type HourlyProblem =
  | { code: 'empty' | 'no_time' | 'no_values' | 'quote_open' | 'too_many' }
  | { code: 'not_a_time' | 'not_a_number' | 'out_of_range'; line: number; text: string }

export type HourlyTable = { rows: HourlyRow[]; problems: HourlyProblem[] }

type Field = 'time' | 'date' | keyof Values
type Values = Omit<HourlyRow, 'day' | 'time'>

/** Longer words first: "wind gust" is a gust. */
const words: readonly (readonly [RegExp, Field])[] = [
  [/gust|racha|rafaga/, 'gustKmh'],
  [/humid|humed|^rh\b|^hr\b/, 'humidity'],
  [/precip|rain|lluvia/, 'rainMm'],
  [/wind|viento/, 'windKmh'],
  [/^(?:air )?temp|^t\b/, 'temperatureC'],
  [/time|hour|hora/, 'time'],
  [/date|day|fecha|dia/, 'date'],
]

const ranges: Record<keyof Values, readonly [number, number]> = {
  temperatureC: [-40, 60],
  humidity: [1, 100],
  windKmh: [0, 250],
  gustKmh: [0, 250],
  rainMm: [0, 300],
}

/** `dayFirst`: how 3/4/2027 is read where nothing in the table decides it. */
export function readHourly(text: string, { dayFirst }: { dayFirst: boolean }): HourlyTable {
  const csv = parseCsv(withCommas(text.trim()))
  if ('unclosedQuoteLine' in csv) return { rows: [], problems: [{ code: 'quote_open' }] }
  if ('tooManyAtLine' in csv) return { rows: [], problems: [{ code: 'too_many' }] }
  const [heading, ...records] = csv.records
  if (!heading || records.length === 0) return { rows: [], problems: [{ code: 'empty' }] }
  const columns = heading.fields.map(columnOf)
  const has = (isIt: (field: Field) => boolean) => columns.some((one) => one && isIt(one.field))
  if (!has((field) => field === 'time')) return { rows: [], problems: [{ code: 'no_time' }] }
  if (!has((field) => Object.hasOwn(ranges, field))) {
    return { rows: [], problems: [{ code: 'no_values' }] }
  }
  const table: HourlyTable = { rows: [], problems: [] }
  for (const { line, fields } of records) readRow(table, { line, fields, columns, dayFirst })
  return table
}

/** Semicolons and tabs are turned into commas, and a decimal comma is quoted by that. */
function withCommas(text: string): string {
  const first = text.split(/\r?\n/, 1)[0] ?? ''
  const mark = first.includes('\t') ? '\t' : first.includes(';') ? ';' : ','
  if (mark === ',') return text
  return text
    .split(/\r?\n/)
    .map((line) =>
      line
        .split(mark)
        .map((one) => `"${one.replaceAll('"', '').trim()}"`)
        .join(',')
    )
    .join('\n')
}

type Column = { field: Field; convert: (value: number) => number }

function columnOf(heading: string): Column | null {
  const plain = heading
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replaceAll('_', ' ')
    .trim()
  const field = words.find(([word]) => word.test(plain))?.[1]
  return field ? { field, convert: conversionOf(field, plain) } : null
}

function conversionOf(field: Field, heading: string): (value: number) => number {
  if (field === 'temperatureC' && /(?:°|º|\(|\b)f\b|fahrenheit/.test(heading)) return celsiusOf
  if (field === 'windKmh' || field === 'gustKmh') {
    if (/mph|mi\/h/.test(heading)) return kmPerHOf
    if (/m\/s/.test(heading)) return (value) => value * 3.6
    if (/\bkn|\bkt|knot|nudo/.test(heading)) return (value) => value * 1.852
  }
  if (field === 'rainMm' && /\bin\b|inch|pulg/.test(heading)) return (value) => value * 25.4
  return (value) => value
}

type Row = {
  line: number
  fields: readonly string[]
  columns: readonly (Column | null)[]
  dayFirst: boolean
}

function readRow(table: HourlyTable, { line, fields, columns, dayFirst }: Row): void {
  const cell = (field: Field) => fields[columns.findIndex((one) => one?.field === field)] ?? ''
  const written = `${cell('date')} ${cell('time')}`.trim()
  const when = momentIn(written, dayFirst)
  if (!when) {
    table.problems.push({ code: 'not_a_time', line, text: written })
    return
  }
  const row: HourlyRow = { ...when, ...nothing }
  for (const [at, column] of columns.entries()) {
    if (!column || column.field === 'time' || column.field === 'date') continue
    const text = fields[at]?.trim() ?? ''
    const value = text === '' ? null : column.convert(Number(text.replace(',', '.')))
    const [least, most] = ranges[column.field]
    if (Number.isNaN(value)) table.problems.push({ code: 'not_a_number', line, text })
    else if (value !== null && (value < least || value > most)) {
      table.problems.push({ code: 'out_of_range', line, text })
    } else row[column.field] = value === null ? null : Math.round(value * 100) / 100
  }
  table.rows.push(row)
}

const nothing: Values = {
  temperatureC: null,
  humidity: null,
  windKmh: null,
  gustKmh: null,
  rainMm: null,
}

/** "2027-04-03T09:00", "3/4/2027 9:00", "04/03/2027 9 PM". Minutes are left out: an hour is an hour. */
function momentIn(text: string, dayFirst: boolean): { day: string; time: string } | null {
  const iso =
    /^(\d{4})-(\d{1,2})-(\d{1,2})[T ]+(\d{1,2})(?::\d{2})?(?::\d{2}(?:\.\d+)?)? ?([ap]m)?$/i.exec(
      text
    )
  if (iso) return moment([iso[1], iso[2], iso[3]], iso[4], iso[5])
  const other =
    /^(\d{1,2})[/.-](\d{1,2})[/.-](\d{4}),? +(\d{1,2})(?::\d{2})?(?::\d{2})? ?([ap]m)?$/i.exec(text)
  if (!other) return null
  const [, one = '', two = '', year, hour, half] = other
  const isDayFirst = Number(one) > 12 || (dayFirst && Number(two) <= 12)
  return moment(isDayFirst ? [year, two, one] : [year, one, two], hour, half)
}

function moment(
  [year = '', month = '', date = '']: readonly (string | undefined)[],
  hour = '',
  half: string | undefined
): { day: string; time: string } | null {
  const hours = half ? (Number(hour) % 12) + (half.toLowerCase() === 'pm' ? 12 : 0) : Number(hour)
  const day = `${year}-${month.padStart(2, '0')}-${date.padStart(2, '0')}`
  const midnight = new Date(`${day}T00:00:00Z`)
  const isDay = !Number.isNaN(midnight.getTime()) && midnight.toISOString().startsWith(day)
  return isDay && hours < 24 ? { day, time: `${String(hours).padStart(2, '0')}:00` } : null
}
