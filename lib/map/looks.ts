/** How each tree of a scene looks now, and which ones a change touches. */

import { type Look, type Mark, markOf, marks } from '@/lib/domain/orchard/status'

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
  take: (looks: ReadonlyMap<number, Look>) => number[] | null
  markAt: (index: number) => Mark
  hasDiseaseBadge: (index: number) => boolean
  /** Initials of whom a tree is kept for. */
  dealtTo: (index: number) => readonly string[]
  /** People by the index of their tree. */
  people: () => ReadonlyMap<number, readonly string[]>
  /** Those of them who call for help. */
  calling: () => ReadonlyMap<number, readonly string[]>
}

/** A tree without a look is unpruned. Looks are compared by identity first, so keep them. */
export function looksOf(scene: Scene): Looks {
  const seen: (Look | undefined)[] = new Array(scene.trees.length)
  const markCodes = new Uint8Array(scene.trees.length)
  const people = new Map<number, readonly string[]>()
  const calling = new Map<number, readonly string[]>()

  function take(looks: ReadonlyMap<number, Look>): number[] | null {
    const dirty: number[] = []
    let peopleMoved = false
    scene.trees.forEach((tree, index) => {
      const look = looks.get(tree.no) ?? plain
      const before = seen[index] ?? plain
      if (look === before) return
      seen[index] = look
      const code = marks.indexOf(markOf(look))
      const isOther = code !== markCodes[index] || look.badge !== before.badge
      if (isOther || look.dealtTo.join() !== before.dealtTo.join()) dirty.push(index)
      markCodes[index] = code
      const isSame = look.initials.join() === before.initials.join()
      if (isSame && look.calling?.join() === before.calling?.join()) return
      peopleMoved = true
      if (look.calling) calling.set(index, look.calling)
      else calling.delete(index)
      if (look.initials.length > 0) people.set(index, look.initials)
      else people.delete(index)
    })
    return peopleMoved ? null : dirty
  }

  return {
    take,
    markAt: (index) => marks[markCodes[index] ?? 0] ?? 'unpruned',
    hasDiseaseBadge: (index) =>
      seen[index]?.badge === 'disease' && marks[markCodes[index] ?? 0] !== 'disease',
    dealtTo: (index) => seen[index]?.dealtTo ?? [],
    people: () => people,
    calling: () => calling,
  }
}
