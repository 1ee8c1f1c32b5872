/** The doors by which a whole orchard goes out and comes in. A part of `doors`. */

import { always, type Use } from './door'

export const doorsOfArchives: Record<string, Use[]> = {
  take_out: [{ right: 'reads-manager', args: () => ({ p_table: 'trees' }), outcome: always }],
  put_archive_part: [
    {
      right: 'anybody',
      args: ({ code, archive }) => ({
        p_code: code.setUp,
        p_archive: archive,
        p_part: 9,
        p_table: 'blocks',
        p_columns: ['no'],
        p_rows: '[]',
      }),
      outcome: always,
    },
  ],
  bring_in_orchard: [
    {
      right: 'anybody',
      args: ({ code, archive }) => ({
        p_code: code.setUp,
        p_command: archive,
        p_orchard: archive,
        p_parts: 3,
        p_person: archive,
      }),
      outcome: always,
    },
    {
      as: 'where it is',
      right: 'anybody',
      args: ({ code, archive, orchard }) => ({
        p_code: code.setUp,
        p_command: archive,
        p_orchard: orchard,
        p_parts: 3,
        p_person: archive,
      }),
      outcome: { else: 'refused: orchard_here' },
    },
  ],
}
