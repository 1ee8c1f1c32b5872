/** The doors of flags: never refused for state, so that they are the same in all of them. */

import { always, type Use } from './door'

export const doorsOfFlags: Record<string, Use[]> = {
  flag_tree: [
    {
      right: 'self',
      args: () => ({ p_tree: 6, p_kind: 'disease', p_sign: 'gum', p_severity: 'low' }),
      outcome: always,
    },
    {
      as: 'hazard on a tree in progress',
      right: 'self',
      args: () => ({
        p_tree: 2,
        p_kind: 'arborist',
        p_sign: 'hanging_limb',
        p_severity: 'danger_now',
      }),
      outcome: always,
    },
    {
      as: 'hazard with its reasons',
      right: 'self',
      args: () => ({
        p_tree: 6,
        p_kind: 'arborist',
        p_sign: 'too_high_or_thick',
        p_severity: 'high',
        p_reasons: [{ code: 'limb_thick', seen: true, value: 14, limit: 10 }],
        p_limb: { cm: 14, bearingDeg: 90 },
      }),
      outcome: always,
    },
  ],
  withdraw_flag: [
    { right: 'self', args: ({ flag }) => ({ p_flag: flag }), outcome: always },
    {
      as: "another's",
      right: 'self',
      whose: 'bo',
      args: ({ flag }) => ({ p_flag: flag, p_note: 'A wound' }),
      outcome: { else: 'refused: not_yours' },
      byLead: 'ok',
    },
    {
      as: 'a hazard of another',
      right: 'self',
      whose: 'bo',
      args: ({ hazard }) => ({ p_flag: hazard }),
      outcome: { else: 'refused: not_yours' },
      byLead: 'refused: only_manager_clears',
    },
  ],
  confirm_flag: [
    {
      right: 'lead',
      args: ({ flag }) => ({ p_flag: flag, p_sign: 'canker', p_severity: 'high' }),
      outcome: always,
    },
  ],
  follow_up_flag: [
    {
      right: 'lead',
      args: ({ flag }) => ({ p_flag: flag, p_note: 'Look again on Friday' }),
      outcome: always,
    },
  ],
  change_keep_out: [
    {
      right: 'lead',
      args: ({ hazard }) => ({ p_flag: hazard, p_keep_out_m: 3 }),
      outcome: always,
    },
  ],
  answer_keep_out: [{ right: 'self', args: ({ hazard }) => ({ p_flag: hazard }), outcome: always }],
  clear_flag: [
    {
      right: 'manager',
      args: ({ hazard }) => ({
        p_flag: hazard,
        p_done: 'Limb lowered',
        p_done_by: 'Tall Oak Tree Care',
        p_done_on: '2026-11-20',
      }),
      outcome: always,
    },
  ],

  flag_details: [
    {
      right: 'reads-lead',
      args: ({ flag }) => ({ p_flags: [flag] }),
      outcome: always,
      anyIds: true,
    },
  ],
  my_flags: [{ right: 'own', args: () => ({}), outcome: always }],
}
