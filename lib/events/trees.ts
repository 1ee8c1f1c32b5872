/** The ground itself is in the sheet, which is fetched anew; here is what else a change of it does. */

import * as shape from '@/lib/util/shape'

import { type Folds, onlyChanges, when } from './family'
import { withoutKeys } from './record'
import { rowKey } from './row-key'
import { number } from './shapes'

const numbered = shape.object({
  block: number,
  rows: shape.withDefault(shape.array(number), []),
})

export const treeFolds: Folds = {
  trees_brought_in: onlyChanges,
  trees_changed: onlyChanges,
  tree_added: onlyChanges,
  tree_moved: onlyChanges,
  /** `rows`: where the wood of these goes was said by numbers that are others now. */
  trees_numbered: when(numbered, (state, { block, rows }) => ({
    ...state,
    brushGoes: withoutKeys(
      state.brushGoes,
      rows.map((row) => rowKey(block, row))
    ),
  })),
  block_changed: onlyChanges,
  block_removed: onlyChanges,
  cultivar_written: onlyChanges,
  cultivar_removed: onlyChanges,
  trees_left_out: onlyChanges,
}
