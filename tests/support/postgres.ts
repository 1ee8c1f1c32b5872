/**
 * A PostgreSQL of the tests' own: a throw-away cluster on a Unix socket, started as a user who is not
 * root, that ends with the process whatever happens to it.
 */
import { execFileSync, spawn } from 'node:child_process'
import { chownSync, existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import pg from 'pg'
import { findPostgres } from './find-programs.mjs'

/** Why there is none, or null. */
export const noPostgres: string | null = reasonAgainst()

export type Cluster = { folder: string; stop: () => Promise<void> }

export async function startCluster(): Promise<Cluster> {
  const programs = findPostgres()
  if (!programs) throw new Error(noPostgres ?? 'No PostgreSQL.')
  const folder = mkdtempSync(join(tmpdir(), 'rowcall-pg-'))
  const user = unprivileged()
  if (user) chownSync(folder, user.uid, user.gid)
  const files = join(folder, 'files')
  const initdb = ['-D', files, '-U', 'postgres', '-A', 'trust', '-E', 'UTF8', '--locale=C', '-N']
  execFileSync(join(programs, 'initdb'), initdb, { ...user, cwd: folder, stdio: 'pipe' })

  // The shell waits on our pipe: when this process dies, even by kill -9, the server is stopped.
  const script = '"$@" & server=$!; read _; kill -INT $server; wait $server'
  const settings = ['fsync=off', 'synchronous_commit=off', 'full_page_writes=off']
  const where = ['-D', files, '-k', folder, '-h', '']
  const shell = spawn(
    'sh',
    [
      '-c',
      script,
      'sh',
      join(programs, 'postgres'),
      ...where,
      ...settings.flatMap((s) => ['-c', s]),
    ],
    { ...user, cwd: folder, stdio: ['pipe', 'ignore', 'ignore'] }
  )
  shell.unref()
  const ended = new Promise<void>((resolve) => shell.once('exit', () => resolve()))
  await untilReady(addressIn(folder, 'postgres'))

  return {
    folder,
    stop: async () => {
      shell.ref()
      shell.stdin.end('\n')
      await ended
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

/** Address of a database for the superuser, or for the owner of the schema. */
export function addressIn(folder: string, database: string, user = 'postgres'): string {
  return `postgres://${user}@localhost/${database}?host=${encodeURIComponent(folder)}`
}

/** Runs statements one after the other on a connection of their own. */
export async function runOn(url: string, statements: readonly string[]): Promise<void> {
  const client = new pg.Client({ connectionString: url })
  await client.connect()
  try {
    for (const statement of statements) await client.query(statement)
  } finally {
    await client.end()
  }
}

async function untilReady(url: string): Promise<void> {
  const deadline = Date.now() + 20_000
  for (;;) {
    try {
      return await runOn(url, ['select 1'])
    } catch (error) {
      if (Date.now() > deadline) throw error
      await new Promise((resolve) => setTimeout(resolve, 25))
    }
  }
}

/** PostgreSQL refuses to run as root: then somebody else, who has nothing. */
function unprivileged(): { uid: number; gid: number } | undefined {
  if (process.getuid?.() !== 0) return undefined
  const lines = execFileSync('getent', ['passwd', 'nobody'], { encoding: 'utf8' }).trim().split(':')
  return { uid: Number(lines[2]), gid: Number(lines[3]) }
}

function reasonAgainst(): string | null {
  if (process.platform === 'win32')
    return 'the throw-away PostgreSQL of the tests needs a Unix shell'
  const programs = findPostgres()
  if (!programs)
    return 'no PostgreSQL 15 or newer was found (set ROWCALL_POSTGRES_BIN to its bin folder)'
  return existsSync(join(programs, 'initdb')) ? null : `there is no initdb in ${programs}`
}
