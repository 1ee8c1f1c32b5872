/** What runs once somebody is in, in a file of its own: whoever only joins need not wait for it. */

import type { Membership } from '@/lib/data/backend'
import { openOutbox } from '@/lib/sync/outbox'
import type { Bell } from '@/lib/sync/ports'

import type { Device, SessionBackend } from './session'

export { openSession } from './session'

type OtherParts = Device & {
  backend: Pick<SessionBackend, 'as'>
  bell: Bell
  userId: string
  membership: Membership
  owner: string
}

/** One phone serves two people: what either has not sent goes out, whoever is chosen. Returns what ends it. */
export function sendForOther(parts: OtherParts): () => void {
  const { bell, membership } = parts
  const server = parts.backend.as(parts.userId)
  const outbox = openOutbox({
    ...parts,
    server,
    changed: () => {},
    isOut: async () => {
      const beat = await server.heartbeat(membership.orchardId, membership.personId, 0)
      if (beat.ok) return 'in'
      return beat.fault === 'not_allowed' && beat.code !== 'not_admitted' ? 'out' : 'unknown'
    },
    signedOut: () => {},
  })
  return () => {
    outbox.close()
    bell.close()
  }
}
