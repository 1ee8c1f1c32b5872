/** Sends the parts of an archive, in order, then the command that brings them in. Fetched when somebody has one. */

import { archiveParts } from '@/lib/data/archive'
import type { Backend } from '@/lib/data/backend'
import type { ArchivePart } from '@/lib/domain/orchard/archive'
import type { Outcome } from '@/lib/events/answer'
import type { ArgsOf } from '@/lib/events/commands'

import { type Sent, sentOf } from './sent'

export type ArchiveIn = {
  code: string
  orchard: string
  /** The manager who goes on with it. */
  person: string
  parts: readonly ArchivePart[]
  onPart?: (sent: number) => void
}

const tries = 4

type Sending = {
  backend: Backend
  id: string
  getIn: (args: ArgsOf<'bring_in_orchard'>) => Promise<Sent>
}

export async function archiveIn(
  { code, orchard, person, parts, onPart }: ArchiveIn,
  { backend, id, getIn }: Sending
): Promise<Sent> {
  const user = await backend.signIn()
  if (!user.ok) return sentOf(id, user)
  const { putArchivePart } = archiveParts(backend.read)
  for (const [part, { table, columns, rows }] of parts.entries()) {
    const put = await again(() =>
      putArchivePart({
        p_code: code,
        p_archive: id,
        p_part: part,
        p_table: table,
        p_columns: columns,
        p_rows: `[${rows.join(',')}]`,
      })
    )
    if (!put.ok) return sentOf(id, put)
    if ('refused' in put.value) return sentOf(id, { ok: true, value: put.value })
    onPart?.(part + 1)
  }
  return getIn({ code, orchard, parts: parts.length, person })
}

/** What did not come through may come through the next time. */
async function again<Value>(send: () => Promise<Outcome<Value>>): Promise<Outcome<Value>> {
  let sent = await send()
  for (let more = 1; more < tries && !sent.ok; more++) sent = await send()
  return sent
}
