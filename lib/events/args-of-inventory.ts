/** What bringing an orchard in takes. A part of `commandArgs`. */

import * as shape from '@/lib/util/shape'

import { id, number, text } from './shapes'

const rows = shape.array(shape.anything)

export const argsOfInventory = {
  /** The rows as supabase/README.md has them; the referee names every wrong one. */
  bring_in_trees: shape.object({
    blocks: rows,
    cultivars: rows,
    trees: rows,
    /** Of trees that are there. */
    changes: shape.withDefault(rows, []),
  }),
  /** An archive whose parts are there, and which of its managers goes on with it. */
  bring_in_orchard: shape.object({ code: text, orchard: id, parts: number, person: id }),
}
