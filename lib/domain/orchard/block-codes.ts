/** A block in a file has a name or a code of any length; on the plates stand one to four characters. */

import { folded } from './inventory-columns'
import type { Block } from './types'

export const longestCode = 4

export type BlockCalled = { code: string; name: string }

/**
 * For each block of a file, by what it is called there: one of the orchard's, by code or name, or a new one.
 * A long name gets the first letters of its words, or of the name, and no two the same.
 */
export function blockCodes(
  labels: readonly string[],
  existing: readonly Pick<Block, 'code' | 'name'>[]
): ReadonlyMap<string, BlockCalled> {
  const called = new Map<string, BlockCalled>()
  const codes = new Set(existing.map(({ code }) => folded(code)))
  const long: string[] = []
  for (const label of new Set(labels)) {
    const known =
      existing.find(({ code }) => code === label) ??
      existing.find(({ code }) => folded(code) === folded(label)) ??
      existing.find(({ name }) => folded(name) === folded(label))
    if (known) called.set(label, { code: known.code, name: known.name })
    else if ([...label].length <= longestCode) {
      called.set(label, { code: label, name: label })
      codes.add(folded(label))
    } else long.push(label)
  }
  for (const label of long) {
    const code = freeCode(label, codes)
    codes.add(folded(code))
    called.set(label, { code, name: label })
  }
  return called
}

function freeCode(label: string, taken: ReadonlySet<string>): string {
  const words = label.split(/[\s_-]+/).filter(Boolean)
  const initials = words.map((word) => [...word][0] ?? '').join('')
  const [letters] = [[...label.replace(/[\s_-]+/g, '')]]
  const tries = [
    ...(words.length > 1 ? [initials] : []),
    ...[1, 2, 3, 4].map((length) => letters.slice(0, length).join('')),
    ...Array.from({ length: 999 }, (_, index) => `${letters[0] ?? 'B'}${index + 1}`),
  ].map((code) => [...code.toUpperCase()].slice(0, longestCode).join(''))
  return tries.find((code) => !taken.has(folded(code))) ?? 'B'
}
