/** A whole orchard out of one place and into another: the same to everybody in it, and a stranger to all else. */

import { createHash, randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import {
  type ArchivePart,
  archiveText,
  managersIn,
  readArchive,
} from '@/lib/domain/orchard/archive'
import { engines, type TestDatabase } from '../support/engines'
import { advance, buildScene, type Scene } from './scene'

type Taken = {
  head: number
  table: string
  columns: string[]
  rows: string[]
  next: { table: string; from: number } | null
}

describe.each(engines)('an archive on $name', ({ open }) => {
  let here: TestDatabase
  let there: TestDatabase
  let scene: Scene
  let parts: ArchivePart[]
  beforeAll(async () => {
    here = await open()
    there = await open()
    scene = await buildScene(here)
    for (const stage of ['scheduled', 'open', 'stopped'] as const) await advance(here, scene, stage)
    parts = await takeOut(here, scene.user.manager)
  }, 120_000)
  afterAll(async () => {
    await here.close()
    await there.close()
  })

  async function takeOut(database: TestDatabase, user: string): Promise<ArchivePart[]> {
    const found: ArchivePart[] = []
    let next: Taken['next'] = { table: 'orchards', from: 0 }
    while (next) {
      const asked = { p_orchard: scene.orchard, p_table: next.table, p_from: next.from }
      const { status, body } = await database.as(user, 'take_out', asked)
      expect(status).toBe(200)
      const part = body as Taken
      found.push({ table: part.table, columns: part.columns, rows: part.rows })
      next = part.next
    }
    return found
  }

  async function setUpCode(database: TestDatabase): Promise<string> {
    const code = randomUUID()
    const hash = createHash('sha256').update(code).digest('hex')
    await database.asOwner('select private.make_setup_code($1)', [hash])
    return code
  }

  async function put(archive: string, code: string, user: string, sent = parts) {
    for (const [part, { table, columns, rows }] of sent.entries()) {
      const args = {
        p_code: code,
        p_archive: archive,
        p_part: part,
        p_table: table,
        p_columns: columns,
      }
      const { body } = await there.as(user, 'put_archive_part', {
        ...args,
        p_rows: `[${rows.join(',')}]`,
      })
      expect(body).toEqual({ part })
    }
  }

  async function bringIn(archive: string, code: string, user: string, change: object = {}) {
    const { status, body } = await there.as(user, 'bring_in_orchard', {
      p_code: code,
      p_command: archive,
      p_orchard: scene.orchard,
      p_parts: parts.length,
      p_person: scene.person.manager,
      ...change,
    })
    const answer = body as { refused?: { code: string }[]; n?: number; details?: string }
    return answer.refused?.map((refusal) => refusal.code).join() ?? answer.details ?? `${status}`
  }

  const filled = (sent: readonly ArchivePart[]) => sent.filter(({ rows }) => rows.length > 0)

  test('is read from its text as it was written', () => {
    const said = { orchard: scene.orchard, name: 'Three Wells', at: '2026-11-24T10:00:00.000Z' }

    const read = readArchive(archiveText(said, parts))

    const joined = (some: readonly ArchivePart[]) => some.map(({ table, rows }) => [table, rows])
    expect(read).toMatchObject({ state: 'read', header: said })
    expect(read.state === 'read' && joined(read.parts)).toEqual(joined(filled(parts)))
    expect(managersIn(parts)).toEqual([{ id: scene.person.manager, name: 'Manager' }])
  })

  test('has every table of the orchard but those that let people in or are made anew', async () => {
    const tables = await here.asOwner<{ name: string }>(
      `select relname as name from pg_class where relnamespace = 'public'::regnamespace and relkind = 'r'`
    )
    const left = [
      'logins',
      'invites',
      'setup_codes',
      'wrong_codes',
      'command_answers',
      'tree_sheets',
      'archive_parts',
    ]
    const wanted = tables.map(({ name }) => name).filter((name) => !left.includes(name))

    expect([...new Set(parts.map(({ table }) => table))].sort()).toEqual(wanted.sort())
    expect(JSON.stringify(parts)).not.toContain(scene.user.ann)
  })

  test('a lead, a volunteer and a stranger take nothing out', async () => {
    for (const name of ['lead', 'ann'] as const) {
      const { status } = await here.as(scene.user[name], 'take_out', { p_orchard: scene.orchard })
      expect(status).toBe(403)
    }
    const { status } = await here.as(await here.newUser(), 'take_out', { p_orchard: scene.orchard })
    expect(status).toBe(403)
  })

  test.each<[string, (sent: ArchivePart[]) => ArchivePart[], object, string]>([
    ['a part missing', (sent) => sent.slice(1), {}, 'archive_incomplete'],
    [
      'a table nobody knows',
      (sent) => [{ table: 'gates', columns: ['id'], rows: ['{"id":1}'] }, ...sent.slice(1)],
      {},
      'archive_newer',
    ],
    [
      'a column nobody knows',
      (sent) =>
        sent.map((part) =>
          part.table === 'trees' ? { ...part, columns: [...part.columns, 'mood'] } : part
        ),
      {},
      'archive_newer',
    ],
    [
      'a row that cannot be',
      (sent) =>
        sent.map((part) =>
          part.table === 'trees'
            ? { ...part, rows: part.rows.map((row) => row.replace('"place":1,', '"place":-1,')) }
            : part
        ),
      {},
      'archive_damaged',
    ],
    [
      'rows that are gone',
      (sent) =>
        sent.map((part) =>
          part.table === 'events' ? { ...part, rows: part.rows.slice(1) } : part
        ),
      {},
      'archive_damaged',
    ],
    [
      'a text that is no JSON',
      (sent) => sent.map((part) => (part.table === 'rounds' ? { ...part, rows: ['{'] } : part)),
      {},
      'archive_damaged',
    ],
    [
      'nobody who manages it',
      (sent) => sent,
      { p_person: '00000000-0000-4000-8000-000000000000' },
      'archive_damaged',
    ],
  ])('with %s nothing comes in, and the code stays good', async (_, break_, change, refusal) => {
    const [user, code, archive] = [await there.newUser(), await setUpCode(there), randomUUID()]
    await put(archive, code, user, break_(parts))

    const came = await bringIn(archive, code, user, change)

    expect(came).toBe(refusal)
    expect(await there.asOwner('select count(*)::integer from public.orchards')).toEqual([
      { count: 0 },
    ])
    expect(await there.asOwner('select count(*)::integer from public.people')).toEqual([
      { count: 0 },
    ])
  })

  test('comes in exactly as it went out, once, with a new epoch and no way in but that of who brought it', async () => {
    const [user, code, archive] = [await there.newUser(), await setUpCode(there), randomUUID()]
    await put(archive, code, user)

    expect(await bringIn(archive, code, user)).toBe('200')
    expect(await bringIn(archive, code, user)).toBe('200')

    const asked = { p_orchard: scene.orchard, p_person: scene.person.manager }
    const before = (await here.as(scene.user.manager, 'snapshot', asked)).body as Record<
      string,
      unknown
    >
    const after = (await there.as(user, 'snapshot', asked)).body as Record<string, unknown>
    expect(after.epoch).not.toBe(before.epoch)
    expect(after).toEqual({
      ...before,
      epoch: after.epoch,
      channelEpoch: Number(before.channelEpoch) + 1,
    })
    const sheet = { p_orchard: scene.orchard, p_version: 0 }
    expect((await there.as(user, 'tree_sheet', sheet)).body).toBe(
      (await here.as(scene.user.manager, 'tree_sheet', sheet)).body
    )
    const rows = (sent: readonly ArchivePart[]) =>
      filled(sent).filter(({ table }) => table !== 'orchard_heads')
    expect(rows(await takeOut(there, user))).toEqual(rows(parts))
    expect(await there.asOwner('select count(*)::integer from public.logins')).toEqual([
      { count: 1 },
    ])
    expect(
      await there.asOwner('select count(*)::integer from public.archive_parts where archive = $1', [
        archive,
      ])
    ).toEqual([{ count: 0 }])
  })

  test('does not come in where the orchard is, nor by a code that is used, wrong or somebody else’s', async () => {
    const [user, code, archive] = [await there.newUser(), await setUpCode(there), randomUUID()]
    await put(archive, code, user)
    const other = await setUpCode(there)
    const part = {
      p_archive: archive,
      p_part: 0,
      p_table: 'orchards',
      p_columns: ['id'],
      p_rows: '[]',
    }

    expect(await bringIn(archive, code, user)).toBe('orchard_here')
    expect(await bringIn(archive, 'no such code', user)).toBe('code_wrong')
    expect((await there.as(user, 'put_archive_part', { ...part, p_code: other })).status).toBe(403)
    expect(
      (await there.as(user, 'put_archive_part', { ...part, p_code: 'no such code' })).body
    ).toMatchObject({ refused: [{ code: 'code_wrong' }] })
  })
})
