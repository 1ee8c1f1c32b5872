/** Which one in a row: in words up to the twelfth, as one says it to another person. */

import type { Language } from './language'

const words: Record<Language, readonly string[]> = {
  en: [
    'first',
    'second',
    'third',
    'fourth',
    'fifth',
    'sixth',
    'seventh',
    'eighth',
    'ninth',
    'tenth',
    'eleventh',
    'twelfth',
  ],
  // Masculine, because what is counted is a tree (el cuarto árbol).
  es: [
    'primero',
    'segundo',
    'tercero',
    'cuarto',
    'quinto',
    'sexto',
    'séptimo',
    'octavo',
    'noveno',
    'décimo',
    'undécimo',
    'duodécimo',
  ],
}

const englishEndings: Partial<Record<Intl.LDMLPluralRule, string>> = {
  one: 'st',
  two: 'nd',
  few: 'rd',
}
const englishOrdinals = new Intl.PluralRules('en', { type: 'ordinal' })

export function ordinal(language: Language, number: number): string {
  const word = words[language][number - 1]
  if (word !== undefined) return word
  if (language === 'es') return `${number}.º`
  return `${number}${englishEndings[englishOrdinals.select(number)] ?? 'th'}`
}
