/** How every tree looks to me, worked out anew only for those that something happened to. */

import { badgeOf, type Look, type Mark, markOf, type TreeLooks } from '@/lib/domain/orchard/status'
import { species, stands } from '@/lib/domain/orchard/types'
import { openShift } from '@/lib/events/look-ups'
import { treeRules } from '@/lib/events/missing'
import type { State } from '@/lib/events/state'
import { putOffIn } from '@/lib/events/weather'
import { PagedMap } from '@/lib/util/paged-map'

import { isLeadView } from './me'
import { initialsOf } from './people'
import { nowIn } from './readiness'
import { flagsByTree, heldByTree, statusOfTree } from './trees'
import type { View } from './view'
import { fromParts } from './view-memo'

const parts = ['state', 'ground', 'me', 'names'] as const
type Seen = Pick<View, (typeof parts)[number]>

type Known = { looks: TreeLooks; speciesOff: string }
type Before = { view: Seen; result: Known }

/** A look that did not change stays the same object. */
export function looksOf(view: Seen): TreeLooks {
  return known(view).looks
}

const known = fromParts(parts, looksAfter)

/** `before`: what was known of an earlier view; without one every tree is looked at. */
export function looksAfter(view: Seen, before: Before | null): Known {
  const { state, ground } = view
  const lookOf = state && looker(view, state)
  if (!lookOf) return { looks: PagedMap.empty(), speciesOff: '' }

  const speciesOff = speciesOffNow(state)
  const isLikeBefore = before?.result.speciesOff === speciesOff
  const touched = (isLikeBefore && touchedSince(before.view, view)) || ground.trees.keys()
  const kept: TreeLooks =
    before?.view.ground === ground ? before.result.looks : PagedMap.empty<Look>()
  const changed: [number, Look][] = []
  for (const no of touched) {
    const look = lookOf(no)
    const was = before?.result.looks.get(no)
    if (look) changed.push([no, was && isSameLook(was, look) ? was : look])
  }
  return { looks: kept.with(changed), speciesOff }
}

type Marked = { looks: TreeLooks; counts: Readonly<Partial<Record<Mark, number>>> }

/** How many trees there are of each mark. */
export function countMarks(view: Seen): Marked['counts'] {
  return marked(view).counts
}

const marked = fromParts(parts, (view, before: { result: Marked } | null): Marked => {
  const looks = looksOf(view)
  const was = before?.result ?? { looks: PagedMap.empty<Look>(), counts: {} }
  const counts = { ...was.counts }
  const count = (look: Look | undefined, by: 1 | -1) => {
    if (look) counts[markOf(look)] = (counts[markOf(look)] ?? 0) + by
  }
  for (const no of looks.changedSince(was.looks)) {
    count(was.looks.get(no), -1)
    count(looks.get(no), 1)
  }
  return { looks, counts }
})

/** Where it is drawn as closed, whoever looks. */
const closing = ['inside_keep_out', 'tree_left_out', 'species_off', 'stopped']

function looker(view: Seen, state: State): ((no: number) => Look | undefined) | null {
  const { ground, me } = view
  if (!me) return null
  const [held, flags, calling] = [heldByTree(view), flagsByTree(view), callingAt(state)]
  // By the device's clock: what is drawn must not be drawn anew because a measured skew changed.
  const rules = treeRules(state, ground, me.personId, { now: nowIn({ skewMs: 0 }) })
  const isTold = isLeadView({ state, me })
  const initialsOfOthers = (ids: readonly string[]) =>
    ids.filter((id) => id !== me.personId).map((id) => initialsOf(view, id))
  return (no) => {
    const tree = ground.trees.get(no)
    if (!tree || !stands(tree)) return undefined
    const here = Object.keys(held.get(no)?.people ?? {})
    const callers = calling.get(no) ?? []
    return {
      status: statusOfTree(view, no),
      badge: badgeOf({ diseaseFlag: flags.get(no)?.disease ?? false }),
      dealtToMe: state.deals[no]?.includes(me.personId) ?? false,
      heldByMe: here.includes(me.personId),
      dealtTo: isTold ? initialsOfOthers(state.deals[no] ?? []) : [],
      closed: rules(no).some(({ code }) => closing.includes(code)),
      initials: initialsOfOthers([...here, ...callers.filter((id) => !here.includes(id))]),
      ...(callers.length > 0 && { calling: callers.map((id) => initialsOf(view, id)) }),
    }
  }
}

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

/** Any tree may look different after one of these: they say what is closed, and to whom. */
const wide = [
  'me',
  'orchard',
  'rounds',
  'workRoundId',
  'shifts',
  'stops',
  'weather',
  'exceptions',
] as const

/** Trees that may look different since; null: any of them. What is the same object says the same. */
function touchedSince(before: Seen, after: Seen): Set<number> | null {
  const [was, now] = [before.state, after.state]
  if (!was || !now || wide.some((part) => was[part] !== now[part])) return null
  if (before.ground !== after.ground || before.me?.personId !== after.me?.personId) return null
  if (before.names !== after.names) return null
  const flags = changedIn(was.flags, now.flags)
  // Of a keep-out the trees around it are closed.
  if (flags.some(({ keepOutM }) => keepOutM !== null)) return null
  const things = [
    ...flags,
    ...changedIn(was.claims, now.claims),
    ...changedIn(was.calls, now.calls),
  ]
  const touched = new Set(things.flatMap(({ tree }) => tree ?? []))
  if (was.work === now.work && was.deals === now.deals) return touched
  for (const no of after.ground.trees.keys())
    if (was.work[no] !== now.work[no] || was.deals[no] !== now.deals[no]) touched.add(no)
  return touched
}

/** What is in only one of them, and both of what is another in each. */
function changedIn<Thing>(was: Record<string, Thing>, now: Record<string, Thing>): Thing[] {
  if (was === now) return []
  const gone = Object.entries(was).filter(([id, thing]) => now[id] !== thing)
  const come = Object.entries(now).filter(([id, thing]) => was[id] !== thing)
  return [...gone, ...come].map(([, thing]) => thing)
}

/** A reading of the weather wears off by the clock alone. */
function speciesOffNow(state: State): string {
  const shift = openShift(state)
  if (!shift) return ''
  const { offs } = putOffIn(state, shift, { now: nowIn({ skewMs: 0 }) })
  return species.filter((one) => offs(one) !== undefined).join()
}
