/** Applies the migrations that a database does not have yet, each in one transaction with its record. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Engine } from '../engine/engine'
import { root } from '../root'

export type Migration = { name: string; sql: string }

export function readMigrations(folder = join(root, 'supabase/migrations')): Migration[] {
  return readdirSync(folder)
    .filter((file) => /^[0-9a-z_]+\.sql$/.test(file))
    .sort()
    .map((file) => ({
      name: file.replace(/\.sql$/, ''),
      sql: readFileSync(join(folder, file), 'utf8'),
    }))
}

/** Names of what is missing, in order; refuses a database that has been written by a newer Rowcall. */
export async function missingMigrations(
  engine: Engine,
  migrations: readonly Migration[]
): Promise<Migration[]> {
  const rows = await engine.query<{ name: string }>('select name from local_host.migrations')
  const applied = new Set(rows.map(({ name }) => name))
  const known = new Set(migrations.map(({ name }) => name))
  const unknown = [...applied].filter((name) => !known.has(name)).sort()
  if (unknown.length > 0) {
    throw new Error(
      `The data were written by a newer Rowcall (migration ${unknown.at(-1)}). Update this clone, or restore a backup from before.`
    )
  }
  return migrations.filter(({ name }) => !applied.has(name))
}

export async function applyMigrations(
  engine: Pick<Engine, 'script'>,
  migrations: readonly Migration[]
): Promise<void> {
  for (const { name, sql } of migrations) {
    // The line feed ends a comment on the last line of the file.
    const record = `\n;insert into local_host.migrations (name) values ('${name}')`
    try {
      await engine.script(sql + record)
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error)
      throw new Error(`The migration ${name} failed and changed nothing: ${reason}`, {
        cause: error,
      })
    }
  }
}
