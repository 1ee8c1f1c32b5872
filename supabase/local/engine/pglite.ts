/** PGlite on disk, behind the interface every engine has: the guards first, then a worker thread. */
import { fork } from 'node:child_process'
import { existsSync, renameSync, rmSync } from 'node:fs'
import { dirname } from 'node:path'
import { besideEngine, loader } from './beside'
import { beginOf, type Engine, type Query, type Row, type Value } from './engine'
import { noSpace } from './pglite-settings'
import { WorkerClient } from './worker-client'

/**
 * The caller holds the lock of the data directory (`keep/lock`) until this is closed, and has compared
 * its note (`keep/format-note`).
 */
export async function openPglite(folder: string, onDeath: (error: Error) => void): Promise<Engine> {
  if (!existsSync(folder)) await makeDatabase(folder)
  const worker = new WorkerClient(folder, onDeath)
  try {
    await worker.opened
  } catch (error) {
    await worker.end()
    throw error
  }
  return engineOf(worker)
}

/** Made aside and moved in place when complete, so that an interrupted first start leaves nothing half made. */
async function makeDatabase(folder: string): Promise<void> {
  const aside = `${folder}.new`
  rmSync(aside, { recursive: true, force: true })
  const child = fork(besideEngine('pglite-first-time'), [aside], { execArgv: loader })
  const code = await new Promise<number | null>((resolve, reject) => {
    child.on('exit', resolve)
    child.on('error', reject)
  })
  if (code !== 0) {
    rmSync(aside, { recursive: true, force: true })
    throw new Error(
      `The first database could not be made in ${dirname(folder)}${code === noSpace ? ': the disk is full' : ''}. It needs 100 MB there: make room, or set ROWCALL_DATA to a folder on another disk.`
    )
  }
  renameSync(aside, folder)
}

function engineOf(worker: WorkerClient): Engine {
  /** Until when a transaction makes everybody else wait. */
  let free: Promise<void> = Promise.resolve()
  const query: Query = async <T extends Row>(sql: string, values: readonly Value[] = []) =>
    // Rows are whatever the statement says; whoever wrote it knows their type.
    (await worker.ask({ kind: 'query', sql, values })) as T[]
  const script = async (sql: string) => void (await worker.ask({ kind: 'script', sql }))

  return {
    name: 'PGlite',
    query: async (sql, values) => {
      await free
      return query(sql, values)
    },
    script: async (sql) => {
      await free
      await script(sql)
    },
    transaction: async (kind, work) => {
      const before = free
      let release = () => {}
      const released = new Promise<void>((resolve) => {
        release = resolve
      })
      free = before.then(() => released)
      await before
      try {
        await script(beginOf(kind))
        const result = await work(query)
        await script('commit')
        return result
      } catch (error) {
        await script('rollback')
        throw error
      } finally {
        release()
      }
    },
    listen: (channel, onPayload) => worker.listen(channel, onPayload),
    vacuum: async () => {
      await free
      await worker.ask({ kind: 'vacuum' })
    },
    close: async () => {
      await free
      await worker.ask({ kind: 'close' })
      await worker.end()
    },
  }
}
