/** Who is counted and who is not, the same for a stop and for a count that a lead begins. */

import type { Stop } from '@/lib/events/state'
import { nameOf, type PrivatePeople, type View, whoIsWhere } from '@/lib/hooks'

export type Person = {
  id: string
  name: string
  /** The one they are at, else the last one of this shift. */
  tree: number | null
  /** The row they haul brush from. */
  row: { block: number; row: number } | null
  isAtTree: boolean
  onBreak: boolean
}

export type Counted = Person & {
  /** The lead who saw them; null: their own answer. */
  seenBy: string | null
}

export type HeadCount = { missing: readonly Person[]; found: readonly Counted[] }

/** Who was seen, and by which lead; null for who answered. */
export type Seen = ReadonlyMap<string, string | null>

export function seenInStop({ answers, seenBy }: Pick<Stop, 'answers' | 'seenBy'>): Seen {
  return new Map(Object.keys(answers).map((id) => [id, seenBy[id] ?? null]))
}

/** Who may still be up in a tree is missed first; then by name. */
export function headCountOf(view: View, seen: Seen, contacts: PrivatePeople): HeadCount {
  const everybody = whoIsWhere(view)
    .map(({ personId, tree, row, state }) => ({
      id: personId,
      name: nameOf(view, personId) ?? '',
      tree: tree ?? (row === null ? (contacts[personId]?.lastTree ?? null) : null),
      row,
      isAtTree: tree !== null,
      onBreak: state === 'break',
    }))
    .toSorted((a, b) => rankOf(a) - rankOf(b) || a.name.localeCompare(b.name))
  return {
    missing: everybody.filter(({ id }) => !seen.has(id)),
    found: everybody
      .filter(({ id }) => seen.has(id))
      .map((one) => ({ ...one, seenBy: seen.get(one.id) ?? null })),
  }
}

function rankOf({ isAtTree, onBreak }: Person): number {
  if (isAtTree) return 0
  return onBreak ? 2 : 1
}

/** What the number is made of: nobody is left out because they do not prune. */
export function kindsHere(view: View, contacts: PrivatePeople) {
  const where = whoIsWhere(view)
  const isVisitor = (id: string) => view.state?.people[id]?.role === 'visitor'
  const atWork = where.filter(({ tree, row }) => tree !== null || row !== null)
  const onBreak = where.filter((one) => one.state === 'break')
  const visitors = where.filter(({ personId }) => isVisitor(personId))
  const free = where.filter(
    (one) => !atWork.includes(one) && !onBreak.includes(one) && !visitors.includes(one)
  )
  return {
    all: where.length,
    atWork: atWork.length,
    free: free.length,
    onBreak: onBreak.length,
    visitors: visitors.length,
    minors: where.filter(({ personId }) => view.state?.minors[personId]).length,
    noPhone: where.filter(({ personId }) => contacts[personId]?.heardAt === null).length,
  }
}
