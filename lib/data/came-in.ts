/** The shapes of what only leads look at: what came in otherwise than by a claim, why tools failed. */

import * as shapes from '@/lib/events/shapes'
import * as shape from '@/lib/util/shape'

const { id, number, text, instant } = shapes

export const cameIn = shape.object({
  visits: shape.array(
    shape.object({
      id,
      tree: number,
      person: id,
      result: shape.oneOf(['done', 'begun', 'also_worked']),
      at: instant,
      late: shape.boolean,
      withoutClaim: shape.boolean,
      lacked: shape.array(text),
    })
  ),
  handIns: shape.array(
    shape.object({
      id,
      person: id,
      name: shapes.orNull(text),
      at: instant,
      things: shape.array(shape.object({ name: text, tree: shapes.orNull(number) })),
    })
  ),
})
export type CameIn = shape.Out<typeof cameIn>

/** By the number of the tool. */
export const toolFaults = shape.record(
  text,
  shape.object({ failed: shape.array(text), note: shapes.orNull(text), by: id, at: instant })
)
export type ToolFaults = shape.Out<typeof toolFaults>
