/** PostgreSQL by address: a pool for calls and one connection that listens. */
import pg from 'pg'
import { asSqlError, beginOf, type Engine, owner, type Row, type Value } from './engine'

/** The pool knows this option, its types do not yet. */
type PoolOptions = pg.PoolConfig & { onConnect?: (client: pg.ClientBase) => Promise<unknown> }

const oldestMajor = 15
const statementLimitMs = 10_000
const listenerPauseMs = 1_000

export async function openPostgres(url: string, connections = 10): Promise<Engine> {
  const asAdministrator = await inspect(url)
  const settings = { connectionString: url, application_name: 'rowcall', types }
  const options: PoolOptions = {
    ...settings,
    max: connections,
    statement_timeout: statementLimitMs,
    // Before a connection is given to anybody, so that nothing of ours ever runs as a superuser.
    ...(asAdministrator && {
      onConnect: (client) => client.query(`set session authorization ${owner}`),
    }),
  }
  const pool = new pg.Pool(options)
  // A connection the server closed while idle is replaced at its next use; nothing is lost by it.
  pool.on('error', () => {})
  const listener = new Listener(settings)

  return {
    name: 'PostgreSQL',
    query: async <T extends Row>(sql: string, values: readonly Value[] = []) => {
      try {
        return (await pool.query(sql, [...values])).rows as T[]
      } catch (error) {
        throw asSqlError(error)
      }
    },
    script: async (sql) => {
      try {
        // A migration of a large table takes longer than any call may.
        await pool.query(`set local statement_timeout = 0;\n${sql}`)
      } catch (error) {
        throw asSqlError(error)
      }
    },
    transaction: async (kind, work) => {
      const client = await pool.connect()
      try {
        // So does a backup.
        await client.query(`set statement_timeout = 0; ${beginOf(kind)}`)
        const result = await work(
          async (sql, values = []) => (await client.query(sql, [...values])).rows
        )
        await client.query('commit')
        return result
      } finally {
        // Not back into the pool: this ends the transaction whatever happened in it.
        client.release(true)
      }
    },
    listen: (channel, onPayload, onGap) => listener.start(channel, onPayload, onGap),
    // The server vacuums by itself.
    vacuum: async () => {},
    close: async () => {
      await listener.stop()
      await pool.end()
    },
  }
}

/** Whether the address is an administrator's, after refusing a server that is too old. */
async function inspect(url: string): Promise<boolean> {
  const client = new pg.Client({ connectionString: url })
  await client.connect()
  try {
    const { rows } = await client.query<{ major: number; superuser: boolean }>(
      `select current_setting('server_version_num')::int / 10000 as major,
              current_setting('is_superuser') = 'on' as superuser`
    )
    const { major = 0, superuser = false } = rows[0] ?? {}
    if (major < oldestMajor) {
      throw new Error(
        `The database at DATABASE_URL is PostgreSQL ${major}. Rowcall needs ${oldestMajor} or newer.`
      )
    }
    return superuser
  } finally {
    await client.end()
  }
}

class Listener {
  private client: pg.Client | null = null
  private isStopped = false

  constructor(private readonly settings: pg.ClientConfig) {}

  async start(channel: string, onPayload: (payload: string) => void, onGap: () => void) {
    const client = new pg.Client({ ...this.settings, keepAlive: true })
    client.on('notification', ({ payload }) => onPayload(payload ?? ''))
    // 'end' follows every error of a connection; it is what we act on.
    client.on('error', () => {})
    await client.connect()
    await client.query(`listen ${pg.escapeIdentifier(channel)}`)
    this.client = client
    client.on('end', () => void this.again(channel, onPayload, onGap))
  }

  private async again(channel: string, onPayload: (payload: string) => void, onGap: () => void) {
    while (!this.isStopped) {
      try {
        await this.start(channel, onPayload, onGap)
        return onGap()
      } catch {
        await new Promise((resolve) => setTimeout(resolve, listenerPauseMs))
      }
    }
  }

  async stop() {
    this.isStopped = true
    await this.client?.end()
  }
}

/** Values as PGlite gives them: counts are numbers, a date is the text of a day. */
const types: pg.CustomTypesConfig = {
  getTypeParser: ((oid: number, format?: 'text' | 'binary') => {
    if (oid === pg.types.builtins.INT8) return Number
    if (oid === pg.types.builtins.DATE) return String
    return pg.types.getTypeParser(oid, format)
  }) as typeof pg.types.getTypeParser,
}
