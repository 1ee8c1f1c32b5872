/** A whole orchard in parts, on its way out or in. */

import type { Outcome } from '@/lib/events/answer'
import * as shapes from '@/lib/events/shapes'
import * as shape from '@/lib/util/shape'

const { number, text } = shapes

const taken = shape.object({
  head: number,
  table: text,
  columns: shape.array(text),
  rows: shape.array(text),
  next: shapes.orNull(shape.object({ table: text, from: number })),
})
export type Taken = shape.Out<typeof taken>

const put = shape.union([
  shape.object({ refused: shape.array(shape.object({ code: text })) }),
  shape.object({ part: number }),
])

/** Photos by the dozen, on a weak signal. */
const partLimitMs = 60_000

type Read = <Value>(
  asked: { name: string; values: Record<string, unknown>; limitMs?: number },
  valueShape: shape.Shape<Value>
) => Promise<Outcome<Value>>

export function archiveParts(read: Read) {
  return {
    takeOut: (orchardId: string, table: string | null, from: number) => {
      const values = { p_orchard: orchardId, p_table: table, p_from: from }
      return read({ name: 'take_out', values, limitMs: partLimitMs }, taken)
    },
    putArchivePart: (values: {
      p_code: string
      p_archive: string
      p_part: number
      p_table: string
      p_columns: readonly string[]
      p_rows: string
    }) => read({ name: 'put_archive_part', values, limitMs: partLimitMs }, put),
  }
}
