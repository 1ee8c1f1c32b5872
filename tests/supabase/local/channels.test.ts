import type { RealtimeChannel, SupabaseClient } from '@supabase/supabase-js'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import WebSocket from 'ws'
import { makeTokens } from '../../../supabase/local/http/tokens'
import { engines, type TestDatabase } from '../../support/engines'
import { fixtures, hookMs } from './fixtures'
import { openHost, phone, type RunningHost, secret, signedIn } from './open-host'

type Heard = { states: string[]; payloads: Record<string, unknown>[]; channel: RealtimeChannel }

/** With a token of its own the client does not renew it. */
async function listen(
  client: SupabaseClient,
  topic: string,
  { isPrivate = true, token }: { isPrivate?: boolean; token?: string } = {}
): Promise<Heard> {
  await client.realtime.setAuth(token)
  const states: string[] = []
  const payloads: Record<string, unknown>[] = []
  const channel = client
    .channel(topic, { config: { private: isPrivate } })
    .on('broadcast', { event: 'note' }, ({ payload }) => payloads.push(payload))
    .subscribe((state) => states.push(state))
  return { states, payloads, channel }
}

describe.each(engines)('channels on $name', ({ open }) => {
  let db: TestDatabase
  let running: RunningHost
  beforeAll(async () => {
    db = await open(fixtures)
    running = await openHost(db.engine)
  }, hookMs)
  afterAll(async () => {
    await running.host.close()
    await db.close()
  })

  test('what the policy lets a person see they hear, each once and in order', async () => {
    const ann = await signedIn(running)
    const bo = await signedIn(running)
    const heard = await Promise.all([ann, bo].map(({ client }) => listen(client, 'notes')))
    await expect
      .poll(() => heard.map(({ states }) => states[0]))
      .toEqual(['SUBSCRIBED', 'SUBSCRIBED'])

    for (const words of ['one', 'two', 'three'])
      await ann.client.rpc('add_note', { p_words: words })

    for (const { payloads } of heard) {
      await expect.poll(() => payloads.map(({ words }) => words)).toEqual(['one', 'two', 'three'])
    }
    await Promise.all([ann, bo].map(({ client }) => client.removeAllChannels()))
  })

  test("somebody else's topic, public channels and people without a sign-in are refused", async () => {
    const ann = await signedIn(running)
    const bo = await signedIn(running)

    const heard = await Promise.all([
      listen(ann.client, `notes:${bo.userId}`),
      listen(bo.client, 'notes', { isPrivate: false }),
      listen(phone(running), 'notes'),
      listen(ann.client, `notes:${ann.userId}`),
    ])

    await expect
      .poll(() => heard.map(({ states }) => states[0]))
      .toEqual(['CHANNEL_ERROR', 'CHANNEL_ERROR', 'CHANNEL_ERROR', 'SUBSCRIBED'])
    expect(
      await db.asOwner(`select count(*) from realtime.messages where event = 'probe'`)
    ).toEqual([{ count: 0 }])
    for (const { channel } of heard) await channel.unsubscribe()
  })

  test('who has left hears nothing more', async () => {
    const ann = await signedIn(running)
    const bo = await signedIn(running)
    const left = await listen(ann.client, 'notes')
    const stayed = await listen(bo.client, 'notes')
    await expect
      .poll(() => [left, stayed].map(({ states }) => states[0]))
      .toEqual(['SUBSCRIBED', 'SUBSCRIBED'])

    expect(await left.channel.unsubscribe()).toBe('ok')
    await bo.client.rpc('add_note', { p_words: 'after leaving' })

    await expect.poll(() => stayed.payloads.map(({ words }) => words)).toEqual(['after leaving'])
    expect(left.payloads).toEqual([])
    const again = await listen(ann.client, 'notes')
    await expect.poll(() => again.states).toEqual(['SUBSCRIBED'])
    await Promise.all([ann, bo].map(({ client }) => client.removeAllChannels()))
  })

  test('frames of garbage are answered or dropped, and others hear on', async () => {
    const { client } = await signedIn(running)
    const heard = await listen(client, 'notes')
    await expect.poll(() => heard.states).toEqual(['SUBSCRIBED'])
    const socket = await rawSocket(running)
    const answers: string[] = []
    socket.on('message', (data) => answers.push(String(data)))

    for (const frame of ['', 'x', '{}', '[]', '[1,2,3,4,5]', '[null,"1","t","e",null,1]']) {
      socket.send(frame)
    }
    socket.send(Buffer.from([3, 1, 2, 3]))
    socket.send('["1","2","realtime:notes","phx_join",7]')
    socket.send('["1","3","realtime:notes","broadcast",{"event":"note","payload":{}}]')
    socket.send('[null,"4","phoenix","heartbeat",{}]')

    await expect.poll(() => answers.length).toBe(3)
    expect(answers.map((answer) => JSON.parse(answer)[4].status)).toEqual(['error', 'error', 'ok'])
    const closed = new Promise<number>((resolve) => socket.on('close', resolve))
    for (let i = 0; i < 30; i += 1) socket.send('garbage')
    expect(await closed).toBe(1003)
    await client.rpc('add_note', { p_words: 'still here' })
    await expect.poll(() => heard.payloads.map(({ words }) => words)).toEqual(['still here'])
    await client.removeAllChannels()
  })

  test('a frame that is too large, a wrong key and a flood end that socket alone', async () => {
    const large = await rawSocket(running)
    const flood = await rawSocket(running)
    const ends = [large, flood].map(
      (socket) => new Promise<number>((resolve) => socket.on('close', resolve))
    )
    large.send('x'.repeat(100_000))
    for (let i = 0; i < 400; i += 1) flood.send('[null,"1","phoenix","heartbeat",{}]')

    expect(await Promise.all(ends)).toEqual([1009, 1008])
    const url = running.url.replace('http', 'ws')
    const stranger = new WebSocket(`${url}/realtime/v1/websocket?apikey=x&vsn=2.0.0`)
    const refused = await new Promise<string>((resolve) =>
      stranger.on('error', ({ message }) => resolve(message))
    )
    expect(refused).toContain('401')
    expect((await fetch(`${running.url}/health`)).status).toBe(200)
  })
})

