/** Trees kept for a person or a pair, and trees whose big cuts are marked. */

import * as shape from '@/lib/util/shape'

import { type Folds, onlyChanges, type Predictions, refuse, when } from './family'
import { withEntry, withoutKeys } from './record'
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
  big_cuts_marked: when(marked, (state, { tree }, { commandId, personId }) => ({
    ...state,
    marked: withEntry(state.marked, tree, { mark: commandId, by: personId, photo: null }),
  })),
  big_cuts_unmarked: when(marked, (state, { tree }) => ({
    ...state,
    marked: withoutKeys(state.marked, [tree]),
  })),
}

export const dealPredictions: Predictions = {
  mark_big_cuts: (state, { args }) =>
    refuse(state.workRoundId === null && 'no_round') ?? [
      { kind: 'big_cuts_marked', body: { tree: args.tree } },
    ],
  unmark_big_cuts: (_, { args }) => [{ kind: 'big_cuts_unmarked', body: { tree: args.tree } }],
  take_back: (state, { args }) => [
    {
      kind: 'trees_taken_back',
      body: { dealsEnded: args.trees.filter((tree) => Object.hasOwn(state.deals, tree)) },
    },
  ],
}
