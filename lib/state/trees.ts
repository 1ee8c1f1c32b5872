/** Questions about trees: status, counts, which is next. */

import { type Status, statuses, statusOf } from '@/lib/domain/orchard/status'
import type { Tree } from '@/lib/domain/orchard/types'
import { type Ground as GroundOnFoot, groundOf } from '@/lib/domain/planning/ground'
import { type NextTree, nextTree } from '@/lib/domain/planning/next-tree'
import { walksFrom } from '@/lib/domain/planning/walk'
import { treeRules } from '@/lib/events/missing'
import type { Claim } from '@/lib/events/state'

import { clockOf } from './readiness'
import type { View } from './view'
import { fromParts } from './view-memo'

export const heldByTree = fromParts(
  ['state'] as const,
  ({ state }): ReadonlyMap<number, Claim> =>
    new Map(
      Object.values(state?.claims ?? {}).flatMap((claim) =>
        claim.tree === null ? [] : [[claim.tree, claim]]
      )
    )
)

type Flagged = { disease: boolean; arborist: boolean }

export const flagsByTree = fromParts(
  ['state'] as const,
  ({ state }): ReadonlyMap<number, Flagged> => {
    const flags = new Map<number, Flagged>()
    for (const { tree, kind } of Object.values(state?.flags ?? {})) {
      const known = flags.get(tree) ?? { disease: false, arborist: false }
      flags.set(tree, { ...known, [kind]: true })
    }
    return flags
  }
)

export function statusOfTree(view: Pick<View, 'state'>, no: number): Status {
  const flags = flagsByTree(view).get(no)
  return statusOf({
    arboristFlag: flags?.arborist ?? false,
    held: heldByTree(view).has(no),
    diseaseFlag: flags?.disease ?? false,
    work: view.state?.work[no]?.state ?? 'unpruned',
  })
}

export type Counts = Readonly<Record<Status, number>> & { trees: number }

/** Of the trees that this round is about: standing, of its species, not left out. */
export const countsByBlock = fromParts(
  ['state', 'sheet'] as const,
  (view): ReadonlyMap<number, Counts> => {
    const counts = new Map<number, Record<Status, number> & { trees: number }>()
    for (const tree of view.sheet?.trees ?? []) {
      if (!isInRound(view, tree)) continue
      const ofBlock = counts.get(tree.block) ?? noneYet()
      ofBlock[statusOfTree(view, tree.no)]++
      ofBlock.trees++
      counts.set(tree.block, ofBlock)
    }
    return counts
  }
)

/** Of one block, or of all. */
export function countsOf(view: View, block?: number): Counts {
  const all = countsByBlock(view)
  if (block !== undefined) return all.get(block) ?? noneYet()
  const sum = noneYet()
  for (const ofBlock of all.values()) {
    for (const status of statuses) sum[status] += ofBlock[status]
    sum.trees += ofBlock.trees
  }
  return sum
}

function noneYet(): Record<Status, number> & { trees: number } {
  return { unpruned: 0, in_progress: 0, done: 0, disease: 0, arborist: 0, trees: 0 }
}

export function isInRound({ state }: Pick<View, 'state'>, tree: Tree): boolean {
  const round = state?.workRoundId ? state.rounds[state.workRoundId] : undefined
  return (
    tree.life === 'standing' &&
    (round?.species.includes(tree.species) ?? false) &&
    state?.work[tree.no]?.state !== 'left_out'
  )
}

/** The orchard as somebody on foot meets it. */
export const groundOnFoot = fromParts(
  ['sheet'] as const,
  ({ sheet }): GroundOnFoot => groundOf(sheet?.trees ?? [], sheet?.blocks ?? [])
)

/** The next tree for me, from the tree where I am. Nothing left says why. */
export function nextTreeFor(view: View, from: number | null = null): NextTree<string> {
  const { state, ground, me } = view
  if (!state || !me) return { state: 'nothing_left', refusedTrees: new Map() }
  const rules = treeRules(state, ground, me.personId, clockOf(view))
  const walkM = from === null ? () => 0 : walksFrom(groundOnFoot(view), from)
  return nextTree({
    candidates: [...ground.trees.values()].filter(
      (tree) => isInRound(view, tree) && state.work[tree.no]?.state !== 'done'
    ),
    from: from === null ? null : (ground.trees.get(from) ?? null),
    dealtToMe: new Set(
      Object.keys(state.deals)
        .map(Number)
        .filter((tree) => state.deals[tree]?.includes(me.personId))
    ),
    diseased: new Set(
      [...flagsByTree(view)].filter(([, { disease }]) => disease).map(([tree]) => tree)
    ),
    refusalsOf: (tree) => rules(tree.no).map(({ code }) => code),
    walkM,
  })
}
