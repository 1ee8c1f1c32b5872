/** Which trees a lead wants to see; the rest is faint. */

import type { Look } from '@/lib/domain/orchard/status'
import type { Species, Tree } from '@/lib/domain/orchard/types'
import type { Work } from '@/lib/events/state'

export const shownKinds = [
  'unpruned',
  'held',
  'begun',
  'done',
  'dealt',
  'disease',
  'arborist',
  'closed',
] as const
export type ShownKind = (typeof shownKinds)[number]

/** Of each list one is enough; an empty list asks for nothing. */
export type MapFilter = {
  blocks: readonly number[]
  species: readonly Species[]
  kinds: readonly ShownKind[]
}

export const noFilter: MapFilter = { blocks: [], species: [], kinds: [] }

export function countChoices({ blocks, species, kinds }: MapFilter): number {
  return blocks.length + species.length + kinds.length
}

export function toggled<Item>(list: readonly Item[], item: Item): readonly Item[] {
  return list.includes(item) ? list.filter((one) => one !== item) : [...list, item]
}

/** A tree may be of several kinds: dealt and half done. */
export function isOfKind(kind: ShownKind, look: Look, facts: TreeNow): boolean {
  switch (kind) {
    case 'held':
      return facts.isHeld
    case 'begun':
      return facts.work?.state === 'begun' && !facts.isHeld
    case 'dealt':
      return facts.isDealt
    case 'disease':
      return look.badge === 'disease'
    case 'closed':
      return look.closed
    case 'done':
      return facts.work?.state === 'done'
    case 'unpruned':
    case 'arborist':
      return look.status === kind
  }
}

export type TreeNow = { isHeld: boolean; isDealt: boolean; work: Work | undefined }

export function isShown(
  { blocks, species, kinds }: MapFilter,
  tree: Tree,
  look: Look,
  facts: TreeNow
): boolean {
  return (
    (blocks.length === 0 || blocks.includes(tree.block)) &&
    (species.length === 0 || species.includes(tree.species)) &&
    (kinds.length === 0 || kinds.some((kind) => isOfKind(kind, look, facts)))
  )
}
