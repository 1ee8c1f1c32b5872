/** The worker thread that PGlite blocks, so that sockets and pages are served meanwhile. */
import { parentPort, workerData } from 'node:worker_threads'
import { PGlite } from '@electric-sql/pglite'
import { assertDurable, DurableFiles } from './durable-files'
import { asSqlError, owner, SqlError, type Value } from './engine'
import { startParameters } from './pglite-settings'

export type Request =
  | { kind: 'query'; id: number; sql: string; values: readonly Value[] }
  | { kind: 'script'; id: number; sql: string }
  | { kind: 'listen'; id: number; channel: string }
  | { kind: 'vacuum'; id: number }
  | { kind: 'close'; id: number }

export type Reply =
  | { kind: 'done'; id: number; rows: unknown[] }
  | { kind: 'failed'; id: number; error: WireError }
  | { kind: 'notification'; channel: string; payload: string }

export type WireError = {
  code: string | null
  message: string
  detail: string | null
  hint: string | null
}

const port = parentPort
if (!port) throw new Error('pglite-worker runs as a worker thread only.')
const opened = openOnDisk((workerData as { folder: string }).folder)

opened.then(
  () => port.postMessage({ kind: 'done', id: 0, rows: [] } satisfies Reply),
  (error) => port.postMessage({ kind: 'failed', id: 0, error: wireOf(error) } satisfies Reply)
)

port.on('message', (request: Request) => {
  opened
    .then((pglite) => answer(pglite, request))
    .then(
      (rows) => port.postMessage({ kind: 'done', id: request.id, rows } satisfies Reply),
      (error) =>
        port.postMessage({ kind: 'failed', id: request.id, error: wireOf(error) } satisfies Reply)
    )
})

async function openOnDisk(folder: string): Promise<PGlite> {
  const files = new DurableFiles(folder)
  const pglite = await PGlite.create({ fs: files, startParams: startParameters })
  await assertDurable(pglite, files)
  await pglite.exec(`set session authorization ${owner}`)
  return pglite
}

async function answer(pglite: PGlite, request: Request): Promise<unknown[]> {
  switch (request.kind) {
    case 'query':
      return (await pglite.query(request.sql, [...request.values])).rows
    case 'script':
      await pglite.exec(request.sql)
      return []
    case 'listen': {
      const { channel } = request
      await pglite.listen(channel, (payload) =>
        port?.postMessage({ kind: 'notification', channel, payload } satisfies Reply)
      )
      return []
    }
    case 'vacuum':
      await pglite.exec('reset session authorization')
      try {
        await pglite.exec('vacuum')
      } finally {
        await pglite.exec(`set session authorization ${owner}`)
      }
      return []
    case 'close':
      await pglite.close()
      return []
  }
}

function wireOf(thrown: unknown): WireError {
  const error = asSqlError(thrown)
  if (error instanceof SqlError) {
    return { code: error.code, message: error.message, detail: error.detail, hint: error.hint }
  }
  return { code: null, message: messageOf(error), detail: null, hint: null }
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error)
}
