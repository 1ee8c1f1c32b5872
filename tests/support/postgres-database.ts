/** Databases in the run's cluster, copied from one that has the migrations, with an owner who is no superuser. */
import { createHash, randomBytes } from 'node:crypto'
import pg from 'pg'
import { inject } from 'vitest'
import { prepareRoles, prepareSchemas } from '../../supabase/local/bootstrap/bootstrap'
import { owner } from '../../supabase/local/engine/engine'
import { openPostgres } from '../../supabase/local/engine/postgres'
import { applyMigrations, type Migration } from '../../supabase/local/keep/migrate'
import { addressIn, runOn } from './postgres'

const templates = new Map<string, Promise<string>>()

export async function openPostgresDatabase(
  migrations: readonly Migration[]
): Promise<{ url: string; drop: () => Promise<void> }> {
  const key = createHash('sha256').update(JSON.stringify(migrations)).digest('hex').slice(0, 20)
  const template = templates.get(key) ?? findOrMakeTemplate(`template_${key}`, migrations)
  templates.set(key, template)
  const name = `t_${randomBytes(6).toString('hex')}`
  await runOn(urlOf('postgres'), [
    `create database ${name} owner ${owner} template ${await template}`,
  ])

  return {
    url: urlOf(name, owner),
    drop: () => runOn(urlOf('postgres'), [`drop database ${name} with (force)`]),
  }
}

function urlOf(database: string, user?: string): string {
  return addressIn(inject('postgresFolder'), database, user)
}

/** Of two test files that want the same one the second waits for the first. */
async function findOrMakeTemplate(name: string, migrations: readonly Migration[]): Promise<string> {
  const client = new pg.Client({ connectionString: urlOf('postgres') })
  await client.connect()
  try {
    await client.query('select pg_advisory_lock(1)')
    const found = await client.query('select from pg_database where datname = $1', [name])
    if (found.rows.length === 0) {
      const aside = `${name}_aside`
      await makeTemplate(aside, migrations)
      await client.query(`alter database ${aside} rename to ${name}`)
    }
    return name
  } finally {
    await client.end()
  }
}

/** What an administrator prepares, and then everything else as the owner. */
async function makeTemplate(name: string, migrations: readonly Migration[]): Promise<void> {
  await runOn(urlOf('postgres'), [`create database ${name}`])
  await prepareRoles((sql) => runOn(urlOf(name), [sql]))
  await runOn(urlOf(name), [
    `alter role ${owner} login`,
    `alter database ${name} owner to ${owner}`,
  ])
  const engine = await openPostgres(urlOf(name, owner), 1)
  try {
    await prepareSchemas((sql) => engine.script(sql))
    await applyMigrations(engine, migrations)
  } finally {
    await engine.close()
  }
}
