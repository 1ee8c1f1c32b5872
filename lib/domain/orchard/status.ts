/** What a tree's state looks like: the status it is counted under and the mark it is drawn with. */

import type { PagedMap } from '@/lib/util/paged-map'

export const statuses = ['unpruned', 'in_progress', 'done', 'disease', 'arborist'] as const
export type Status = (typeof statuses)[number]

export const works = ['unpruned', 'begun', 'done', 'left_out'] as const
/** In this round; left out: not to be pruned in it. */
export type Work = (typeof works)[number]

export type TreeState = {
  /** An arborist flag is open. */
  arboristFlag: boolean
  /** Somebody has an open claim on it. */
  held: boolean
  /** A disease flag is suspected or confirmed. */
  diseaseFlag: boolean
  work: Work
}

/** The same rule as `status_of` in SQL, which decides. */
export function statusOf({ arboristFlag, held, diseaseFlag, work }: TreeState): Status {
  if (arboristFlag) return 'arborist'
  if (held || work === 'begun') return 'in_progress'
  if (diseaseFlag) return 'disease'
  return work === 'done' ? 'done' : 'unpruned'
}

/** An open disease flag is always drawn, also where another status stands in front of it. */
export type Badge = 'disease' | null

export function badgeOf({ diseaseFlag }: Pick<TreeState, 'diseaseFlag'>): Badge {
  return diseaseFlag ? 'disease' : null
}

/** How one person sees one tree on the map. */
export type Look = {
  status: Status
  badge: Badge
  dealtToMe: boolean
  heldByMe: boolean
  /** Initials of whom a tree is kept for other than me; only leads are told on the map. */
  dealtTo: readonly string[]
  /** Inside a keep-out, or closed for another reason. */
  closed: boolean
  /** Of the people at this tree, other than me. */
  initials: readonly string[]
  /** Those of them who call for help, or are looked for. */
  calling?: readonly string[]
}

/** By the number of the tree. */
export type TreeLooks = PagedMap<Look>

export const marks = [...statuses, 'held_by_me', 'dealt_to_me', 'dealt', 'closed'] as const
export type Mark = (typeof marks)[number]

/** Danger hides everything else; then whose it is; then how far it is. */
export function markOf(look: Look): Mark {
  if (look.status === 'arborist') return 'arborist'
  if (look.heldByMe) return 'held_by_me'
  if (look.closed) return 'closed'
  if (look.dealtToMe && look.status !== 'done') return 'dealt_to_me'
  // How far it is says more than whose it will be.
  if (look.dealtTo.length > 0 && look.status === 'unpruned') return 'dealt'
  return look.status
}
