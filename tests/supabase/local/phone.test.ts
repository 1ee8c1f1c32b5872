import { EventEmitter } from 'node:events'
import { expect, test, vi } from 'vitest'
import type { WebSocket } from 'ws'
import { Channels } from '../../../supabase/local/realtime/channels'
import { Phone } from '../../../supabase/local/realtime/phone'

function socket() {
  const sent: string[] = []
  const parts = {
    OPEN: 1,
    readyState: 1,
    bufferedAmount: 0,
    sent,
    send: (frame: string | Buffer) => sent.push(String(frame)),
    terminate: vi.fn(),
    close: vi.fn(),
  }
  return Object.assign(new EventEmitter(), parts)
}

async function join(topic: string) {
  const channels = new Channels()
  const its = socket()
  const granted = { state: 'granted', expiresAt: Date.now() + 3_600_000 } as const
  // The parts of a socket that a phone uses.
  const phone = new Phone(its as unknown as WebSocket, channels, async () => granted, vi.fn())
  its.emit('message', `["1","1","realtime:${topic}","phx_join",{"config":{"private":true}}]`, false)
  await expect.poll(() => its.sent.length).toBe(1)
  return { channels, its, phone }
}

const notification = (topic: string) =>
  JSON.stringify({ topic, event: 'note', id: 'a', payload: { n: 1 } })

test('a broadcast goes to the topic alone, in the shape the client reads', async () => {
  const { channels, its } = await join('here')

  channels.announce(notification('elsewhere'))
  channels.announce(notification('here'))

  expect(its.sent.slice(1).map((frame) => JSON.parse(frame))).toEqual([
    [
      null,
      null,
      'realtime:here',
      'broadcast',
      { type: 'broadcast', event: 'note', payload: { n: 1 }, meta: { id: 'a' } },
    ],
  ])
})

test('a phone that lags by megabytes is dropped instead of filling our memory', async () => {
  const { channels, its } = await join('here')

  its.bufferedAmount = 5_000_000
  channels.announce(notification('here'))

  expect(its.terminate).toHaveBeenCalledOnce()
  expect(its.sent).toHaveLength(1)
})

test('a phone that has been silent for longer than two heartbeats is dropped', async () => {
  const { its, phone } = await join('here')

  phone.endIfSilent(Date.now() + 30_000)
  expect(its.terminate).not.toHaveBeenCalled()
  phone.endIfSilent(Date.now() + 70_000)

  expect(its.terminate).toHaveBeenCalledOnce()
})
