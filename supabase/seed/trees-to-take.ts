/** Which tree a simulated person goes to next: found with the same rules as the app's. */

import type { Block, Tree } from '@/lib/domain/orchard/types'
import { groundOf, type Ground as WalkingGround } from '@/lib/domain/planning/ground'
import { nextTree } from '@/lib/domain/planning/next-tree'
import { walksFrom } from '@/lib/domain/planning/walk'
import type { Ground } from '@/lib/events/ground'
import { treeRules, type Wish } from '@/lib/events/missing'
import type { State } from '@/lib/events/state'

export type Land = { trees: readonly Tree[]; rules: Ground; walking: WalkingGround }

export function landOf(trees: readonly Tree[], blocks: readonly Block[]): Land {
  return {
    trees,
    rules: {
      trees: new Map(trees.map((tree) => [tree.no, tree])),
      blocks: new Map(blocks.map((block) => [block.no, block])),
    },
    walking: groundOf(trees, blocks),
  }
}

export type Asking = {
  personId: string
  /** The tree they stand at, if that is known. */
  from: number | null
  wish?: Wish
}

/** Null when nothing is left that this person may have. */
export function treeToTake(land: Land, state: State, { personId, from, wish }: Asking) {
  const refusals = treeRules(state, land.rules, personId, wish)
  const flags = Object.values(state.flags)
  const found = nextTree({
    candidates: land.trees.filter(({ no }) => state.work[no]?.state !== 'done'),
    from: (from === null ? undefined : land.rules.trees.get(from)) ?? null,
    dealtToMe: new Set(
      Object.entries(state.deals).flatMap(([tree, people]) =>
        people.includes(personId) ? [Number(tree)] : []
      )
    ),
    diseased: new Set(flags.flatMap(({ kind, tree }) => (kind === 'disease' ? [tree] : []))),
    refusalsOf: ({ no }) => refusals(no).map(({ code }) => code),
    walkM: from === null ? () => 0 : walksFrom(land.walking, from),
  })
  return found.state === 'found' ? found.tree : null
}
