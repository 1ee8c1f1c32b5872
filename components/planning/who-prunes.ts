/** Who is at a tree, or will take one: what a pace is reckoned with. */

import { type View, whoIsWhere } from '@/lib/hooks'
import { lacksOf } from '../crew/readiness'

/** Holders and helpers, and volunteers who lack nothing; whoever is on a break comes back. Who hauls brush does not count. */
export function whoPrunes(view: View): string[] {
  const { state } = view
  const hauling = Object.values(state?.claims ?? {}).filter(({ kind }) => kind !== 'prune')
  const elsewhere = new Set(hauling.flatMap(({ people }) => Object.keys(people)))
  return whoIsWhere(view)
    .filter(({ personId, part }) => {
      if (elsewhere.has(personId) || part === 'learner') return false
      if (part !== null) return true
      const lacks = lacksOf(view, personId).filter((code) => code !== 'on_break')
      return state?.people[personId]?.role === 'volunteer' && lacks.length === 0
    })
    .map(({ personId }) => personId)
}
