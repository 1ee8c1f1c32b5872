/** How each tree of a scene looks now, and which ones a change touches. */

import { type Look, type Mark, markOf, marks, type TreeLooks } from '@/lib/domain/orchard/status'
import { PagedMap } from '@/lib/util/paged-map'

import type { Scene } from './scene'

const plain: Look = {
  status: 'unpruned',
  badge: null,
  dealtToMe: false,
  heldByMe: false,
  dealtTo: [],
  closed: false,
  initials: [],
}

export type Looks = {
  /** Takes over what changed. Dirty: the trees to repaint; null: bubbles moved, paint it all. */
  take: (looks: TreeLooks) => number[] | null
  markAt: (index: number) => Mark
  hasDiseaseBadge: (index: number) => boolean
  /** Initials of whom a tree is kept for. */
  dealtTo: (index: number) => readonly string[]
  /** People by the index of their tree. */
  people: () => ReadonlyMap<number, readonly string[]>
  /** Those of them who call for help. */
  calling: () => ReadonlyMap<number, readonly string[]>
}

/** A tree without a look is unpruned. */
export function looksOf(scene: Scene): Looks {
  let last: TreeLooks = PagedMap.empty()
  const markCodes = new Uint8Array(scene.trees.length)
  const badges = new Uint8Array(scene.trees.length)
  const people = new Map<number, readonly string[]>()
  const calling = new Map<number, readonly string[]>()

  function take(looks: TreeLooks): number[] | null {
    const dirty: number[] = []
    let peopleMoved = false
    const before = last
    last = looks
    for (const no of looks.changedSince(before)) {
      const index = scene.indexOf.get(no)
      if (index === undefined) continue
      const [was, look] = [before.get(no) ?? plain, looks.get(no) ?? plain]
      markCodes[index] = marks.indexOf(markOf(look))
      badges[index] = look.badge === null ? 0 : 1
      if (isDrawnOtherwise(was, look)) dirty.push(index)
      if (hasSamePeople(was, look)) continue
      peopleMoved = true
      if (look.calling) calling.set(index, look.calling)
      else calling.delete(index)
      if (look.initials.length > 0) people.set(index, look.initials)
      else people.delete(index)
    }
    return peopleMoved ? null : dirty
  }

  const markAt = (index: number) => marks[markCodes[index] ?? 0] ?? 'unpruned'
  return {
    take,
    markAt,
    hasDiseaseBadge: (index) => badges[index] === 1 && markAt(index) !== 'disease',
    dealtTo: (index) => last.get(scene.trees[index]?.no ?? Number.NaN)?.dealtTo ?? [],
    people: () => people,
    calling: () => calling,
  }
}

function isDrawnOtherwise(was: Look, look: Look): boolean {
  return (
    markOf(was) !== markOf(look) ||
    was.badge !== look.badge ||
    was.dealtTo.join() !== look.dealtTo.join()
  )
}

function hasSamePeople(was: Look, look: Look): boolean {
  return (
    was.initials.join() === look.initials.join() && was.calling?.join() === look.calling?.join()
  )
}
