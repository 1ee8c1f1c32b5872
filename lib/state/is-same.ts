/** What did not change keeps its identity, and is not drawn again. */

import type { View } from './view'

/** The list that was there, if nothing in it is new: what did not change is not drawn again. */
export function same<Item>(before: readonly Item[], after: readonly Item[]): readonly Item[] {
  const isTheSame = before.length === after.length && before.every((item, at) => item === after[at])
  return isTheSame ? before : after
}

export function isSame(before: View, after: View): boolean {
  return Object.keys(after).every((key) => before[key as keyof View] === after[key as keyof View])
}
