import { beforeEach, describe, expect, test } from 'vitest'
import { WebSocket } from 'ws'

import { openBackend } from '@/lib/data/backend'
import { type Command, commandOf } from '@/lib/events/commands'

import { ann, idOf } from '../events/a-state'

/** The client library is the real one; only the network is played. */
let asked: string[]
let answers: Record<string, (() => Response | Promise<Response>)[]>
let kept: Map<string, string>

beforeEach(() => {
  asked = []
  kept = new Map()
  answers = { '/auth/v1/signup': [() => signedIn(userId)] }
})

const userId = '11111111-0000-4000-8000-000000000001'

function open() {
  return openBackend(
    { url: 'http://orchard.test', anonKey: 'key' },
    {
      realtime: { transport: WebSocket as never },
      auth: {
        autoRefreshToken: false,
        storage: {
          getItem: (key) => kept.get(key) ?? null,
          setItem: (key, value) => {
            kept.set(key, value)
          },
          removeItem: (key) => {
            kept.delete(key)
          },
        },
      },
      global: {
        fetch: async (input, init) => {
          const path = new URL(String(input)).pathname
          asked.push(path)
          const answer = answers[path]?.shift()
          if (!answer) throw new TypeError('fetch failed')
          const ended = new Promise<never>((_, reject) => {
            init?.signal?.addEventListener('abort', () =>
              reject(new DOMException('', 'AbortError'))
            )
          })
          return Promise.race([Promise.resolve(answer()), ended])
        },
      },
    }
  )
}

const json = (value: unknown, status = 200) =>
  new Response(JSON.stringify(value), { status, headers: { 'content-type': 'application/json' } })

function signedIn(id: string) {
  return json({
    access_token: `${btoa('{"alg":"HS256"}')}.${btoa(JSON.stringify({ sub: id }))}.x`,
    refresh_token: 'r',
    token_type: 'bearer',
    expires_in: 3600,
    user: { id, aud: 'authenticated', is_anonymous: true },
  })
}

const hotspot = (status: number) =>
  new Response('<h1>Welcome to the inn</h1>', { status, headers: { 'content-type': 'text/html' } })

function failed(status: number, details: string | null) {
  return json({ code: `PT${status}`, message: 'No.', details, hint: null }, status)
}

const arrive = commandOf(
  'arrive',
  {},
  { id: idOf('c'), orchardId: idOf('o'), personId: ann }
) as Command

const path = '/rest/v1/rpc/arrive'

test('nobody is signed in until somebody signs in, and then stays who they are', async () => {
  const backend = open()
  expect(await backend.user()).toEqual({ ok: true, value: null })

  expect(await backend.signIn()).toEqual({ ok: true, value: userId })
  expect(await backend.signIn()).toEqual({ ok: true, value: userId })

  expect(await backend.user()).toEqual({ ok: true, value: userId })
  expect(asked).toEqual(['/auth/v1/signup'])
})

describe('a command', () => {
  async function send(...replies: (() => Response | Promise<Response>)[]) {
    answers[path] = replies
    const backend = open()
    await backend.signIn()
    return backend.as(userId).send(arrive, 200)
  }

  test('is answered', async () => {
    expect(await send(() => json({ n: 4 }))).toEqual({ ok: true, value: { n: 4 } })
  })

  test('is refused, with all that is missing', async () => {
    const refused = [{ code: 'shift_not_open' }, { code: 'not_admitted', detail: { person: ann } }]

    expect(await send(() => json({ refused }))).toEqual({ ok: true, value: { refused } })
  })

  test.each([
    {
      what: 'without network',
      reply: () => Promise.reject(new TypeError('fetch failed')),
      fault: 'offline',
    },
    {
      what: 'without an answer in time',
      reply: () => new Promise<Response>(() => {}),
      fault: 'offline',
    },
    { what: 'not allowed', reply: () => failed(403, 'not_allowed'), fault: 'not_allowed' },
    { what: 'while the backend is busy', reply: () => failed(503, null), fault: 'busy' },
    { what: 'with an answer of another kind', reply: () => json('hello'), fault: 'unknown' },
    {
      what: 'in a network that shows its own page first',
      reply: () =>
        new Response('<html>Accept our terms</html>', { headers: { 'content-type': 'text/html' } }),
      fault: 'offline',
    },
  ])('$what is $fault', async ({ reply, fault }) => {
    expect(await send(reply)).toMatchObject({ ok: false, fault })
  })

  test('with a token that is too old is sent again with a fresh one', async () => {
    answers['/auth/v1/token'] = [() => signedIn(userId)]

    expect(
      await send(
        () => failed(401, null),
        () => json({ n: 4 })
      )
    ).toEqual({
      ok: true,
      value: { n: 4 },
    })
    expect(asked).toEqual(['/auth/v1/signup', path, '/auth/v1/token', path])
  })

  test('of a login that is gone is not sent for ever', async () => {
    answers['/auth/v1/token'] = [
      () =>
        json(
          { code: 'refresh_token_not_found', error_code: 'refresh_token_not_found', message: '' },
          400
        ),
    ]

    expect(await send(() => failed(401, null))).toMatchObject({ ok: false, fault: 'signed_out' })
  })

  test.each([403, 404, 511])(
    'meets a page of the hotspot (%i) where the sign-in is renewed, and the identity stays',
    async (status) => {
      answers['/auth/v1/token'] = Array.from({ length: 20 }, () => () => hotspot(status))

      expect(await send(() => failed(401, null))).toMatchObject({ ok: false, fault: 'offline' })

      expect(await open().user()).toEqual({ ok: true, value: userId })
    }
  )

  test('is never sent under another login', async () => {
    answers[path] = [() => json({ n: 4 })]
    const backend = open()
    await backend.signIn()
    asked = []

    const outcome = await backend.as('22222222-0000-4000-8000-000000000002').send(arrive, 200)

    expect(outcome).toMatchObject({ ok: false, fault: 'signed_out' })
    expect(asked).toEqual([])
  })
})
