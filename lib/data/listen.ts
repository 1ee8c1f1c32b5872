/** The live channel of one topic. */

import type { Event } from '@/lib/events/event'
import * as shape from '@/lib/util/shape'

import { live } from './answers'
import type { Connection, Socket } from './client'

type Channel = ReturnType<Socket['channel']>

export type LiveEvent = Event & { more: boolean; concerns?: readonly string[] | undefined }
export type Ear = {
  heard: (event: LiveEvent) => void
  frame: () => void
  joined: () => void
  lost: () => void
}

/** How long a leave is waited for: a dead socket does not answer it. */
const leaveMs = 1_000

export function listener({ realtime }: Pick<Connection, 'realtime'>) {
  // The library gives the old channel of a topic as long as it has not left.
  let left: Promise<unknown> = Promise.resolve()

  return function listen(topic: string, ear: Ear): () => void {
    let channel: Channel | null = null
    let isOver = false
    const lose = () => {
      if (!isOver) ear.lost()
    }
    left.then(open).catch(lose)
    return () => {
      isOver = true
      const leaving = channel
      if (leaving) left = left.then(() => leave(leaving)).catch(() => {})
    }

    async function open(): Promise<void> {
      if (isOver) return
      const socket = await realtime()
      if (isOver) return
      // The answer to the library's own heartbeat: the socket lives.
      socket.onHeartbeat((status) => {
        if (status === 'ok' && !isOver) ear.frame()
      })
      channel = socket.channel(topic, { config: { private: true } })
      channel
        .on('broadcast', { event: 'event' }, ({ payload }) => {
          if (isOver) return
          const event = liveOf(payload)
          if (event) ear.heard(event)
          else ear.frame()
        })
        .on('system', {}, ({ status }: { status?: string }) => {
          if (status === 'error') lose()
        })
        .subscribe((status) => {
          if (isOver) return
          if (status === 'SUBSCRIBED') ear.joined()
          else lose()
        })
    }
  }
}

async function leave(channel: Channel): Promise<void> {
  await channel.unsubscribe(leaveMs)
  channel.teardown()
}

/** Null: a frame of garbage. */
export function liveOf(payload: unknown): LiveEvent | null {
  const known = shape.read(live, payload)
  if (!known) return null
  if (!('kind' in known.value)) return known.value
  const { command_id, person_id, by_person_id, ...rest } = known.value
  return { ...rest, commandId: command_id, personId: person_id, byPersonId: by_person_id }
}
