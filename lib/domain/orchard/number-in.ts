/** Numbers as people write them in a table: also with a unit, a word before them, or as a date. */

import { angleIn } from './read-position'

/** A point or a comma before the decimals, never for thousands. */
export function numberIn(text: string): number | null {
  const plain = text.replace(/[\s\u00a0\u202f]/g, '').replace(/^\u2212/, '-')
  return /^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/.test(plain) ? Number(plain.replace(',', '.')) : null
}

/** Most fields of a hundred thousand rows are digits alone. */
function isPlain(text: string): boolean {
  return /^\d+$/.test(text)
}

/** "Row 3", "R3", "Fila 3", "#3", "3.ª": the word may say again what the column is. */
export function countedIn(text: string): number | null {
  if (isPlain(text)) return Number(text)
  const bare = text
    .trim()
    .replace(
      /^(rows?|r|lines?|fila|f|hilera|h|l[ií]nea|surco|trees?|t|[aá]rbol|planta|place|lugar|pos(ition|ici[oó]n)?|number|n[uú]mero|no|n)?\s*[.#ºª°]*\s*(?=\d)/i,
      ''
    )
    .replace(/(?<=\d)\s*\.?[ªº°.]$/, '')
  return numberIn(bare)
}

/** The one year in "12/03/1998", "1998/99", "March 1998", "ca. 1998"; null where there are two, or two digits. */
export function yearIn(text: string): number | null {
  const plain = numberIn(text)
  if (plain !== null) return plain >= 1000 && plain <= 9999 ? plain : null
  const years = text.match(/(?<!\d)(1[5-9]|20)\d\d(?!\d)/g) ?? []
  return years.length === 1 ? Number(years[0]) : null
}

export type Measure = { value: number; unit: 'mm' | 'cm' | 'm' | 'in' | 'ft' | null }

const marks: Record<string, Measure['unit']> = { "'": 'ft', '"': 'in', '′': 'ft', '″': 'in' }
const units = {
  mm: /^(mm|mil[ií]metros?|millimet(re|er)s?)$/,
  cm: /^(cms?|cent[ií]metros?|centimet(re|er)s?)$/,
  m: /^(m|mts?|metros?|met(re|er)s?)$/,
  in: /^(in|inch(es)?|pulgadas?|pulg)$/,
  ft: /^(ft|foot|feet|pies?)$/,
}
const about = /^(~|≈|±|ca\b\.?|c\.|aprox\b\.?|approx\b\.?|about\b|unos\b)\s*/i

/** "12 cm", "3,5m", "7 ft 6 in", "~12": a length that may say its own unit. */
export function measureIn(text: string): Measure | null {
  if (isPlain(text)) return { value: Number(text), unit: null }
  const bare = text.trim().replace(about, '')
  const feet =
    /^(\d+)\s*(?:'|′|ft\.?|feet|pies)\s*(\d+(?:[.,]\d+)?)\s*(?:"|″|''|in\.?|inches|pulgadas)?$/i.exec(
      bare
    )
  if (feet) return { value: Number(feet[1]) * 12 + (numberIn(feet[2] ?? '') ?? 0), unit: 'in' }
  const [, number = '', word = ''] =
    /^([+-]?[\d.,\s\u00a0\u202f]+)\s*([^\d\s][^\d]*)?$/.exec(bare) ?? []
  const value = numberIn(number)
  if (value === null || word === '') return value === null ? null : { value, unit: null }
  const unit = unitIn(word)
  return unit && { value, unit }
}

function unitIn(word: string): Measure['unit'] {
  const plain = word.trim().toLowerCase().replace(/\.$/, '')
  if (marks[plain]) return marks[plain]
  const names = Object.keys(units) as (keyof typeof units)[]
  return names.find((name) => units[name].test(plain)) ?? null
}

/** Degrees, with the quarter of the sky after them if somebody wrote it: "97.9 W", "97,9 O" (oeste), or with minutes. */
export function degreesIn(text: string, negative: string): number | null {
  const [, digits = '', quarter = ''] = text.match(/^(.*?)\s*°?\s*([nsewo]?)$/i) ?? []
  const value = numberIn(digits)
  if (value === null) return angleIn(text)
  if (quarter === '') return value
  return negative.includes(quarter.toLowerCase()) ? -Math.abs(value) : Math.abs(value)
}
