/** What a lead asks of the disease map, and which flags it is about. */

import type { Case } from '@/lib/domain/disease/scouting'
import type { Flag } from '@/lib/events/state'

export type Question = {
  /** Null: every sign. */
  sign: string | null
  /** Null: the whole orchard. */
  block: number | null
  confirmedOnly: boolean
  rings: 1 | 2
}

export const firstQuestion: Question = { sign: null, block: null, confirmedOnly: false, rings: 1 }

/** Open disease flags, one for each tree: what is confirmed goes before what is suspected. */
export function casesOf(
  flags: Readonly<Record<string, Flag>>,
  { sign, confirmedOnly }: Pick<Question, 'sign' | 'confirmedOnly'>
): Case[] {
  const cases = new Map<number, Case>()
  for (const flag of Object.values(flags)) {
    const confirmed = flag.state === 'confirmed'
    if (flag.kind !== 'disease' || (sign !== null && flag.sign !== sign)) continue
    if (confirmedOnly && !confirmed) continue
    if (confirmed || !cases.has(flag.tree))
      cases.set(flag.tree, { no: flag.tree, sign: flag.sign, confirmed })
  }
  return [...cases.values()].toSorted((a, b) => a.no - b.no)
}

/** How many trees carry each sign, the most first. */
export function signsOf(flags: Readonly<Record<string, Flag>>): { sign: string; trees: number }[] {
  const trees = new Map<string, Set<number>>()
  for (const { kind, sign, tree } of Object.values(flags))
    if (kind === 'disease') trees.set(sign, (trees.get(sign) ?? new Set()).add(tree))
  return [...trees]
    .map(([sign, own]) => ({ sign, trees: own.size }))
    .toSorted((a, b) => b.trees - a.trees || a.sign.localeCompare(b.sign))
}
