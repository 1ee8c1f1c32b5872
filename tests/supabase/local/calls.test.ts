import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { engines, type TestDatabase } from '../../support/engines'
import { fixtures, hookMs } from './fixtures'
import { openHost, phone, type RunningHost, signedIn } from './open-host'

describe.each(engines)('calls over HTTP on $name', ({ name, open }) => {
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

  const raw = (body: string | Uint8Array<ArrayBuffer>, token = running.tokens.anonKey) =>
    fetch(`${running.url}/rest/v1/rpc/add_note`, {
      method: 'POST',
      body,
      headers: { apikey: running.tokens.anonKey, authorization: `Bearer ${token}` },
    })

  test('the real client calls, reads and is told what went wrong', async () => {
    const { client, userId } = await signedIn(running)

    const added = await client.rpc('add_note', { p_words: 'the gate is stuck' })
    const mine = await client.rpc('my_notes')
    const gone = await client.rpc('forget_notes')
    const failed = await client.rpc('fail_with', { p_code: 'PT409' })

    expect(added).toMatchObject({ status: 200, data: { id: expect.any(Number) }, error: null })
    expect(mine.data).toMatchObject([{ words: 'the gate is stuck' }])
    expect(gone).toMatchObject({ status: 204, data: null, error: null })
    expect(failed).toMatchObject({
      status: 409,
      error: { code: 'PT409', message: 'As asked.', details: 'the_detail', hint: 'the_hint' },
    })
    expect((await client.rpc('who')).data).toMatchObject({ sub: userId, user: 'authenticated' })
  })

  test('somebody who has not signed in is anon, and told 401 where that is not enough', async () => {
    const client = phone(running)

    expect((await client.rpc('who')).data).toMatchObject({ user: 'anon' })
    expect(await client.rpc('add_note', { p_words: 'x' })).toMatchObject({ status: 401 })
    expect(await client.rpc('no_such_function')).toMatchObject({ status: 404 })
  })

  test('a megabyte of JSON is answered with 413, garbage and deep nests with 400, and nothing breaks', async () => {
    const { session } = await signedIn(running)
    const send = (body: string | Uint8Array<ArrayBuffer>) => raw(body, session.access_token)
    const nest = `{"p_words":${'['.repeat(200_000)}${']'.repeat(200_000)}}`

    const answers = await Promise.all([
      send(JSON.stringify({ p_words: 'x'.repeat(1_000_001) })),
      send(JSON.stringify({ p_words: 'x'.repeat(5_000_000) })),
      send(nest),
      send('{"p_words": '),
      send('[1]'),
      send(new Uint8Array([0xff, 0xfe, 0x00])),
      send('{"p_words":"a\\u0000b"}'),
      send(JSON.stringify({ p_words: 'x'.repeat(900_000) })),
    ])

    expect(answers.map(({ status }) => status)).toEqual([413, 413, 400, 400, 400, 400, 400, 400])
    for (const answer of answers) expect(await answer.json()).toHaveProperty('code')
    expect((await send('{"p_words":"still here"}')).status).toBe(200)
  })

  test('no data of other schemas can be reached by inventive paths and names', async () => {
    const { session } = await signedIn(running)
    const headers = {
      apikey: running.tokens.anonKey,
      authorization: `Bearer ${session.access_token}`,
    }

    for (const path of [
      'rpc/local_host.call',
      'rpc/call',
      'rpc/pg_sleep',
      'notes',
      'rpc/"who"',
      '',
    ]) {
      const answer = await fetch(`${running.url}/rest/v1/${path}`, { method: 'POST', headers })
      expect(answer.status).toBe(404)
    }
  })

  test('one login that never stops is told to wait; the others are not', async () => {
    const few = { burst: 5, perSecond: 0.001 }
    const many = { burst: 100, perSecond: 100 }
    const strict = await openHost(db.engine, {
      limits: { calls: few, photos: few, callsOfStrangers: few, signUps: many },
    })
    const eager = await signedIn(strict)
    const calm = await signedIn(strict)

    const statuses: number[] = []
    for (let i = 0; i < 7; i += 1) statuses.push((await eager.client.rpc('note_count')).status)

    expect(statuses).toEqual([200, 200, 200, 200, 200, 429, 429])
    expect((await calm.client.rpc('note_count')).status).toBe(200)
    await strict.host.close()
  })

  test('one login that never stops sending pictures is told to wait with them, and with nothing else', async () => {
    const many = { burst: 100, perSecond: 100 }
    const photos = { burst: 2, perSecond: 0.001 }
    const strict = await openHost(db.engine, {
      limits: { calls: many, photos, callsOfStrangers: many, signUps: many },
    })
    const { client } = await signedIn(strict)

    const statuses: number[] = []
    for (let i = 0; i < 3; i += 1) statuses.push((await client.rpc('add_photo')).status)

    // These calls have no such function: what counts is who is let through to be told.
    expect(statuses).toEqual([404, 404, 429])
    expect((await client.rpc('note_count')).status).toBe(200)
    await strict.host.close()
  })

  test('health says which database answers', async () => {
    const answer = await fetch(`${running.url}/health`)

    expect(answer.status).toBe(200)
    expect(await answer.json()).toMatchObject({ status: 'ok', engine: name })
  })
})
