/** The doors of the manager's rooms: rounds that end, what is looked up, and who is forgotten. */

import { always, nothing, type Use } from './door'

const closing = { else: 'ok', open: 'refused: shift_open', stopped: 'refused: shift_open' }

export const doorsOfRooms: Record<string, Use[]> = {
  close_round: [
    {
      right: 'manager',
      args: ({ round }) => ({ p_round: round }),
      outcome: { ...closing, scheduled: 'refused: shifts_planned' },
    },
    {
      as: 'and calls off what is planned',
      right: 'manager',
      args: ({ round, shift }) => ({ p_round: round, p_call_off: [shift] }),
      outcome: closing,
    },
  ],
  reopen_round: [{ right: 'manager', args: ({ round }) => ({ p_round: round }), outcome: always }],
  forget_person: [
    {
      as: 'who is here',
      right: 'manager',
      args: ({ person }) => ({ p_subject: person.bo }),
      outcome: {
        else: 'ok',
        open: 'refused: still_at_tree, still_has_tools, still_here',
        stopped: 'refused: still_at_tree, still_has_tools, still_here',
      },
    },
    {
      as: 'who left',
      right: 'manager',
      args: ({ person }) => ({ p_subject: person.fay }),
      outcome: always,
    },
    {
      as: 'whose work waits',
      right: 'manager',
      args: ({ person }) => ({ p_subject: person.gus }),
      outcome: { else: 'refused: work_handed_in' },
    },
  ],
  before_forgetting: [
    {
      right: 'reads-manager',
      args: ({ person }) => ({ p_subject: person.bo }),
      outcome: always,
    },
  ],
  people_who_left: [{ right: 'reads-manager', args: nothing, outcome: always }],
  audit_trail: [
    { right: 'reads-manager', args: nothing, outcome: always },
    {
      as: 'of a tree, a person, some kinds and a day',
      right: 'reads-manager',
      args: ({ person }) => ({
        p_before: 1000,
        p_about: person.ann,
        p_tree: 20,
        p_kinds: ['tree_finished'],
        p_day: '2026-11-24',
      }),
      outcome: always,
      anyIds: true,
    },
  ],
  read_invites: [{ right: 'reads-manager', args: nothing, outcome: always }],
  read_rounds: [{ right: 'reads-lead', args: nothing, outcome: always }],
  read_shifts: [{ right: 'reads-lead', args: nothing, outcome: always }],
  work_times: [{ right: 'reads-lead', args: nothing, outcome: always }],
  volunteer_hours: [
    { right: 'reads-lead', args: nothing, outcome: always },
    { as: 'of a season', right: 'reads-lead', args: () => ({ p_season: 2026 }), outcome: always },
  ],
  my_hours: [{ right: 'own', args: nothing, outcome: always }],
  tree_history: [{ right: 'member', args: () => ({ p_tree: 20 }), outcome: always }],
}
