/** Trees kept for a person or a pair, and trees whose big cuts a lead marked. */

import * as shape from '@/lib/util/shape'

import { type Folds, onlyChanges, type Predictions, when } from './family'
import { withEntry } from './record'
import { id, number } from './shapes'

const dealt = shape.object({ trees: shape.array(number), to: shape.array(id) })
const marked = shape.object({ tree: number })

export const dealFolds: Folds = {
  trees_dealt: when(dealt, (state, { trees, to }, { byPersonId }) => ({
    ...state,
    deals: { ...state.deals, ...Object.fromEntries(trees.map((tree) => [tree, to])) },
    dealtBy: { ...state.dealtBy, ...Object.fromEntries(trees.map((tree) => [tree, byPersonId])) },
  })),
  trees_taken_back: onlyChanges,
  big_cuts_marked: when(marked, (state, { tree }) => ({
    ...state,
    marked: withEntry(state.marked, tree, true as const),
  })),
}

export const dealPredictions: Predictions = {
  take_back: (state, { args }) => [
    {
      kind: 'trees_taken_back',
      body: { dealsEnded: args.trees.filter((tree) => Object.hasOwn(state.deals, tree)) },
    },
  ],
}
