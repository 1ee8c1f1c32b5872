/** What became of a tree, round by round: flags and photos belong to the round that was open when they were made. */

import type { ThingOfTree, TreeHistory } from '@/lib/hooks'

export type RoundOfTree = { round: TreeHistory['rounds'][number] | null; things: ThingOfTree[] }

/** The newest round first, in it the newest thing first; what happened while none was open stands by itself at the end. */
export function historyByRound({
  rounds,
  things,
}: Pick<TreeHistory, 'rounds' | 'things'>): RoundOfTree[] {
  const newestFirst = rounds.toSorted((a, b) => (a.openedAt < b.openedAt ? 1 : -1))
  const parts: RoundOfTree[] = newestFirst.map((round) => ({ round, things: [] }))
  const between: ThingOfTree[] = []
  for (const thing of things) {
    const part = parts.find(({ round }) => round !== null && isIn(round, thing))
    if (part) part.things.push(thing)
    else between.push(thing)
  }
  return between.length === 0 ? parts : [...parts, { round: null, things: between }]
}

function isIn(round: TreeHistory['rounds'][number], { round: of, at }: ThingOfTree): boolean {
  if (of !== null) return of === round.round
  return at >= round.openedAt && (round.closedAt === null || at <= round.closedAt)
}
