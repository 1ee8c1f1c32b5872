/** The words for a species: the orchard may grow one we have no word for. */

import type { Messages } from './messages'

export type SpeciesWords = { name: string; a: string; many: string }

/** An unknown species is called by its own name, in whatever language the orchard wrote it. */
export function speciesWords(text: Pick<Messages, 'species'>, species: string): SpeciesWords {
  const known = Object.hasOwn(text.species, species)
    ? text.species[species as keyof Messages['species']]
    : undefined
  if (known !== undefined) return known
  const written = species.replaceAll('_', ' ')
  return { name: written, a: written, many: written }
}

/** At the head of a line. */
export function capitalised(words: string): string {
  const [first = '', ...rest] = words
  return first.toUpperCase() + rest.join('')
}
