/** The doors by which what was written comes in, and the day is counted. */

import { always, type Use } from './door'

const noShiftYet = { none: 'refused: not_in_shift', scheduled: 'refused: not_in_shift' }

export const doorsOfPaper: Record<string, Use[]> = {
  enter_work: [
    {
      right: 'lead',
      args: () => ({ p_tree: 5, p_at: new Date().toISOString(), p_note: 'The top is left' }),
      outcome: { ...noShiftYet, else: 'ok', closed: 'refused: not_in_shift' },
    },
    {
      as: 'in the future',
      right: 'lead',
      args: () => ({ p_tree: 5, p_at: '2199-01-01T00:00:00Z' }),
      outcome: { else: 'refused: not_in_shift' },
    },
  ],
  enter_attendance: [
    {
      right: 'lead',
      args: () => ({ p_arrived_at: '2026-11-24T08:10:00Z', p_left_at: '2026-11-24T08:40:00Z' }),
      outcome: { ...noShiftYet, else: 'ok' },
    },
  ],
  notes_of_round: [{ right: 'reads-lead', args: () => ({}), outcome: always }],
  shift_record: [
    {
      right: 'reads-lead',
      args: ({ shift }) => ({ p_shift: shift }),
      outcome: { else: 'ok', none: '404 no_such_shift' },
    },
  ],
}
