/** What the commands take by which a lead enters what was written on paper. */

import * as shape from '@/lib/util/shape'

import { instant, number, orNull, text } from './shapes'

const at = orNull(instant)

export const argsOfPaper = {
  /** Without a share it is finished. */
  enter_work: shape.object({
    tree: number,
    at: instant,
    begunAt: at,
    share: orNull(number),
    note: orNull(text),
  }),
  enter_attendance: shape.object({
    arrivedAt: at,
    breaks: shape.withDefault(shape.array(shape.array(instant)), []),
    leftAt: at,
  }),
}
