/** What bringing an orchard in takes. A part of `commandArgs`. */

import * as shape from '@/lib/util/shape'

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
}
