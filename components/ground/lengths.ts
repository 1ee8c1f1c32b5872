/** Lengths as a manager types and reads them: two digits, in the orchard's units; metres inside. */

import type { Units } from '@/lib/text/format'

const footM = 0.3048

export function unitOf(units: Units): 'm' | 'ft' {
  return units === 'us' ? 'ft' : 'm'
}

export function shownLength(metres: number, units: Units): string {
  return String(Number((units === 'us' ? metres / footM : metres).toFixed(2)))
}

export function withUnit(metres: number, units: Units): string {
  return `${shownLength(metres, units)} ${unitOf(units)}`
}

/** Metres; null: not a number. */
export function typedLength(typed: string, units: Units): number | null {
  const number = typedNumber(typed)
  if (number === null) return null
  return units === 'us' ? number * footM : number
}

/** With a point or a comma; null: not a number. */
export function typedNumber(typed: string): number | null {
  const text = typed.trim().replace(',', '.')
  return /^\d+(?:\.\d*)?$/.test(text) ? Number(text) : null
}
