import { fork } from 'node:child_process'
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gunzipSync } from 'node:zlib'
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest'
import type { Engine } from '../../../supabase/local/engine/engine'
import { backUp } from '../../../supabase/local/keep/backup'
import { forgetOldest, isNightlyDue, nextBackupFile } from '../../../supabase/local/keep/backups'
import { askForBackup, offerBackups } from '../../../supabase/local/keep/control'
import { openData, restoreData } from '../../../supabase/local/keep/open-data'
import { readOrMakeSecret } from '../../../supabase/local/keep/secrets'
import { noPostgres } from '../../support/postgres'
import { openPostgresDatabase } from '../../support/postgres-database'
import { fixtures } from './fixtures'

const folders: string[] = []
const temporary = () => {
  const folder = mkdtempSync(join(tmpdir(), 'rowcall-test-'))
  folders.push(folder)
  return folder
}
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true })
})

const words = 'select words from notes order by id'
const awkward = ['plain', `it's "quoted" \\ and\nbroken`, 'línea\u2028separada 🌳', '{"end":true}']

async function write(engine: Engine, texts: readonly string[]) {
  for (const text of texts) {
    await engine.query(
      `with person as (insert into auth.users default values returning id)
       insert into notes (user_id, words) select id, $1 from person`,
      [text]
    )
  }
}

