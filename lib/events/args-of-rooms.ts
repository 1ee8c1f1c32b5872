/** What the commands take by which a manager keeps rounds, and forgets people. */

import * as shape from '@/lib/util/shape'

import { dateOnly, id, number, roundKind, text } from './shapes'

export const argsOfRooms = {
  open_round: shape.object({
    kind: roundKind,
    season: number,
    species: shape.array(text),
    from: dateOnly,
    to: dateOnly,
  }),
  /** The planned shifts of the round are called off with it: all of them are named. */
  close_round: shape.object({ round: id, callOff: shape.withDefault(shape.array(id), []) }),
  reopen_round: shape.object({ round: id }),
  forget_person: shape.object({ subject: id }),
}
