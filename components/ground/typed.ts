/** What is typed into the fields of trees. */

/** A row's or place's number; null: none. */
export function numberTyped(typed: string): number | null {
  const number = Number(typed.trim())
  return typed.trim() !== '' && Number.isInteger(number) && number >= 1 && number <= 9999
    ? number
    : null
}

/** Null: not said. The referee takes the same years. */
export function yearTyped(typed: string): number | null | 'wrong' {
  const year = numberTyped(typed)
  if (typed.trim() === '') return null
  return year !== null && year >= 1700 && year <= 2200 ? year : 'wrong'
}

/** Empty: as it is. A dash: not known. */
export type Said<Value> = { state: 'as_is' | 'unknown' | 'wrong' } | { state: 'said'; value: Value }

export function said<Value>(typed: string, read: (typed: string) => Value | null): Said<Value> {
  const text = typed.trim()
  if (text === '') return { state: 'as_is' }
  if (text === '-' || text === '–' || text === '—') return { state: 'unknown' }
  const value = read(text)
  return value === null ? { state: 'wrong' } : { state: 'said', value }
}

/** For a field of what is to be set: undefined where it stays, null where it is not known. */
export function toSet<Value>(what: Said<Value>): Value | null | undefined {
  if (what.state === 'said') return what.value
  return what.state === 'unknown' ? null : undefined
}
