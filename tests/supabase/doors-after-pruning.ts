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
  take_brush: [
    {
      right: 'self',
      args: () => ({ p_block: 1, p_row: 2 }),
      outcome: {
        else: 'ok',
        none: 'refused: shift_not_open',
        scheduled: 'refused: shift_not_open',
        stopped: 'refused: stopped',
        closed: 'refused: shift_not_open',
      },
    },
  ],
  finish_brush: [
    {
      right: 'self',
      whose: 'lead',
      args: ({ brush }) => ({ p_claim: brush, p_trees: [33] }),
      outcome: { else: '404 no_such_claim', open: 'ok', stopped: 'ok', closed: 'ok' },
    },
  ],
  mark_brush: [
    { right: 'lead', args: () => ({ p_trees: [20], p_hauled: true }), outcome: { else: 'ok' } },
  ],
  direct_brush: [
    {
      right: 'lead',
      args: () => ({ p_block: 1, p_rows: [1, 2], p_goes: 'burn' }),
      outcome: { else: 'ok' },
    },
  ],
  trees_to_look_over: [{ right: 'reads-lead', args: () => ({}), outcome: { else: 'ok' } }],
}
