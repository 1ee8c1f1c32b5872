/** What became of a tree, as the backend says it. */

import * as shapes from '@/lib/events/shapes'
import * as shape from '@/lib/util/shape'

const { id, number, text, instant, dateOnly, orNull } = shapes

const thing = {
  id,
  at: instant,
  person: id,
  /** Visits, marks and looking over belong to a round; flags and photos to the time they were made. */
  round: orNull(id),
  note: orNull(text),
}
const thingOfTree = shape.union([
  shape.object({
    ...thing,
    what: shape.oneOf(['done', 'begun', 'also_worked']),
    share: orNull(number),
    with: shape.withDefault(shape.array(id), []),
    seconds: orNull(number),
    late: shape.withDefault(shape.boolean, false),
    paper: shape.withDefault(shape.boolean, false),
  }),
  shape.object({
    ...thing,
    what: shape.oneOf(['passed', 'reopened']),
    reason: orNull(shapes.reopenReason),
  }),
  shape.object({ ...thing, what: shape.exactly('mark'), endedAt: orNull(instant) }),
  shape.object({
    ...thing,
    what: shape.exactly('flag'),
    kind: shapes.flagKind,
    sign: text,
    severity: shapes.severity,
    state: shape.oneOf(['suspected', 'confirmed', 'open', 'withdrawn', 'cleared']),
    confirmedBy: orNull(id),
    endedAt: orNull(instant),
    endedBy: orNull(id),
    endedNote: orNull(text),
    doneBy: orNull(text),
    doneOn: orNull(dateOnly),
  }),
  shape.object({
    ...thing,
    what: shape.exactly('photo'),
    purpose: shape.oneOf(['flag', 'before', 'after', 'mark']),
  }),
])
export type ThingOfTree = shape.Out<typeof thingOfTree>

export const treeHistory = shape.object({
  tree: number,
  rounds: shape.array(
    shape.object({
      round: id,
      kind: shapes.roundKind,
      season: number,
      openedAt: instant,
      closedAt: orNull(instant),
      state: shape.oneOf(['unpruned', 'begun', 'done', 'left_out']),
      share: orNull(number),
    })
  ),
  things: shape.array(thingOfTree),
  /** Of people who left, too; who was forgotten has none. */
  names: shape.record(text, text),
})
export type TreeHistory = shape.Out<typeof treeHistory>
