/** What is read of the weather: the hours to come, and what leads excepted. */

import * as shapes from '@/lib/events/shapes'
import * as shape from '@/lib/util/shape'

const { dateOnly, id, instant, orNull, text } = shapes

const measure = shape.nullable(shape.number)

export const forecast = shape.nullable(
  shape.object({
    id,
    /** From when, temperature, humidity, wind, gust, rain. */
    hours: shape.array(shape.tuple([instant, measure, measure, measure, measure, measure])),
    broughtBy: id,
    broughtAt: instant,
  })
)
export type Forecast = shape.Out<typeof forecast>

export const closeWatch = shape.object({
  /** On how many days before today each person was here in this round. */
  worked: shape.record(text, shape.integer),
  /** The highest that was written down, by day. */
  highs: shape.array(shape.tuple([dateOnly, shape.number])),
})
export type CloseWatchRead = shape.Out<typeof closeWatch>

export const exceptions = shape.array(
  shape.object({
    id,
    shiftDate: dateOnly,
    what: text,
    lifts: shape.array(text),
    because: text,
    note: orNull(text),
    madeBy: id,
    madeAt: instant,
    endedAt: orNull(instant),
  })
)
export type ExceptionRead = shape.Out<typeof exceptions>[number]
