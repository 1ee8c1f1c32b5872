/** People who are found, and what came in otherwise than by a claim. A part of `doors`. */

import type { Use } from './door'

export const doorsOfPeople: Record<string, Use[]> = {
  found_person: [
    { right: 'lead', args: ({ person }) => ({ p_subject: person.bo }), outcome: { else: 'ok' } },
  ],
  accept_hand_in: [
    {
      right: 'lead',
      args: ({ handIn }) => ({ p_hand_in: handIn }),
      outcome: { else: 'ok' },
    },
  ],
  tool_faults: [{ right: 'reads-lead', args: () => ({}), outcome: { else: 'ok' } }],
  came_in: [{ right: 'reads-lead', args: () => ({}), outcome: { else: 'ok' } }],
}
