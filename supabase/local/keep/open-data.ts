/** Opens the data of this host, whichever database they are in, and brings them up to this clone. */
import { existsSync, renameSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { prepareSchemas } from '../bootstrap/bootstrap'
import { prepareDatabase } from '../bootstrap/prepare-database'
import type { Engine } from '../engine/engine'
import { openPglite } from '../engine/pglite'
import { openPostgres } from '../engine/postgres'
import { backUp } from './backup'
import { forgetOldest, nextBackupFile } from './backups'
import { forgetAgain, forgottenBeside, noteForgotten } from './forgotten'
import { assertPgliteVersion, checkNote, noteOf, readNote, writeNote } from './format-note'
import { lockFolder } from './lock'
import { applyMigrations, type Migration, missingMigrations, readMigrations } from './migrate'
import { inspectBackup, restoreInto } from './restore'
import { makeDataFolder } from './secrets'

export type Where = { dataFolder: string; databaseUrl: string | null }

export type Data = {
  engine: Engine
  /** Nothing was there before. */
  isNew: boolean
  close: () => Promise<void>
}

type Opening = Where & {
  migrations?: readonly Migration[]
  onDeath?: (error: Error) => void
}

export async function openData(opening: Opening): Promise<Data> {
  const { migrations = readMigrations() } = opening
  const held = await hold(opening, migrations)
  try {
    const engine = await held.open('database')
    try {
      const isNew = await upgrade(engine, opening.dataFolder, migrations)
      held.note(migrations)
      return { engine, isNew, close: () => engine.close().finally(held.release) }
    } catch (error) {
      await engine.close()
      throw error
    }
  } catch (error) {
    await held.release()
    throw error
  }
}

/**
 * Restores beside the data and then takes their place, so that a damaged backup changes nothing. What
 * was there stays in a folder of its own.
 */
export async function restoreData(
  opening: Opening & { file: string }
): Promise<{ rows: number; before: string | null }> {
  const { migrations = readMigrations(), dataFolder, databaseUrl, file } = opening
  const backup = await inspectBackup(file, migrations)
  const held = await hold(opening, migrations)
  const aside = join(dataFolder, 'database.restoring')
  try {
    rmSync(aside, { recursive: true, force: true })
    if (!databaseUrl) await noteWhomItForgot(held, dataFolder)
    const engine = await held.open('database.restoring')
    try {
      if (databaseUrl) await refuseFull(engine)
      await restoreInto(engine, backup, migrations)
      await forgetAgain(engine, forgottenBeside(file, dataFolder))
      await engine.close()
      const before = databaseUrl ? null : swap(dataFolder)
      held.note(migrations)
      return { rows: backup.rows, before }
    } catch (error) {
      await engine.close().catch(() => {})
      if (!databaseUrl) rmSync(aside, { recursive: true, force: true })
      throw error
    }
  } finally {
    await held.release()
  }
}

/** Somebody may have been forgotten since the list beside the backups was written. */
async function noteWhomItForgot(held: Held, dataFolder: string): Promise<void> {
  if (!existsSync(join(dataFolder, 'database'))) return
  try {
    const engine = await held.open('database')
    await noteForgotten(engine, dataFolder).finally(() => engine.close())
  } catch {
    // What is to be replaced may be broken: then the list is all there is.
  }
}

type Held = {
  open: (name: string) => Promise<Engine>
  note: (migrations: readonly Migration[]) => void
  release: () => Promise<void>
}

async function hold(opening: Opening, migrations: readonly Migration[]): Promise<Held> {
  const { dataFolder, databaseUrl, onDeath = () => {} } = opening
  makeDataFolder(dataFolder)
  if (databaseUrl) {
    await prepareDatabase(databaseUrl)
    const open = () => openPostgres(databaseUrl)
    return { open, note: () => {}, release: async () => {} }
  }
  assertPgliteVersion()
  const lock = await lockFolder(dataFolder)
  try {
    const note = readNote(dataFolder)
    if (note)
      checkNote(
        note,
        migrations.map(({ name }) => name)
      )
    else writeNote(dataFolder, noteOf(null))
    finishSwap(dataFolder)
    return {
      open: (name) => openPglite(join(dataFolder, name), onDeath),
      note: (applied) => writeNote(dataFolder, noteOf(applied.at(-1)?.name ?? null)),
      release: lock.release,
    }
  } catch (error) {
    await lock.release()
    throw error
  }
}

/** Whether the database was empty. */
async function upgrade(
  engine: Engine,
  dataFolder: string,
  migrations: readonly Migration[]
): Promise<boolean> {
  await prepareSchemas((sql) => engine.script(sql))
  const missing = await missingMigrations(engine, migrations)
  const isNew = missing.length === migrations.length
  if (missing.length > 0 && !isNew) {
    await backUp(engine, nextBackupFile(dataFolder, 'before-migration'))
    forgetOldest(dataFolder, 'before-migration')
  }
  await applyMigrations(engine, missing)
  return isNew
}

async function refuseFull(engine: Engine): Promise<void> {
  await prepareSchemas((sql) => engine.script(sql))
  const applied = await engine.query('select from local_host.migrations limit 1')
  if (applied.length > 0) {
    throw new Error(
      'The database at DATABASE_URL already holds a Rowcall. Make an empty one, set DATABASE_URL to it, and restore there.'
    )
  }
}

/** The name database.restored is given to what is complete only: `finishSwap` relies on it. */
function swap(dataFolder: string): string | null {
  const [current, restored] = [join(dataFolder, 'database'), join(dataFolder, 'database.restored')]
  const time = new Date().toISOString().slice(0, 19).replaceAll(':', '-')
  const before = join(dataFolder, `database.before-restore-${time}`)
  const wasThere = existsSync(current)
  rmSync(restored, { recursive: true, force: true })
  renameSync(join(dataFolder, 'database.restoring'), restored)
  if (wasThere) renameSync(current, before)
  finishSwap(dataFolder)
  return wasThere ? before : null
}

/** Also at each start: a restore may have been stopped when the old database was away and the new one not in place. */
function finishSwap(dataFolder: string): void {
  const [current, restored] = [join(dataFolder, 'database'), join(dataFolder, 'database.restored')]
  if (!existsSync(current) && existsSync(restored)) renameSync(restored, current)
}
