/** The last state, kept so that the next start shows something before the network answers. */

import type { State } from '@/lib/events/state'
import type { Storage } from '@/lib/sync/ports'

/** Another shape of State needs another number. */
const format = 2

export type Cold = {
  state: State
  /** Of the unsent commands, those whose event is in the state already. */
  known: readonly string[]
  heardAt: number
}

export async function readCold(storage: Storage, owner: string): Promise<Cold | null> {
  const kept = await storage.read(keyOf(owner)).catch(() => undefined)
  const isOurs = typeof kept === 'object' && kept !== null && 'format' in kept
  // Whatever has our number was written by `writeCold`.
  return isOurs && kept.format === format ? (kept as Cold & { format: number }) : null
}

/** A full disk costs the fast start and nothing else. */
export async function writeCold(storage: Storage, owner: string, cold: Cold): Promise<void> {
  await storage.write(keyOf(owner), { format, ...cold }).catch(() => {})
}

function keyOf(owner: string): string {
  return `cold|${owner}`
}
