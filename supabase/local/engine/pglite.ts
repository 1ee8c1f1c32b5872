/** PGlite on disk, behind the interface every engine has: the guards first, then a worker thread. */
import { fork } from 'node:child_process'
import { existsSync, renameSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { Worker } from 'node:worker_threads'
import { assertPgliteVersion } from '../keep/format-note'
import { type Engine, type Row, SqlError, type Value } from './engine'
import type { Reply, Request, WireError } from './pglite-worker'

type Waiting = { resolve: (rows: unknown[]) => void; reject: (error: Error) => void }
type Unnumbered<R> = R extends { id: number } ? Omit<R, 'id'> : never

/** The caller holds the lock of the data directory (`keep/lock`) before this and until it is closed. */
export async function openPglite(
  dataFolder: string,
  onDeath: (error: Error) => void
): Promise<Engine> {
  assertPgliteVersion()
  const folder = join(dataFolder, 'database')
  if (!existsSync(folder)) await makeDatabase(folder)
  return startWorker(folder, onDeath)
}

/** Made aside and moved in place when complete, so that an interrupted first start leaves nothing half made. */
async function makeDatabase(folder: string): Promise<void> {
  const aside = `${folder}.new`
  rmSync(aside, { recursive: true, force: true })
  const child = fork(besideThisFile('pglite-first-time'), [aside], { execArgv: loaderOf() })
  const code = await new Promise<number | null>((resolve, reject) => {
    child.on('exit', resolve)
    child.on('error', reject)
  })
  if (code !== 0) throw new Error('The first database could not be made: see the lines above.')
  renameSync(aside, folder)
}

async function startWorker(folder: string, onDeath: (error: Error) => void): Promise<Engine> {
  const worker = new Worker(besideThisFile('pglite-worker'), {
    workerData: { folder },
    execArgv: loaderOf(),
  })
  const waiting = new Map<number, Waiting>()
  const listeners = new Map<string, (payload: string) => void>()
  let lastId = 0
  let isClosing = false

  const expect = (id: number) =>
    new Promise<unknown[]>((resolve, reject) => waiting.set(id, { resolve, reject }))
  const ask = (request: Unnumbered<Request>) => {
    lastId += 1
    const answer = expect(lastId)
    worker.postMessage({ ...request, id: lastId })
    return answer
  }

  worker.on('message', (reply: Reply) => {
    if (reply.kind === 'notification') return listeners.get(reply.channel)?.(reply.payload)
    const caller = waiting.get(reply.id)
    waiting.delete(reply.id)
    if (reply.kind === 'done') caller?.resolve(reply.rows)
    else caller?.reject(errorOf(reply.error))
  })
  const die = (error: Error) => {
    for (const caller of waiting.values()) caller.reject(error)
    waiting.clear()
    if (!isClosing) onDeath(error)
  }
  worker.on('error', die)
  worker.on('exit', () => die(new Error('The database thread has ended.')))
  try {
    await expect(0)
  } catch (error) {
    isClosing = true
    await worker.terminate()
    throw error
  }

  return {
    name: 'PGlite',
    query: async <T extends Row>(sql: string, values: readonly Value[] = []) =>
      (await ask({ kind: 'query', sql, values })) as T[],
    script: async (sql) => void (await ask({ kind: 'script', sql })),
    listen: async (channel, onPayload) => {
      listeners.set(channel, onPayload)
      await ask({ kind: 'listen', channel })
    },
    vacuum: async () => void (await ask({ kind: 'vacuum' })),
    close: async () => {
      isClosing = true
      await ask({ kind: 'close' })
      await worker.terminate()
    },
  }
}

function errorOf(error: WireError): Error {
  return error.code === null
    ? new Error(error.message)
    : new SqlError(error.code, error.message, error.detail, error.hint)
}

/** Source under tsx and the tests, bundle in production: the same names, another ending. */
const isBundled = import.meta.url.endsWith('.js')

function besideThisFile(name: string): string {
  return fileURLToPath(new URL(`./${name}.${isBundled ? 'js' : 'ts'}`, import.meta.url))
}

function loaderOf(): string[] {
  return isBundled ? [] : ['--import', 'tsx']
}
