/** Brings an empty database to where a hosted Supabase project starts, before any migration. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { root } from '../root'

const folder = join(root, 'supabase/local/bootstrap')

/** As an administrator: the roles, and the right of the owner to make schemas. */
export async function prepareRoles(run: (sql: string) => Promise<unknown>): Promise<void> {
  await run(readSql('roles'))
}

/** As the owner: the schemas auth and realtime as far as we use them, and the host's own. */
export async function prepareSchemas(run: (sql: string) => Promise<unknown>): Promise<void> {
  for (const name of ['auth', 'realtime', 'host']) await run(readSql(name))
}

/** All of it as text, to know whether a prepared database is still current. */
export function bootstrapText(): string {
  return ['roles', 'auth', 'realtime', 'host'].map(readSql).join('\n')
}

function readSql(name: string): string {
  return readFileSync(join(folder, `${name}.sql`), 'utf8')
}
