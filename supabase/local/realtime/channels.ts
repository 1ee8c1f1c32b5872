/** Who has joined which topic, and what is sent to all of them. */
import { z } from 'zod'
import type { Phone } from './phone'

const announced = z.object({
  topic: z.string(),
  event: z.string(),
  id: z.string(),
  payload: z.record(z.string(), z.unknown()),
})

export class Channels {
  private readonly members = new Map<string, Set<Phone>>()

  join(topic: string, phone: Phone): void {
    const members = this.members.get(topic) ?? new Set()
    this.members.set(topic, members.add(phone))
  }

  leave(topic: string, phone: Phone): void {
    const members = this.members.get(topic)
    members?.delete(phone)
    if (members?.size === 0) this.members.delete(topic)
  }

  /** A notification of the database, written once for all who hear it. */
  announce(notification: string): void {
    const { topic, event, id, payload } = announced.parse(JSON.parse(notification))
    const members = this.members.get(topic)
    if (!members) return
    const message = { type: 'broadcast', event, payload, meta: { id } }
    const frame = Buffer.from(
      JSON.stringify([null, null, `realtime:${topic}`, 'broadcast', message])
    )
    for (const phone of members) phone.hear(frame)
  }
}
