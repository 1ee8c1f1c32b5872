/**
 * One compressed file of JSON lines with every row, that any engine can read: a first line that says
 * what it is, the tables one after the other, and a last line with the count.
 */
import { createWriteStream } from 'node:fs'
import { open, rename, rm } from 'node:fs/promises'
import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { createGzip } from 'node:zlib'
import type { Engine, Query } from '../engine/engine'
import { nextBackupFile } from './backups'
import { lastForgotten, noteForgotten } from './forgotten'
import { type Table, tablesOf } from './tables'

/** Photos make rows of 300 kB. */
const rowsAtOnce = 50

export async function backUp(engine: Engine, file: string): Promise<{ rows: number }> {
  const aside = `${file}.part`
  try {
    const rows = await engine.transaction('read only', async (query) => {
      let count = 0
      const lines = Readable.from(linesOf(query, (rows) => (count += rows)))
      await pipeline(lines, createGzip(), createWriteStream(aside, { mode: 0o600 }))
      return count
    })
    await keepOnDisk(aside)
    await rename(aside, file)
    return { rows }
  } catch (error) {
    await rm(aside, { force: true })
    throw error
  }
}

/** The file in the folder of backups, and since when no backup has the name of anybody who was forgotten. */
export type MadeBackup = { file: string; forgottenAt: string | null }

export async function backUpByHand(engine: Engine, dataFolder: string): Promise<MadeBackup> {
  const file = nextBackupFile(dataFolder, 'by-hand')
  await backUp(engine, file)
  await noteForgotten(engine, dataFolder)
  return { file, forgottenAt: await lastForgotten(engine) }
}

async function* linesOf(query: Query, onRows: (count: number) => void): AsyncGenerator<string> {
  // Better an error than a backup from which a policy has hidden rows.
  await query('set local row_security = off')
  const migrations = await query<{ name: string }>(
    'select name from local_host.migrations order by name collate "C"'
  )
  yield line({
    format: 'rowcall-backup',
    version: 1,
    at: new Date().toISOString(),
    migrations: migrations.map(({ name }) => name),
  })
  let count = 0
  for (const table of await tablesOf(query)) {
    yield line({ table: table.name, columns: table.columns })
    for await (const rows of rowsOf(query, table)) {
      count += rows.length
      onRows(rows.length)
      yield `${rows.join('\n')}\n`
    }
  }
  yield line({ end: true, rows: count })
}

/** Rows as the database writes them in JSON, untouched: JavaScript would round large numbers. */
async function* rowsOf(query: Query, { name, columns }: Table): AsyncGenerator<string[]> {
  const list = columns.map((column) => `t."${column}"`).join(', ')
  await query(
    `declare rows_of_table no scroll cursor for
     select row_to_json(r)::text as row from (select ${list} from ${name} t) r`
  )
  for (;;) {
    const rows = await query<{ row: string }>(`fetch ${rowsAtOnce} from rows_of_table`)
    if (rows.length === 0) break
    // A line feed in JSON is space between values: within a text it is written as \n.
    yield rows.map(({ row }) => row.replaceAll('\n', ' '))
  }
  await query('close rows_of_table')
}

async function keepOnDisk(file: string): Promise<void> {
  const handle = await open(file, 'r+')
  await handle.sync()
  await handle.close()
}

function line(value: unknown): string {
  return `${JSON.stringify(value)}\n`
}
