/** Makes sure that a PostgreSQL has the roles, whoever DATABASE_URL signs in as. */
import pg from 'pg'
import { prepareRoles } from './bootstrap'

export async function prepareDatabase(databaseUrl: string): Promise<void> {
  const client = new pg.Client({ connectionString: databaseUrl })
  await client.connect().catch((error: Error) => {
    throw new Error(
      `The database at DATABASE_URL does not let us in: ${error.message}. Start it, or correct DATABASE_URL.`
    )
  })
  try {
    const { rows } = await client.query<{ superuser: boolean }>(
      `select current_setting('is_superuser') = 'on' as superuser`
    )
    if (rows[0]?.superuser) await prepareRoles((sql) => client.query(sql))
    else await refuseWithoutRoles(client)
  } finally {
    await client.end()
  }
}

async function refuseWithoutRoles(client: pg.Client): Promise<void> {
  const { rows } = await client.query<{ ready: boolean }>(
    `select count(*) = 2 as ready from pg_catalog.pg_roles
     where rolname in ('anon', 'authenticated') and pg_has_role(current_user, oid, 'member')`
  )
  if (rows[0]?.ready) return
  throw new Error(
    'The database at DATABASE_URL is not prepared, and this user may not do it. As an administrator of it run supabase/local/bootstrap/roles.sql, then "alter role rowcall_owner login password …", and sign in as rowcall_owner.'
  )
}