describe('the data directory', () => {
  const dataFolder = temporary()
  const where = { dataFolder, databaseUrl: null, migrations: fixtures }
  let file: string

  beforeAll(async () => {
    const { engine, isNew, close } = await openData(where)
    expect(isNew).toBe(true)
    await write(engine, awkward)
    file = join(dataFolder, 'first.jsonl.gz')
    await backUp(engine, file)
    await close()
  }, 120_000)

  test('what was written is there at the next start, by an owner who is no superuser', async () => {
    const { engine, isNew, close } = await openData(where)

    const [settings] = await engine.query(
      `select session_user::text as owner, current_setting('is_superuser') as superuser,
              current_setting('fsync') as fsync, current_setting('shared_buffers') as buffers`
    )

    expect(isNew).toBe(false)
    expect(await engine.query(words)).toEqual(awkward.map((text) => ({ words: text })))
    expect(settings).toEqual({
      owner: 'rowcall_owner',
      superuser: 'off',
      fsync: 'on',
      buffers: '16MB',
    })
    await engine.vacuum()
    await close()
  })

  test('a transaction sees one state, others wait, and an error undoes it', async () => {
    const { engine, close } = await openData(where)
    const order: string[] = []

    const failing = engine.transaction('read write', async (query) => {
      await query(`delete from notes`)
      order.push('in')
      throw new Error('no')
    })
    const outside = engine.query(words).then((rows) => {
      order.push('out')
      return rows
    })

    await expect(failing).rejects.toThrow('no')
    expect(await outside).toHaveLength(awkward.length)
    expect(order).toEqual(['in', 'out'])
    await close()
  })

  test('a second opening is refused with a sentence, also through another name of the folder', async () => {
    const { close } = await openData(where)
    const other = join(temporary(), 'link')
    symlinkSync(dataFolder, other)

    await expect(openData(where)).rejects.toThrow('already running on the data')
    await expect(openData({ ...where, dataFolder: other })).rejects.toThrow('already running')
    await expect(inAnotherProcess(dataFolder)).resolves.toContain('already running on the data')

    await close()
  })

  test('data of another engine, another version or a newer clone are refused with what to do', async () => {
    const note = join(dataFolder, 'format.json')
    const written = readFileSync(note, 'utf8')
    const withNote = async (change: object) => {
      writeFileSync(note, JSON.stringify({ ...JSON.parse(written), ...change }))
      return openData(where).then(
        () => 'opened',
        (error: Error) => error.message
      )
    }

    expect(await withNote({ engine: 'Other' })).toContain('npm run restore')
    expect(await withNote({ version: '0.4.0' })).toContain('npm run restore')
    expect(await withNote({ postgresMajor: 17 })).toContain('npm run restore')
    expect(await withNote({ migration: '29990101000000_later' })).toContain('Update this clone')
    writeFileSync(note, 'garbage')
    await expect(openData(where)).rejects.toThrow('cannot be read')
    writeFileSync(note, written)
    await expect(openData({ ...where, migrations: [] })).rejects.toThrow('Update this clone')
  })

  test('a new migration is applied once, after a backup of what was there', async () => {
    const more = { name: '20260102000000_more', sql: 'create table public.more (id int)' }
    const bad = {
      name: '20260103000000_bad',
      sql: 'create table public.bad (id int); select 1 / 0',
    }

    const failed = openData({ ...where, migrations: [...fixtures, bad] })
    await expect(failed).rejects.toThrow(/20260103000000_bad failed and changed nothing/)
    const { engine, close } = await openData({ ...where, migrations: [...fixtures, more] })

    const [there] = await engine.query(
      `select to_regclass('public.more') is not null as more, to_regclass('public.bad') is null as none`
    )
    expect(there).toEqual({ more: true, none: true })
    await close()
    const backups = readdirSync(join(dataFolder, 'backups'))
    expect(backups.filter((name) => name.includes('before-migration')).length).toBeGreaterThan(0)
  })

  test('the secret is made once and only its owner can read it', () => {
    const made = readOrMakeSecret(dataFolder)

    expect(readOrMakeSecret(dataFolder)).toEqual(made)
    expect(statSync(join(dataFolder, 'secret')).mode & 0o777).toBe(0o600)
    expect(statSync(dataFolder).mode & 0o777).toBe(0o700)
  })

  test('restoring gives equal rows under an older or newer clone, and keeps what was there before', async () => {
    const target = temporary()
    const later = [
      {
        name: '20260102000000_more',
        sql: `alter table notes add column seen boolean not null default false`,
      },
      {
        name: '20260104000000_after',
        sql: `create table private.restores (at timestamptz default now());
              create function private.after_restore() returns void language sql set search_path = ''
              as $$ insert into private.restores default values $$`,
      },
    ]
    cpSync(dataFolder, target, { recursive: true })
    const there = await openData({
      ...where,
      migrations: [...fixtures, ...later],
      dataFolder: target,
    })
    await write(there.engine, ['will be replaced'])
    await there.close()

    const restored = await restoreData({
      ...where,
      dataFolder: target,
      migrations: [...fixtures, ...later],
      file,
    })

    const now = await openData({
      ...where,
      dataFolder: target,
      migrations: [...fixtures, ...later],
    })
    expect(restored.rows).toBe(2 * awkward.length)
    expect(restored.before).not.toBeNull()
    expect(await now.engine.query(words)).toEqual(awkward.map((text) => ({ words: text })))
    expect(await now.engine.query('select count(*) from private.restores')).toEqual([{ count: 1 }])
    await write(now.engine, ['numbered above those restored'])
    const orphan = now.engine.query(
      `insert into notes (user_id, words) values (gen_random_uuid(), 'no such person')`
    )
    await expect(orphan).rejects.toThrow(/foreign key/)
    await now.close()

    // As a stop between the two renames would leave it.
    renameSync(join(target, 'database'), join(target, 'database.restored'))
    const found = await openData({
      ...where,
      dataFolder: target,
      migrations: [...fixtures, ...later],
    })
    expect(found.isNew).toBe(false)
    expect(await found.engine.query(words)).toHaveLength(awkward.length + 1)
    await found.close()
  }, 120_000)

  test('a damaged, foreign or newer backup is refused, and what is there stays', async () => {
    const damaged = join(dataFolder, 'damaged.jsonl.gz')
    writeFileSync(damaged, readFileSync(file))
    truncateSync(damaged, statSync(file).size - 40)
    const foreign = join(dataFolder, 'foreign')
    writeFileSync(foreign, 'hello')
    const upTo = fixtures.slice(0, 0)
    const migrations = [...fixtures, { name: '20260102000000_more', sql: 'select 1' }]

    const restore = (from: string, known = migrations) =>
      restoreData({ ...where, file: from, migrations: known })
    await expect(restore(damaged)).rejects.toThrow('damaged')
    await expect(restore(foreign)).rejects.toThrow('damaged')
    await expect(
      restoreData({ ...where, dataFolder: temporary(), file, migrations: upTo })
    ).rejects.toThrow('newer Rowcall')

    const { engine, close } = await openData({ ...where, migrations })
    expect(await engine.query(words)).toHaveLength(awkward.length)
    await close()
  }, 120_000)

  test('a running host makes the backup for whoever asks in its folder; where none runs nobody answers', async () => {
    expect(await askForBackup(dataFolder)).toBeNull()
    const made = { file: '/some/file', forgottenAt: null }
    const stop = offerBackups(dataFolder, async () => made)

    await expect.poll(() => askForBackup(dataFolder)).toEqual(made)

    stop()
  })
})

