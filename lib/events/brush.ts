/** Cut wood: who hauls which row, what is carried away, and where it goes. */

import * as shape from '@/lib/util/shape'

import { fromClaim } from './claims'
import { type Folds, onlyChanges, type Predictions, when } from './family'
import { pruned } from './look-ups'
import { withEntry, withoutKeys } from './record'
import { rowKey } from './row-key'
import { brushGoes, number, orNull } from './shapes'

const directed = shape.object({ block: number, rows: shape.array(number), goes: orNull(brushGoes) })

export const brushFolds: Folds = {
  brush_taken: fromClaim,
  brush_finished: onlyChanges,
  brush_marked: onlyChanges,
  brush_directed: when(directed, (state, { block, rows, goes }) => {
    const keys = rows.map((row) => rowKey(block, row))
    const others = withoutKeys(state.brushGoes, keys)
    return {
      ...state,
      brushGoes: goes ? keys.reduce((all, key) => withEntry(all, key, goes), others) : others,
    }
  }),
}

export const brushPredictions: Predictions = {
  finish_brush: (state, { personId, args }) => {
    const part = state.claims[args.claim]?.people[personId]
    if (part !== 'holder' && part !== 'helper') return 'asking'
    return [
      {
        kind: 'brush_finished',
        body: { claimsEnded: [args.claim], hauled: pruned(state, args.trees) },
      },
    ]
  },
  mark_brush: (state, { args }) => {
    if (state.workRoundId === null) return { refused: [{ code: 'no_round' }] }
    const body = args.hauled
      ? { hauled: pruned(state, args.trees) }
      : { lying: args.trees.filter((tree) => Object.hasOwn(state.hauled, tree)) }
    return [{ kind: 'brush_marked', body }]
  },
  direct_brush: (state, { args }) => {
    if (state.workRoundId === null) return { refused: [{ code: 'no_round' }] }
    return [{ kind: 'brush_directed', body: args }]
  },
}
