/**
 * The databases that SQL tests run on: the same suite on PGlite and on PostgreSQL.
 *
 *   describe.each(engines)('claims on $name', ({ open }) => {
 *     let db: TestDatabase
 *     beforeAll(async () => { db = await open() })
 *     afterAll(() => db.close())
 *     test('…', async () => {
 *       const ann = await db.newUser()
 *       const { status, body } = await db.as(ann, 'claim_tree', { p_tree: 12 })
 *       expect(await db.asOwner('select count(*) from claims')).toEqual([{ count: 1 }])
 *     })
 *   })
 *
 * Each `open()` is a fresh database with all migrations in it; it takes 0.3 s on PGlite, and 0.1 s on PostgreSQL
 * after the first of a run (2 s). Where there is no PostgreSQL the reason is printed and its half left out.
 */
import { afterAll } from 'vitest'
import type { Engine, Row, Value } from '../../supabase/local/engine/engine'
import { openTestEngine } from '../../supabase/local/engine/memory'
import { openPostgres } from '../../supabase/local/engine/postgres'
import { type Caller, rpcOf } from '../../supabase/local/http/rpc'
import { type Migration, readMigrations } from '../../supabase/local/keep/migrate'
import { noPostgres } from './postgres'
import { openPostgresDatabase } from './postgres-database'
import { templateOf } from './template'

export type Message = { topic: string; event: string; payload: Row }

export type TestDatabase = {
  engine: Engine
  /** One statement as the owner of the schema; the rows. */
  asOwner: <T extends Row = Row>(sql: string, values?: readonly Value[]) => Promise<T[]>
  /** Calls a function as the host does for this person. Bodies are parsed. */
  as: (who: string | 'anon', fn: string, values?: Row) => Promise<{ status: number; body: unknown }>
  /** Signs up an anonymous person and returns the id to give to `as`. */
  newUser: () => Promise<string>
  /** Collects what is broadcast from now on. On PostgreSQL it arrives a moment after the commit. */
  listenMessages: () => Promise<Message[]>
  close: () => Promise<void>
}

export type TestEngine = {
  name: 'PGlite' | 'PostgreSQL'
  open: (migrations?: readonly Migration[]) => Promise<TestDatabase>
}

const pglite: TestEngine = {
  name: 'PGlite',
  open: async (migrations = readMigrations()) =>
    testDatabase(await openTestEngine(await templateOf(migrations))),
}

const postgres: TestEngine = {
  name: 'PostgreSQL',
  open: async (migrations = readMigrations()) => {
    const { url, drop } = await openPostgresDatabase(migrations)
    return testDatabase(await openPostgres(url), drop)
  },
}

export const engines: TestEngine[] = noPostgres === null ? [pglite, postgres] : [pglite]

if (noPostgres !== null) {
  // At the end, where it is read.
  afterAll(() => console.warn(`Left out on PostgreSQL: ${noPostgres}.`))
}

function testDatabase(engine: Engine, drop: () => Promise<void> = async () => {}): TestDatabase {
  const rpc = rpcOf(engine)
  const messages: Message[] = []
  let listening: Promise<void> | null = null

  return {
    engine,
    asOwner: (sql, values) => engine.query(sql, values),
    as: async (who, fn, values = {}) => {
      const { status, body } = await rpc(callerOf(who), fn, values)
      return { status, body: typeof body === 'string' ? JSON.parse(body) : body }
    },
    newUser: async () => {
      const [user] = await engine.query<{ id: string }>(
        'insert into auth.users default values returning id'
      )
      if (!user) throw new Error('No user was made.')
      return user.id
    },
    listenMessages: async () => {
      listening ??= engine.listen(
        'realtime',
        (payload) => messages.push(JSON.parse(payload) as Message),
        () => {}
      )
      await listening
      return messages
    },
    close: async () => {
      await engine.close()
      await drop()
    },
  }
}

function callerOf(who: string): Caller {
  if (who === 'anon') return { role: 'anon', claims: { role: 'anon' } }
  const claims = { sub: who, aud: 'authenticated', role: 'authenticated', is_anonymous: true }
  return { role: 'authenticated', claims }
}
