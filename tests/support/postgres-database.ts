/** Databases in the tests' cluster, copied from one that has the migrations, with an owner who is no superuser. */
import { randomBytes } from 'node:crypto'
import { afterAll } from 'vitest'
import { prepareRoles, prepareSchemas } from '../../supabase/local/bootstrap/bootstrap'
import { owner } from '../../supabase/local/engine/engine'
import { openPostgres } from '../../supabase/local/engine/postgres'
import { applyMigrations, type Migration } from '../../supabase/local/keep/migrate'
import { type Cluster, runOn, startCluster } from './postgres'

let cluster: Promise<Cluster> | null = null
const templates = new Map<string, Promise<string>>()

afterAll(async () => {
  await (await cluster)?.stop()
  cluster = null
  templates.clear()
})

export async function openPostgresDatabase(
  migrations: readonly Migration[]
): Promise<{ url: string; drop: () => Promise<void> }> {
  cluster ??= startCluster()
  const { url } = await cluster
  const key = JSON.stringify(migrations)
  const template = templates.get(key) ?? makeTemplate(url, migrations)
  templates.set(key, template)
  const name = `t_${randomBytes(6).toString('hex')}`
  await runOn(url('postgres'), [
    `create database ${name} owner ${owner} template ${await template}`,
  ])

  return {
    url: url(name, owner),
    drop: () => runOn(url('postgres'), [`drop database ${name} with (force)`]),
  }
}

/** What an administrator prepares, and then everything else as the owner. */
async function makeTemplate(
  url: Cluster['url'],
  migrations: readonly Migration[]
): Promise<string> {
  const name = `template_${randomBytes(6).toString('hex')}`
  await runOn(url('postgres'), [`create database ${name}`])
  await prepareRoles((sql) => runOn(url(name), [sql]))
  await runOn(url(name), [`alter role ${owner} login`, `alter database ${name} owner to ${owner}`])
  const engine = await openPostgres(url(name, owner), 1)
  try {
    await prepareSchemas((sql) => engine.script(sql))
    await applyMigrations(engine, migrations)
  } finally {
    await engine.close()
  }
  return name
}
