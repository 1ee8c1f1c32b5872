/** Which of some trees can be left out of the round, and which stay in it. */

import type { View } from '@/lib/hooks'
import type { NotDealt } from './dealing'

export type Leavable = {
  can: readonly number[]
  /** Left out already, and can come back. */
  out: readonly number[]
  /** By what keeps them in: the same as the referee's `leave_out_trees`. */
  stay: readonly (NotDealt & { people: readonly string[] })[]
}

export function leavableIn(
  { state, ground }: Pick<View, 'state' | 'ground'>,
  trees: readonly number[]
): Leavable {
  if (!state) return { can: [], out: [], stay: [] }
  const isOut = (no: number) => state.work[no]?.state === 'left_out'
  const claims = Object.values(state.claims)
  const holdersOf = (no: number) => {
    const tree = ground.trees.get(no)
    // A row of brush is held with all of its trees.
    const isHeldBy = ({ tree: held, row }: (typeof claims)[number]) =>
      held === no || (row !== null && row.block === tree?.block && row.row === tree.row)
    return claims.filter(isHeldBy).flatMap(({ people }) => Object.keys(people))
  }
  const inRound = trees.filter((no) => !isOut(no))
  const held = inRound.filter((no) => holdersOf(no).length > 0)
  const dealt = inRound.filter((no) => Object.hasOwn(state.deals, no))
  const done = inRound.filter((no) => state.work[no]?.state === 'done')
  const kept = new Set([...held, ...dealt, ...done])
  return {
    can: inRound.filter((no) => !kept.has(no)),
    out: trees.filter(isOut),
    stay: [
      { code: 'tree_in_progress', trees: held, people: [...new Set(held.flatMap(holdersOf))] },
      {
        code: 'dealt_to_another',
        trees: dealt,
        people: [...new Set(dealt.flatMap((no) => state.deals[no] ?? []))],
      },
      { code: 'tree_done', trees: done, people: [] },
    ].filter((reason) => reason.trees.length > 0),
  }
}
