/** The doors for what comes after pruning: looking over, and the brush. */

import type { Use } from './door'

export const doorsAfterPruning: Record<string, Use[]> = {
  look_over: [
    {
      right: 'lead',
      args: () => ({ p_tree: 20, p_result: 'passed' }),
      outcome: {
        else: 'refused: tree_not_done',
        none: 'refused: tree_not_done',
        open: 'ok',
        stopped: 'ok',
        closed: 'ok',
      },
    },
    {
      as: 'reopened',
      right: 'lead',
      args: () => ({ p_tree: 20, p_result: 'reopened', p_reason: 'stubs_left', p_note: 'East' }),
      outcome: { else: 'refused: tree_not_done', open: 'ok', stopped: 'ok', closed: 'ok' },
    },
  ],
  trees_to_look_over: [{ right: 'reads-lead', args: () => ({}), outcome: { else: 'ok' } }],
}
