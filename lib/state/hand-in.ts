/** What somebody did before they were put out, for a lead to accept: without photos, and taken once. */

import type { Outbox } from '@/lib/sync/outbox'
import type { Kept, Random, Storage } from '@/lib/sync/ports'

import type { Send } from './sending'
import type { Sent } from './sent'

type HandInParts = {
  storage: Storage
  random: Random
  owner: string
  outbox: Pick<Outbox, 'dismiss'>
  send: Send
}

export async function handInWork(
  { storage, random, owner, outbox, send }: HandInParts,
  unsent: readonly Kept[]
): Promise<Sent> {
  const handedIn = unsent.filter(({ command }) => command.name !== 'add_photo')
  const work = handedIn.map(({ command: { orchardId: _, ...command }, at }) => ({ ...command, at }))
  // When the answer was lost, the same is asked again: under another id it would be a second one.
  const key = `hand-in|${owner}`
  const kept = await storage.read(key).catch(() => undefined)
  const id = typeof kept === 'string' ? kept : random.id()
  await storage.write(key, id).catch(() => {})

  const sent = await send('hand_in', { work }, { id })
  if (sent.state === 'accepted') {
    await Promise.all(handedIn.map(({ seq }) => outbox.dismiss(seq)))
  }
  return sent
}
