/** Reads a whole orchard in parts, all of one moment. Fetched when a manager takes one out. */

import { archiveParts, type Taken } from '@/lib/data/archive'
import type { Backend } from '@/lib/data/backend'
import type { ArchivePart } from '@/lib/domain/orchard/archive'
import type { Outcome } from '@/lib/events/answer'

/** `moved`: people work so fast that no moment could be read whole. */
export type TakenOut = Outcome<ArchivePart[]> | { ok: false; fault: 'moved' }

const tries = 3

type Wish = {
  /** Null: all there are. */
  tables: readonly string[] | null
  onPart?: ((rows: number) => void) | undefined
}

export async function archiveOut(
  backend: Pick<Backend, 'read'>,
  orchardId: string,
  wish: Wish
): Promise<TakenOut> {
  const { takeOut } = archiveParts(backend.read)
  const take: Take = (table, from) => takeOut(orchardId, table, from)
  for (let attempt = 0; attempt < tries; attempt++) {
    const taken = await ofOneMoment(take, wish)
    if (taken.ok || taken.fault !== 'moved') return taken
  }
  return { ok: false, fault: 'moved' }
}

type Take = (table: string | null, from: number) => Promise<Outcome<Taken>>

async function ofOneMoment(take: Take, { tables, onPart }: Wish): Promise<TakenOut> {
  const parts: ArchivePart[] = []
  const left = [...(tables?.slice(1) ?? [])]
  let next: Taken['next'] | { table: null; from: 0 } = { table: tables?.[0] ?? null, from: 0 }
  let head: number | null = null
  let rows = 0
  while (next !== null) {
    const taken: Outcome<Taken> = await take(next.table, next.from)
    if (!taken.ok) return taken
    const { value } = taken
    if (head !== null && value.head !== head) return { ok: false, fault: 'moved' }
    head = value.head
    parts.push({ table: value.table, columns: value.columns, rows: value.rows })
    rows += value.rows.length
    onPart?.(rows)
    next = value.next
    if (tables && next?.table !== value.table) {
      const table = left.shift()
      next = table === undefined ? null : { table, from: 0 }
    }
  }
  return { ok: true, value: parts }
}
