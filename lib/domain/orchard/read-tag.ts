/**
 * Reads how people say a tree: "S 7·14", "s7/14", "south row 7 tree 14", "7/14", "#128". Whatever stands
 * between the numbers does not matter.
 */

import type { Block } from './types'

export type TagRead =
  /** Null where it is not said. */
  | { kind: 'place'; block: number | null; row: number; place: number }
  | { kind: 'row'; block: number; row: number }
  /** The number of the tree itself. */
  | { kind: 'number'; no: number }

export function readTag(
  text: string,
  blocks: readonly Pick<Block, 'no' | 'code' | 'name'>[]
): TagRead | null {
  const said = plain(text)
  const named = blockSaid(said, blocks)
  const rest = named?.rest ?? said
  const words = rest.match(/\p{L}+/gu) ?? []
  if (words.some((word) => !filler.has(word))) return null
  const [first, second, third] = (rest.match(/\d+/g) ?? []).map(Number)
  if (first === undefined || third !== undefined) return null
  if (second !== undefined)
    return { kind: 'place', block: named?.block ?? null, row: first, place: second }
  return named ? { kind: 'row', block: named.block, row: first } : { kind: 'number', no: first }
}

/** What people say around the numbers, in English and Spanish. */
const filler = new Set(
  'block row place tree no nr number bloque fila hilera calle puesto arbol numero nº n'.split(' ')
)

/** The longest code or name that the text begins with, "block" before it or not. */
function blockSaid(
  said: string,
  blocks: readonly Pick<Block, 'no' | 'code' | 'name'>[]
): { block: number; rest: string } | null {
  const bare = said.replace(/^(block|bloque)\s+(?=\p{L})/u, '')
  const [longest] = blocks
    .flatMap(({ no, code, name }) => [
      { no, word: plain(code) },
      { no, word: plain(name) },
    ])
    .filter(({ word }) => word !== '' && bare.startsWith(word))
    // "S" is not the beginning of "seven".
    .filter(({ word }) => !/^\p{L}/u.test(bare.slice(word.length)))
    .toSorted((a, b) => b.word.length - a.word.length)
  return longest ? { block: longest.no, rest: bare.slice(longest.word.length) } : null
}

/** Without accents, in small letters. */
function plain(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim()
}
