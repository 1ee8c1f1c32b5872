/** To whom trees can be dealt, those who are likely meant first. */

import { type View, whoIsWhere } from '@/lib/hooks'
import { isAtWork } from './crew-order'
import { lacksOf } from './readiness'

const shownAtOnce = 2

/** Beside the deal button: who is chosen, then who can start and has no tree and no deal. */
export function firstChoices(view: View, chosen: readonly string[]): string[] {
  const dealtTo = new Set(Object.values(view.state?.deals ?? {}).flat())
  const rankOf = (id: string) => 2 * Number(lacksOf(view, id).length > 0) + Number(dealtTo.has(id))
  const free = whoIsWhere(view)
    .filter((one) => one.state === 'here' && !isAtWork(one) && mayPrune(view, one.personId))
    .map(({ personId }) => personId)
    .toSorted((a, b) => rankOf(a) - rankOf(b))
  const others = free.filter((id) => !chosen.includes(id))
  return [...chosen, ...others.slice(0, Math.max(0, shownAtOnce - chosen.length))]
}

/** Everybody, those who are here first. */
export function allChoices(view: View): { personId: string; isHere: boolean }[] {
  const here = view.state?.attendance ?? {}
  return Object.keys(view.state?.people ?? {})
    .filter((id) => mayPrune(view, id))
    .map((personId) => ({ personId, isHere: Object.hasOwn(here, personId) }))
    .toSorted(
      (a, b) =>
        Number(b.isHere) - Number(a.isHere) ||
        (view.names[a.personId] ?? '').localeCompare(view.names[b.personId] ?? '')
    )
}

export function mayPrune({ state }: Pick<View, 'state'>, personId: string): boolean {
  const person = state?.people[personId]
  return person?.admitted === true && person.role !== 'visitor'
}
