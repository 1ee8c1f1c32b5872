/** One or more of something, in the grammar of a language. */

import type { Language } from './language'

export type Plural = (count: number, one: string, other: string) => string

/** A function that picks the form; what is counted stands in the forms already. */
export function pluralIn(language: Language): Plural {
  const rules = new Intl.PluralRules(language)
  // Spanish also has "many", for whole millions; nothing in an orchard reaches it.
  return (count, one, other) => (rules.select(count) === 'one' ? one : other)
}
