/** What the commands take that come after pruning: hauling brush, and looking over. */

import * as shape from '@/lib/util/shape'

import { brushGoes, id, number, orNull, reopenReason, text } from './shapes'

export const argsAfterPruning = {
  take_brush: shape.object({
    block: number,
    row: number,
    helpers: shape.withDefault(shape.array(id), []),
  }),
  finish_brush: shape.object({ claim: id, trees: shape.array(number) }),
  mark_brush: shape.object({ trees: shape.array(number), hauled: shape.boolean }),
  direct_brush: shape.object({
    block: number,
    rows: shape.array(number),
    goes: orNull(brushGoes),
  }),
  look_over: shape.object({
    tree: number,
    result: shape.oneOf(['passed', 'reopened']),
    reason: orNull(reopenReason),
    note: orNull(text),
  }),
}
