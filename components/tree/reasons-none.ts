/** Why no tree is left, in a handful of reasons instead of the referee's many codes. */

import type { Messages } from '@/lib/text/messages'

export type Reason = keyof Messages['findTree']['reasons']

const reasonOf: Record<string, Reason> = {
  tree_held: 'held',
  dealt_to_another: 'dealt',
  species_off: 'off',
  arborist_flag: 'closed',
  inside_keep_out: 'closed',
  stopped: 'closed',
  disease_not_dealt: 'disease',
  not_marked: 'unmarked',
  skill_missing: 'skill',
  no_saw_in_hand: 'tool',
  no_ladder_in_hand: 'tool',
  two_people_needed: 'two',
  works_next_to_it: 'near',
}

export type ReasonNone = { reason: Reason; trees: number }

/** The commonest first. A tree counts under each of its reasons. */
export function reasonsNone(refusedTrees: ReadonlyMap<string, number>): ReasonNone[] {
  const trees = new Map<Reason, number>()
  for (const [code, count] of refusedTrees) {
    const reason = reasonOf[code] ?? 'other'
    trees.set(reason, Math.max(trees.get(reason) ?? 0, count))
  }
  return [...trees]
    .map(([reason, count]) => ({ reason, trees: count }))
    .toSorted((a, b) => b.trees - a.trees)
}
