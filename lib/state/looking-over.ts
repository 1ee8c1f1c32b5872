/** Questions about finished trees that a lead looks over. */

import type { State } from '@/lib/events/state'

import type { View } from './view'

/** Done in this round and not passed. */
export function isToLookOver(state: State, tree: number): boolean {
  return state.work[tree]?.state === 'done' && state.lookedOver[tree]?.result !== 'passed'
}

export function countToLookOver({ state }: Pick<View, 'state'>): number {
  if (!state) return 0
  return Object.keys(state.work).filter((tree) => isToLookOver(state, Number(tree))).length
}
