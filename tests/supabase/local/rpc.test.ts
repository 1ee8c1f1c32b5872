import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { engines, type TestDatabase } from '../../support/engines'
import { fixtures, hookMs } from './fixtures'

describe.each(engines)('calling a function on $name', ({ open }) => {
  let db: TestDatabase
  beforeAll(async () => {
    db = await open(fixtures)
  }, hookMs)
  afterAll(() => db.close())

  test('the owner is not a superuser, and a call runs as the caller', async () => {
    const ann = await db.newUser()

    const [owner] = await db.asOwner(
      `select session_user::text as name, current_setting('is_superuser') as superuser`
    )
    const { body } = await db.as(ann, 'who')

    expect(owner).toEqual({ name: 'rowcall_owner', superuser: 'off' })
    expect(body).toEqual({
      user: 'authenticated',
      session: 'rowcall_owner',
      sub: ann,
      role: 'authenticated',
    })
    expect((await db.as('anon', 'who')).body).toMatchObject({ user: 'anon', sub: null })
  })

  test('named arguments are bound, defaults are filled in, and the role is gone afterwards', async () => {
    const ann = await db.newUser()

    const short = await db.as(ann, 'add_note', { p_words: `it's "quoted"` })
    const long = await db.as(ann, 'add_note', { p_tags: ['a', 'b'], p_words: 'two' })

    expect(short).toMatchObject({ status: 200, body: { tags: [] } })
    expect(long).toMatchObject({ status: 200, body: { tags: ['a', 'b'] } })
    expect((await db.as(ann, 'my_notes')).body).toMatchObject([
      { words: `it's "quoted"` },
      { words: 'two' },
    ])
    expect(await db.asOwner('select current_user::text as me')).toEqual([{ me: 'rowcall_owner' }])
  })

  test('a set is a list, one value is a value, nothing is 204', async () => {
    const bo = await db.newUser()

    expect(await db.as(bo, 'my_notes')).toEqual({ status: 200, body: [] })
    expect((await db.as(bo, 'note_count')).body).toEqual(expect.any(Number))
    expect(await db.as(bo, 'forget_notes')).toEqual({ status: 204, body: undefined })
  })

  test.each([
    ['PT409', 409],
    ['PT401', 401],
    ['PT404', 404],
    ['42501', 403],
    ['23505', 409],
    ['23503', 409],
    ['P0001', 400],
    ['22023', 400],
    ['23514', 400],
    ['25006', 405],
    ['42883', 404],
    ['42P01', 404],
    ['28000', 403],
    ['0L000', 403],
    ['0P000', 403],
    ['08000', 503],
    ['53300', 503],
    ['40001', 500],
    ['54001', 500],
    ['55P03', 500],
    ['57014', 500],
    ['58000', 500],
    ['XX000', 500],
  ])('an error %s is answered with %i and its four parts', async (code, status) => {
    const ann = await db.newUser()

    const answer = await db.as(ann, 'fail_with', { p_code: code })

    expect(answer).toEqual({
      status,
      body: { code, message: 'As asked.', details: 'the_detail', hint: 'the_hint' },
    })
  })

  test('what anon may not do is 401, what a person may not do is 403, and neither happens', async () => {
    const ann = await db.newUser()
    await db.as(ann, 'add_note', { p_words: 'there is one' })

    expect(await db.as('anon', 'add_note', { p_words: 'no' })).toMatchObject({
      status: 401,
      body: { code: '42501' },
    })
    expect(await db.as(ann, 'only_owner')).toMatchObject({ status: 403, body: { code: '42501' } })
    expect(await db.as(ann, 'peek')).toMatchObject({ status: 403, body: { code: '42501' } })
    expect(await db.asOwner(`select count(*) from notes where words = 'no'`)).toEqual([
      { count: 0 },
    ])
  })

  test('unknown functions, unknown and missing arguments are 404 PGRST202', async () => {
    const ann = await db.newUser()

    for (const [fn, values] of [
      ['no_such_function', {}],
      ['add_note', {}],
      ['add_note', { p_words: 'x', p_other: 1 }],
      ['pg_sleep', { seconds: 1 }],
    ] as const) {
      const answer = await db.as(ann, fn, values)
      expect(answer).toMatchObject({ status: 404, body: { code: 'PGRST202' } })
    }
  })

  test('values of the wrong kind are 400', async () => {
    const ann = await db.newUser()

    const answers = await Promise.all([
      db.as(ann, 'add_note', { p_words: 'x', p_tags: 'not a list' }),
      db.as(ann, 'add_note', { p_words: '' }),
      db.as(ann, 'add_note', { p_words: 'a\u0000b' }),
    ])

    expect(answers.map(({ status }) => status)).toEqual([400, 400, 400])
  })

  test('calls that wait together end each in its own way, as whoever made them', async () => {
    const [ann, bo] = [await db.newUser(), await db.newUser()]

    const answers = await Promise.all([
      db.as(ann, 'add_note', { p_words: 'before the mistakes' }),
      db.as(ann, 'fail_with', { p_code: 'PT409' }),
      db.as(bo, 'add_note', { p_words: 'a\u0000b' }),
      db.as(bo, 'only_owner'),
      db.as('anon', 'who'),
      db.as(bo, 'who'),
      db.as(ann, 'add_note', { p_words: 'after them' }),
    ])

    expect(answers.map(({ status }) => status)).toEqual([200, 409, 400, 403, 200, 200, 200])
    expect(answers.slice(4, 6).map(({ body }) => body)).toMatchObject([
      { user: 'anon', sub: null },
      { user: 'authenticated', sub: bo },
    ])
    expect((await db.as(ann, 'my_notes')).body).toMatchObject([
      { words: 'before the mistakes' },
      { words: 'after them' },
    ])
    expect((await db.as(bo, 'my_notes')).body).toEqual([])
  })

  test('a broadcast is heard once committed; one too long for a notification is its number only', async () => {
    const ann = await db.newUser()
    const messages = await db.listenMessages()

    await db.as(ann, 'add_note', { p_words: 'short' })
    await db.asOwner(
      `select realtime.send(jsonb_build_object('n', 7, 'words', repeat('x', 9000)), 'note', 'notes', true)`
    )

    await expect.poll(() => messages.length).toBe(2)
    expect(messages[0]).toMatchObject({
      topic: 'notes',
      event: 'note',
      payload: { words: 'short', n: expect.any(Number), id: expect.any(String) },
    })
    expect(messages[1]?.payload).toEqual({ n: 7, id: expect.any(String) })
  })
})
