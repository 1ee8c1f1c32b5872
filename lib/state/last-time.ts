/** What this device knew last time, for a start before the network answers. */

import type { Membership } from '@/lib/data/backend'
import type { Storage } from '@/lib/sync/ports'

export type LastTime = {
  userId: string
  memberships: Membership[]
  chosen: Member | null
}

export const noLastTime: LastTime = { userId: '', memberships: [], chosen: null }

export async function readLastTime(storage: Storage, address: string): Promise<LastTime> {
  const known = await storage.read(keyOf(address)).catch(() => undefined)
  // Only `keepLastTime` writes under this key.
  return (known as LastTime | undefined) ?? noLastTime
}

/** A full disk costs the fast start and nothing else. */
export async function keepLastTime(storage: Storage, address: string, last: LastTime) {
  await storage.write(keyOf(address), last).catch(() => {})
}

/** One person in one orchard. */
export type Member = Pick<Membership, 'orchardId' | 'personId'>

export function isSameMember(one: Member, other: Member): boolean {
  return one.orchardId === other.orchardId && one.personId === other.personId
}

function keyOf(address: string): string {
  return `last|${address}`
}