const postgres = engines.find(({ name }) => name === 'PostgreSQL')

describe.skipIf(!postgres)('a gap in listening on PostgreSQL', () => {
  test('sends every phone away, and those who come back hear on', async () => {
    if (!postgres) throw new Error('No engine.')
    const db = await postgres.open(fixtures)
    const running = await openHost(db.engine)
    const { client } = await signedIn(running)
    const heard = await listen(client, 'notes')
    await expect.poll(() => heard.states).toEqual(['SUBSCRIBED'])

    await db.asOwner(
      `select pg_terminate_backend(pid) from pg_stat_activity where query ilike 'listen%'`
    )

    const joins = () => heard.states.filter((state) => state === 'SUBSCRIBED').length
    await expect.poll(joins, { timeout: 15_000 }).toBe(2)
    await client.rpc('add_note', { p_words: 'after the gap' })
    await expect.poll(() => heard.payloads.map(({ words }) => words)).toEqual(['after the gap'])
    await client.removeAllChannels()
    await running.host.close()
    await db.close()
  })
})

describe('channels and time', () => {
  const [pglite] = engines
  if (!pglite) throw new Error('No engine.')

  test('a channel ends when the sign-in runs out, and goes on when it was renewed', async () => {
    const db = await pglite.open(fixtures)
    const running = await openHost(db.engine, { accessSeconds: 2 })
    const leaves = await signedIn(running)
    const stays = await signedIn(running)
    const ended = await listen(leaves.client, 'notes', { token: leaves.session.access_token })
    const renewed = await listen(stays.client, 'notes')
    await expect
      .poll(() => [ended.states, renewed.states])
      .toEqual([['SUBSCRIBED'], ['SUBSCRIBED']])

    const tokens = await makeTokens(secret, 60)
    const sessionId = crypto.randomUUID()
    await stays.client.realtime.setAuth(
      await tokens.signAccess({ userId: stays.userId, sessionId })
    )

    await expect.poll(() => ended.states.at(-1), { timeout: 5_000 }).toBe('CLOSED')
    await db.asOwner(`select realtime.send('{"words":"late"}', 'note', 'notes', true)`)
    await expect.poll(() => renewed.payloads.map(({ words }) => words)).toEqual(['late'])
    expect(ended.payloads).toEqual([])
    await Promise.all([leaves, stays].map(({ client }) => client.removeAllChannels()))
    await running.host.close()
    await db.close()
  })

  test('a right that is lost shows at the next renewal, and the channel ends', async () => {
    const db = await pglite.open(fixtures)
    const running = await openHost(db.engine)
    const { client, userId } = await signedIn(running)
    const heard = await listen(client, 'notes')
    await expect.poll(() => heard.states).toEqual(['SUBSCRIBED'])

    await db.asOwner(`drop policy "signed-in people hear the current channel" on realtime.messages`)
    await new Promise((resolve) => setTimeout(resolve, 1_050))
    const token = await running.tokens.signAccess({ userId, sessionId: crypto.randomUUID() })
    await client.realtime.setAuth(token)

    await expect.poll(() => heard.states.at(-1)).toBe('CLOSED')
    await client.removeAllChannels()
    await running.host.close()
    await db.close()
  })

  test('after a restart of the host the client is in its channel again by itself', async () => {
    const db = await pglite.open(fixtures)
    const first = await openHost(db.engine)
    const { client } = await signedIn(first)
    const heard = await listen(client, 'notes')
    await expect.poll(() => heard.states).toEqual(['SUBSCRIBED'])

    await first.host.close()
    const second = await openHost(db.engine, { port: first.port })

    await expect
      .poll(() => heard.states.filter((state) => state === 'SUBSCRIBED').length, {
        timeout: 15_000,
      })
      .toBe(2)
    await client.rpc('add_note', { p_words: 'after' })
    await expect.poll(() => heard.payloads.map(({ words }) => words)).toEqual(['after'])
    await client.removeAllChannels()
    await second.host.close()
    await db.close()
  })
})

async function rawSocket({ url, tokens }: RunningHost): Promise<WebSocket> {
  const address = `${url.replace('http', 'ws')}/realtime/v1/websocket`
  const socket = new WebSocket(`${address}?apikey=${tokens.anonKey}&vsn=2.0.0`)
  await new Promise((resolve, reject) => socket.on('open', resolve).on('error', reject))
  return socket
}
