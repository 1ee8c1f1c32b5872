/** Trees of a plan that must not be dealt, since somebody else works beside them with a saw or a ladder. */

import { type Demand, isOverhead, type Team } from './shift-teams'

export type HeldTree = {
  no: number
  people: readonly string[]
  /** With a saw or a ladder. */
  isOverhead: boolean
}

export type Apart = {
  teams: readonly Team[]
  /** What a limb can reach from a tree: the numbers of its neighbours. */
  near: (no: number) => readonly number[]
  /** Trees that somebody is at. */
  held: readonly HeldTree[]
}

/** Dealing lifts the rule about saw and ladder work next to a tree; a plan keeps it. `dealt`: tree to team. */
export function tooNear(
  { teams, near, held }: Apart,
  trees: readonly (Demand & { no: number })[],
  dealt: ReadonlyMap<number, number>
): ReadonlySet<number> {
  const overhead = new Set(trees.flatMap((tree) => (isOverhead(tree) ? [tree.no] : [])))
  const found = new Set<number>()
  for (const there of held) {
    for (const no of near(there.no)) {
      const isTheirs = teams[dealt.get(no) ?? -1]?.some(({ id }) => there.people.includes(id))
      if (isTheirs === false && (there.isOverhead || overhead.has(no))) found.add(no)
    }
  }
  for (const no of overhead) {
    const team = dealt.get(no)
    if (team === undefined || found.has(no)) continue
    for (const other of near(no)) {
      const theirs = dealt.get(other)
      if (theirs !== undefined && theirs !== team) found.add(other)
    }
  }
  return found
}
