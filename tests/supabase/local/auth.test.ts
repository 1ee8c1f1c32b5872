import { decodeJwt, SignJWT } from 'jose'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { engines, type TestDatabase } from '../../support/engines'
import { fixtures, hookMs } from './fixtures'
import { openHost, phone, type RunningHost, signedIn } from './open-host'

describe.each(engines)('signing in on $name', ({ open }) => {
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

  const post = (path: string, body: unknown, headers: Record<string, string> = {}) =>
    fetch(`${running.url}${path}`, {
      method: 'POST',
      body: typeof body === 'string' ? body : JSON.stringify(body),
      headers: { apikey: running.tokens.anonKey, 'content-type': 'application/json', ...headers },
    })
  const refresh = (token: string) =>
    post('/auth/v1/token?grant_type=refresh_token', { refresh_token: token })

  test('an anonymous person gets an hour, the role authenticated and no expires_at from us', async () => {
    const { client, session, userId } = await signedIn(running)

    expect(decodeJwt(session.access_token)).toMatchObject({
      sub: userId,
      aud: 'authenticated',
      role: 'authenticated',
      is_anonymous: true,
      session_id: expect.any(String),
    })
    expect(session.expires_in).toBe(3600)
    const raw = await (await post('/auth/v1/signup', { data: {} })).json()
    expect(raw).not.toHaveProperty('expires_at')
    expect((await client.auth.getUser()).data.user).toMatchObject({
      id: userId,
      is_anonymous: true,
    })
  })

  test('refreshing gives a new token of the same person and session', async () => {
    const { client, session, userId } = await signedIn(running)

    const { data } = await client.auth.refreshSession()

    expect(data.user?.id).toBe(userId)
    expect(data.session?.refresh_token).not.toBe(session.refresh_token)
    expect(decodeJwt(data.session?.access_token ?? '').session_id).toBe(
      decodeJwt(session.access_token).session_id
    )
  })

  test('a lost answer costs nothing: the parent of the active token returns the active one, each time', async () => {
    const { session } = await signedIn(running)

    const answers = await Promise.all([1, 2, 3].map(() => refresh(session.refresh_token)))
    const bodies = await Promise.all(answers.map((answer) => answer.json()))

    expect(answers.map(({ status }) => status)).toEqual([200, 200, 200])
    expect(new Set(bodies.map((body) => body.refresh_token)).size).toBe(1)
    expect((await refresh(bodies[0].refresh_token)).status).toBe(200)
  })

  test('an older token ends the session for everybody who holds a token of it', async () => {
    const { client, session } = await signedIn(running)
    const second = await (await refresh(session.refresh_token)).json()
    const third = await (await refresh(second.refresh_token)).json()

    const reused = await refresh(session.refresh_token)

    expect(reused.status).toBe(400)
    expect(await reused.json()).toMatchObject({ error_code: 'refresh_token_already_used' })
    expect((await refresh(third.refresh_token)).status).toBe(400)
    expect((await client.auth.getUser()).error?.name).toBe('AuthSessionMissingError')
  })

  test('the key of the app is not asked for when refreshing: an old page keeps its person', async () => {
    const { session } = await signedIn(running)

    const answer = await post(
      '/auth/v1/token?grant_type=refresh_token',
      { refresh_token: session.refresh_token },
      { apikey: 'of another machine' }
    )

    expect(answer.status).toBe(200)
  })

  test('after a move to a machine with another secret a lost answer still costs nothing', async () => {
    const { session } = await signedIn(running)
    await refresh(session.refresh_token)
    await db.asOwner(
      `update auth.refresh_tokens set token_hash = 'made with the other secret'
       where is_active and session_id = $1`,
      [String(decodeJwt(session.access_token).session_id)]
    )

    const answer = await refresh(session.refresh_token)

    expect(answer.status).toBe(200)
    expect((await refresh((await answer.json()).refresh_token)).status).toBe(200)
  })

  test('signing out ends the session, everywhere or only here', async () => {
    const { client, session } = await signedIn(running)
    const other = await signedIn(running)

    expect((await client.auth.signOut()).error).toBeNull()

    expect((await refresh(session.refresh_token)).status).toBe(400)
    expect((await refresh(other.session.refresh_token)).status).toBe(200)
  })

  test('tokens that are made up, expired or for something else are refused with their code', async () => {
    const { userId } = await signedIn(running)
    const call = (token: string) =>
      post('/rest/v1/rpc/my_notes', {}, { authorization: `Bearer ${token}` })
    const past = await new SignJWT({ role: 'authenticated', sub: userId })
      .setProtectedHeader({ alg: 'HS256' })
      .setExpirationTime(1)
      .sign(Buffer.alloc(32, 1))

    for (const token of ['garbage', past, `${running.tokens.anonKey}x`]) {
      const answer = await call(token)
      expect(answer.status).toBe(401)
      expect(await answer.json()).toMatchObject({ code: 'PGRST301' })
    }
  })

  test('two hundred people arrive in the same moment behind one address, and nobody is refused', async () => {
    const statuses = await Promise.all(
      Array.from({ length: 200 }, async () => (await post('/auth/v1/signup', { data: {} })).status)
    )

    expect(statuses.filter((status) => status !== 200)).toEqual([])
  })

  test('e-mail, other grants, nonsense and the unknown are refused with a code', async () => {
    const answers = await Promise.all([
      post('/auth/v1/signup', { email: 'a@b.c', password: 'x' }),
      post('/auth/v1/token?grant_type=password', { email: 'a@b.c' }),
      post('/auth/v1/token?grant_type=refresh_token', { refresh_token: 7 }),
      post('/auth/v1/token?grant_type=refresh_token', { refresh_token: 'unknown' }),
      post('/auth/v1/signup', '{"data":'),
      post('/auth/v1/signup', { data: {} }, { apikey: 'wrong' }),
      post('/auth/v1/invite', {}),
    ])

    expect(answers.map(({ status }) => status)).toEqual([422, 400, 400, 400, 400, 401, 404])
    for (const answer of answers) expect(await answer.json()).toHaveProperty('code')
  })

  test('nothing that is logged holds a token', async () => {
    const { session } = await signedIn(running)
    await phone(running).auth.signInAnonymously()
    await refresh(session.refresh_token)

    const log = running.logged.join('\n')

    expect(log).toContain('"route":"/auth/v1/token"')
    expect(log).not.toContain(session.refresh_token)
    expect(log).not.toContain(session.access_token)
    expect(log).not.toContain(running.tokens.anonKey)
  })
})

test('a sign-in that has run out is 401 PGRST303', async () => {
  const [pglite] = engines
  if (!pglite) throw new Error('No engine.')
  const db = await pglite.open(fixtures)
  const running = await openHost(db.engine, { accessSeconds: -1 })
  const { tokens, url } = running
  const userId = await db.newUser()
  const token = await tokens.signAccess({ userId, sessionId: userId })

  const answer = await fetch(`${url}/rest/v1/rpc/my_notes`, {
    method: 'POST',
    headers: { authorization: `Bearer ${token}`, apikey: tokens.anonKey },
  })

  expect(answer.status).toBe(401)
  expect(await answer.json()).toMatchObject({ code: 'PGRST303' })
  await running.host.close()
  await db.close()
})
