/** Finished work looked over by a lead: passed, or reopened with what to do better. */

import * as shape from '@/lib/util/shape'

import { type Folds, type Predictions, when } from './family'
import { withEntry } from './record'
import { id, number, reopenReason } from './shapes'
import type { LookedOver, State } from './state'

/** What was found is in the part for leads and for whoever worked there; the rest hear of a reopened tree only that it is open. */
const lookedOver = shape.object({
  tree: number,
  to: shape.optional(shape.array(id)),
  result: shape.optional(shape.oneOf(['passed', 'reopened'])),
  reason: shape.optional(reopenReason),
})

export const lookingOverFolds: Folds = {
  tree_looked_over: when(lookedOver, (state, { tree, to, result, reason }, { byPersonId, at }) => {
    const found: LookedOver | null =
      result === 'reopened' && reason
        ? { result, reason, byId: byPersonId, at }
        : result === 'passed'
          ? { result }
          : null
    return {
      ...(to ? dealt(state, tree, to, byPersonId) : state),
      lookedOver: found ? withEntry(state.lookedOver, tree, found) : state.lookedOver,
    }
  }),
}

function dealt(state: State, tree: number, to: string[], by: string): State {
  return {
    ...state,
    deals: withEntry(state.deals, tree, to),
    dealtBy: withEntry(state.dealtBy, tree, by),
  }
}

export const lookingOverPredictions: Predictions = {
  look_over: (state, { args }) => {
    if (state.work[args.tree]?.state !== 'done') return { refused: [{ code: 'tree_not_done' }] }
    // To whom a reopened tree goes back, only the referee knows.
    if (args.result === 'reopened') return 'asking'
    return [{ kind: 'tree_looked_over', body: { tree: args.tree, result: 'passed' } }]
  },
}
