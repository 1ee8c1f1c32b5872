/** Who has not answered a stop, and where they were. */

import type { Stop } from '@/lib/events/state'
import { nameOf, type View, whoIsWhere } from '@/lib/hooks'

export type Unanswered = { id: string; name: string; tree: number | null }

/** Who may still be up in a tree comes first. */
export function unanswered(view: View, { answers }: Pick<Stop, 'answers'>): Unanswered[] {
  return whoIsWhere(view)
    .filter(({ personId }) => answers[personId] === undefined)
    .map(({ personId, tree }) => ({ id: personId, name: nameOf(view, personId) ?? '', tree }))
    .toSorted(
      (a, b) => Number(b.tree !== null) - Number(a.tree !== null) || a.name.localeCompare(b.name)
    )
}
