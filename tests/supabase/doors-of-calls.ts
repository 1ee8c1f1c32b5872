/** Calls for help and incidents: never refused for state, so that they are the same in all of them. */

import type { Use } from './door'

const always = { else: 'ok' }

export const doorsOfCalls: Record<string, Use[]> = {
  call_for_help: [
    {
      right: 'self',
      args: ({ person }) => ({
        p_kind: 'lost_person',
        p_tree: 5,
        p_subject: person.bo,
        p_note: 'Bo',
      }),
      outcome: always,
    },
  ],
  answer_call: [{ right: 'lead', args: ({ call }) => ({ p_call: call }), outcome: always }],
  end_call: [
    {
      right: 'self',
      args: ({ call }) => ({ p_call: call, p_outcome: 'Went together' }),
      outcome: always,
    },
    {
      as: "another's",
      right: 'self',
      whose: 'bo',
      args: ({ call }) => ({ p_call: call }),
      outcome: { else: 'refused: not_yours' },
      byLead: 'ok',
    },
  ],
  write_incident: [
    {
      right: 'lead',
      args: ({ call }) => ({ p_kind: 'near_miss', p_tree: 5, p_note: 'A limb fell', p_call: call }),
      outcome: always,
    },
  ],
  read_calls: [{ right: 'reads-lead', args: () => ({}), outcome: always }],
  read_incidents: [{ right: 'reads-lead', args: () => ({}), outcome: always }],
}