describe('nightly backups', () => {
  const folder = temporary()
  afterEach(() => rmSync(join(folder, 'backups'), { recursive: true, force: true }))

  test('fourteen are kept, and those made by hand are not counted', () => {
    mkdirSync(join(folder, 'backups'))
    for (let day = 1; day <= 20; day += 1) {
      writeFileSync(nextBackupFile(folder, 'nightly', new Date(Date.UTC(2026, 0, day))), '')
      writeFileSync(nextBackupFile(folder, 'by-hand', new Date(Date.UTC(2026, 0, day))), '')
    }

    forgetOldest(folder, 'nightly')

    const left = readdirSync(join(folder, 'backups'))
    const nights = left.filter((name) => name.includes('nightly')).sort()
    expect(nights).toHaveLength(14)
    expect(nights[0]).toMatch(/^2026-01-07/)
    expect(left).toHaveLength(34)
  })

  test('one is due when there is none, at night after twenty hours, by day after thirty', () => {
    expect(isNightlyDue(folder)).toBe(true)
    writeFileSync(nextBackupFile(folder, 'nightly'), '')
    const inHours = (hours: number) => new Date(Date.now() + hours * 3_600_000)
    const firstWith = (hour: number, from: number) =>
      Array.from({ length: 24 }, (_, i) => inHours(from + i)).find((at) => at.getHours() === hour)

    expect(isNightlyDue(folder, inHours(1))).toBe(false)
    expect(isNightlyDue(folder, firstWith(2, 20.5))).toBe(true)
    expect(isNightlyDue(folder, inHours(30.5))).toBe(true)
  })
})

describe.skipIf(noPostgres !== null)('between the engines', () => {
  test('a backup of PostgreSQL restores into PGlite and back, row for row', async () => {
    const dataFolder = temporary()
    const { url, drop } = await openPostgresDatabase([])
    const postgres = { dataFolder, databaseUrl: url, migrations: fixtures }
    const first = await openData(postgres)
    await write(first.engine, awkward)
    const file = join(dataFolder, 'postgres.jsonl.gz')
    await backUp(first.engine, file)
    await first.close()

    const there = { dataFolder: temporary(), databaseUrl: null, migrations: fixtures }
    await restoreData({ ...there, file })
    const second = await openData(there)
    const back = join(dataFolder, 'pglite.jsonl.gz')
    await backUp(second.engine, back)
    await second.close()

    expect(linesOf(back)).toEqual(linesOf(file))
    expect(linesOf(file).length).toBe(2 * awkward.length + 5)
    await expect(restoreData({ ...postgres, file: back })).rejects.toThrow('Make an empty one')
    const empty = await openPostgresDatabase([])
    await restoreData({ ...postgres, databaseUrl: empty.url, file: back })
    await empty.drop()
    await drop()
  }, 120_000)

  test('with an administrator in DATABASE_URL the roles are made, and nothing else runs as one', async () => {
    const { url, drop } = await openPostgresDatabase([])
    const databaseUrl = url.replace('rowcall_owner@', 'postgres@')

    const data = await openData({ dataFolder: temporary(), databaseUrl, migrations: fixtures })

    const [who] = await data.engine.query(
      `select session_user::text as name, current_setting('is_superuser') as superuser,
              (select tableowner::text from pg_tables where tablename = 'notes') as owner`
    )
    expect(who).toEqual({ name: 'rowcall_owner', superuser: 'off', owner: 'rowcall_owner' })
    await data.close()
    await drop()
  })
})

/** All but the first line, which has the time. */
function linesOf(file: string): string[] {
  const lines = gunzipSync(readFileSync(file)).toString('utf8').split('\n').slice(1, -1)
  // Times are the same moment in whichever zone the server writes them.
  return lines.map((line) =>
    line.replace(
      /"(\d{4}-\d\d-\d\dT[\d:.]+(?:[+-]\d\d:\d\d)?)"/g,
      (_, time) => `"${Date.parse(time)}"`
    )
  )
}

async function inAnotherProcess(dataFolder: string): Promise<string> {
  const child = fork(new URL('./open-and-say.ts', import.meta.url), [dataFolder], {
    execArgv: ['--import', 'tsx'],
    stdio: ['ignore', 'pipe', 'pipe', 'ipc'],
  })
  let said = ''
  child.stderr?.on('data', (chunk) => {
    said += String(chunk)
  })
  await new Promise((resolve) => child.on('exit', resolve))
  return said
}
