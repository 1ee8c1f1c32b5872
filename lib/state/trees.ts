/** Questions about trees: status, counts, how each looks to me, which is next. */

import { badgeOf, type Look, type Status, statuses, statusOf } from '@/lib/domain/orchard/status'
import { stands, type Tree } from '@/lib/domain/orchard/types'
import { type Ground as GroundOnFoot, groundOf } from '@/lib/domain/planning/ground'
import { type NextTree, nextTree } from '@/lib/domain/planning/next-tree'
import { walksFrom } from '@/lib/domain/planning/walk'
import { treeRules } from '@/lib/events/missing'
import type { Claim, State } from '@/lib/events/state'

import { isLeadView } from './me'
import { initialsOf } from './people'
import { clockOf, nowIn } from './readiness'
import type { View } from './view'
import { fromParts } from './view-memo'

type Facts = {
  held: ReadonlyMap<number, Claim>
  flags: ReadonlyMap<number, { disease: boolean; arborist: boolean }>
}

const factsOf = fromParts(['state'] as const, ({ state }): Facts => {
  const held = new Map<number, Claim>()
  for (const claim of Object.values(state?.claims ?? {})) {
    if (claim.tree !== null) held.set(claim.tree, claim)
  }
  const flags = new Map<number, { disease: boolean; arborist: boolean }>()
  for (const { tree, kind } of Object.values(state?.flags ?? {})) {
    const known = flags.get(tree) ?? { disease: false, arborist: false }
    flags.set(tree, { ...known, [kind]: true })
  }
  return { held, flags }
})

export function statusOfTree(view: Pick<View, 'state'>, no: number): Status {
  const { held, flags } = factsOf(view)
  return statusOf({
    arboristFlag: flags.get(no)?.arborist ?? false,
    held: held.has(no),
    diseaseFlag: flags.get(no)?.disease ?? false,
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

/** Where it is drawn as closed, whoever looks. */
const closing = ['inside_keep_out', 'tree_left_out', 'species_off', 'stopped']

/** How every tree looks to me. A look that did not change stays the same object. */
export const looksOf = fromParts(
  ['state', 'ground', 'me', 'names'] as const,
  (view, before: ReadonlyMap<number, Look> | null): ReadonlyMap<number, Look> => {
    const { state, ground, me } = view
    const looks = new Map<number, Look>()
    if (!state || !me) return looks
    const { held, flags } = factsOf(view)
    // By the device's clock: what is drawn must not be drawn anew because a measured skew changed.
    const rules = treeRules(state, ground, me.personId, { now: nowIn({ skewMs: 0 }) })
    const isTold = isLeadView({ state, me })
    const calling = callingAt(state)
    for (const tree of ground.trees.values()) {
      if (!stands(tree)) continue
      const here = Object.keys(held.get(tree.no)?.people ?? {})
      const callers = calling.get(tree.no) ?? []
      const people = [...here, ...callers.filter((id) => !here.includes(id))]
      const look: Look = {
        status: statusOfTree(view, tree.no),
        badge: badgeOf({ diseaseFlag: flags.get(tree.no)?.disease ?? false }),
        dealtToMe: state.deals[tree.no]?.includes(me.personId) ?? false,
        heldByMe: here.includes(me.personId),
        dealtTo: isTold
          ? (state.deals[tree.no] ?? [])
              .filter((id) => id !== me.personId)
              .map((id) => initialsOf(view, id))
          : [],
        closed: rules(tree.no).some(({ code }) => closing.includes(code)),
        initials: people.filter((id) => id !== me.personId).map((id) => initialsOf(view, id)),
        ...(callers.length > 0 && { calling: callers.map((id) => initialsOf(view, id)) }),
      }
      const known = before?.get(tree.no)
      looks.set(tree.no, known && isSameLook(known, look) ? known : look)
    }
    return looks
  }
)

function isSameLook(a: Look, b: Look): boolean {
  return (
    a.status === b.status &&
    a.badge === b.badge &&
    a.dealtToMe === b.dealtToMe &&
    a.heldByMe === b.heldByMe &&
    a.closed === b.closed &&
    a.dealtTo.join() === b.dealtTo.join() &&
    a.initials.join() === b.initials.join() &&
    a.calling?.join() === b.calling?.join()
  )
}

/** Who calls for help from where; of a lost person, where that one was last. */
function callingAt({ calls }: State): Map<number, string[]> {
  const at = new Map<number, string[]>()
  for (const { kind, tree, calledBy, subject } of Object.values(calls)) {
    const who = kind === 'lost_person' ? subject : calledBy
    if (tree !== null && who !== null) at.set(tree, [...(at.get(tree) ?? []), who])
  }
  return at
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
  const { flags } = factsOf(view)
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
    diseased: new Set([...flags].filter(([, { disease }]) => disease).map(([tree]) => tree)),
    refusalsOf: (tree) => rules(tree.no).map(({ code }) => code),
    walkM,
  })
}
