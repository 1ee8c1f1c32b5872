/** Questions about people: names, who is where, the head count. */

import type { Instant, Part } from '@/lib/events/state'

import type { View } from './view'
import { fromParts } from './view-memo'

/** Also of people who are added on this device and not sent yet. Null: forgotten, or not read yet. */
export function nameOf(
  { names, unsent }: Pick<View, 'names' | 'unsent'>,
  id: string
): string | null {
  const known = names[id]
  if (known !== undefined) return known
  const added = unsent.find(({ command }) => command.name === 'add_person' && command.id === id)
  return added?.command.name === 'add_person' ? added.command.args.name : null
}

/** Two letters at most, as they stand in a disc on the map. */
export function initialsOf({ names }: Pick<View, 'names'>, id: string): string {
  const words = (names[id] ?? '').split(/\s+/).filter(Boolean)
  const letters = [words[0], words.length > 1 ? words.at(-1) : undefined]
  return letters.map((word) => [...(word ?? '')][0]?.toUpperCase() ?? '').join('')
}

export type Whereabouts = {
  personId: string
  state: 'here' | 'break'
  /** Since when they are at the tree, else since when they are here or on a break. */
  since: Instant
  part: Part | null
  tree: number | null
  row: { block: number; row: number } | null
}

/** Everybody who is counted as here, and the tree each is at. */
export const whoIsWhere = fromParts(['state'] as const, ({ state }): readonly Whereabouts[] => {
  const atTree = new Map<string, Omit<Whereabouts, 'personId' | 'state'>>()
  for (const { people, tree, row, openedAt } of Object.values(state?.claims ?? {})) {
    for (const [personId, part] of Object.entries(people)) {
      atTree.set(personId, { since: openedAt, part, tree, row })
    }
  }
  return Object.entries(state?.attendance ?? {}).map(([personId, there]) => ({
    personId,
    state: there.state,
    ...(atTree.get(personId) ?? { since: there.since, part: null, tree: null, row: null }),
  }))
})

export function headCount({ state }: Pick<View, 'state'>): number {
  return Object.keys(state?.attendance ?? {}).length
}
