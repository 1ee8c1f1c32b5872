/** What must hold for every table and function, whoever writes the next one. */

import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import { doors } from './doors'

describe.each(engines)('catalogue on $name', ({ open }) => {
  let database: TestDatabase
  beforeAll(async () => {
    database = await open()
  }, 60_000)
  afterAll(() => database.close())

  async function column(sql: string): Promise<unknown[]> {
    const rows = await database.asOwner(sql)
    return rows.map((row) => Object.values(row)[0])
  }

  test('every table has row-level security on', async () => {
    const tables = await column(`select relname from pg_class where ${isOurTable}`)
    const open = await column(
      `select relname from pg_class where ${isOurTable} and not relrowsecurity`
    )

    expect(tables.length).toBeGreaterThan(30)
    expect(open).toEqual([])
  })

  test('no caller has any right on a table', async () => {
    const granted = await column(`
      select relname || ' to ' || ${grantee}
      from pg_class, aclexplode(coalesce(relacl, acldefault('r', relowner))) g
      where ${isOurTable} and ${isCaller}`)
    expect(granted).toEqual([])
  })

  test('the doors are exactly the functions in public', async () => {
    const functions = await column(`
      select proname from pg_proc where pronamespace = 'public'::regnamespace order by proname collate "C"`)
    expect(functions).toEqual(Object.keys(doors).sort())
  })

  test('every door is granted to signed-in people and to nobody else', async () => {
    const grants = await column(`
      select proname || ' to ' || string_agg(${grantee}, ', ')
      from pg_proc, aclexplode(coalesce(proacl, acldefault('f', proowner))) g
      where pronamespace = 'public'::regnamespace and ${isCaller}
      group by proname order by proname collate "C"`)
    expect(grants).toEqual(
      Object.keys(doors)
        .sort()
        .map((name) => `${name} to authenticated`)
    )
  })

  test('private functions are for the owner, except the look-up behind the policy', async () => {
    const usable = await column(`
      select distinct proname from pg_proc, aclexplode(coalesce(proacl, acldefault('f', proowner))) g
      where pronamespace = 'private'::regnamespace and ${isCaller}`)
    expect(usable).toEqual(['may_listen'])
  })

  test('only doors and may_listen run with the rights of the owner', async () => {
    const definers = await column(`
      select proname from pg_proc where ${isOurFunction} and prosecdef order by proname collate "C"`)
    expect(definers).toEqual([...Object.keys(doors), 'may_listen'].sort())
  })

  test('every function sets an empty search path', async () => {
    const others = await column(`
      select proname from pg_proc
      where ${isOurFunction} and proconfig is distinct from array['search_path=""']`)
    expect(others).toEqual([])
  })

  test('the owner of everything is not a superuser', async () => {
    const owners = await column(`
      select distinct proowner::regrole::text from pg_proc where ${isOurFunction}
      union select relowner::regrole::text from pg_class where ${isOurTable}`)
    const [isSuperuser] = await column(
      `select rolsuper from pg_roles where rolname = '${String(owners[0])}'`
    )
    expect(owners).toHaveLength(1)
    expect(isSuperuser).toBe(false)
  })

  test('a new function or table starts closed', async () => {
    const owner = `(select nspowner from pg_namespace where nspname = 'private')`
    const opened = await column(`
      select d.defaclobjtype::text || ' to ' || ${grantee}
      from pg_default_acl d, aclexplode(d.defaclacl) g
      where d.defaclrole = ${owner} and d.defaclobjtype in ('f', 'r') and ${isCaller}`)
    const functionsClosed = await column(`
      select 1 from pg_default_acl
      where defaclrole = ${owner} and defaclobjtype = 'f' and defaclnamespace = 0`)

    expect(opened).toEqual([])
    expect(functionsClosed).toEqual([1])
  })

  test('only private is used by signed-in people, and nobody else makes anything', async () => {
    const rights = await column(`
      select nspname || ': ' || ${grantee} || ' ' || lower(g.privilege_type)
      from pg_namespace, aclexplode(nspacl) g
      where nspname in ('public', 'private') and ${isCaller}
        and not (nspname = 'public' and g.privilege_type = 'USAGE')
      order by 1`)
    expect(rights).toEqual(['private: authenticated usage'])
  })

  test('there is one policy: members hear the current channel', async () => {
    const policies = await database.asOwner(
      `select schemaname, tablename, policyname, cmd, roles::text from pg_policies`
    )
    expect(policies).toEqual([
      {
        schemaname: 'realtime',
        tablename: 'messages',
        policyname: 'members hear the current channel of their orchard',
        cmd: 'SELECT',
        roles: '{authenticated}',
      },
    ])
  })

  test('every constraint is named as a claim, by hand', async () => {
    // Single-column keys in the table's own line are the exception: `id uuid primary key`.
    const automatic = await column(`
      select conrelid::regclass || '.' || conname from pg_constraint
      where connamespace = 'public'::regnamespace and contype in ('f', 'u', 'c')
        and conname ~ '_(fkey|key|check)[0-9]*$'
        and not (contype = 'u' and conname = conrelid::regclass || '_key')`)
    expect(automatic).toEqual([])
  })
})

test('every foreign key says what a deletion does', () => {
  const folder = fileURLToPath(new URL('../../supabase/migrations', import.meta.url))
  const references = readdirSync(folder).flatMap((file) =>
    readFileSync(`${folder}/${file}`, 'utf8')
      .split('\n')
      .filter((line) => /\breferences public\./.test(line))
      .map((line) => `${file}: ${line.trim()}`)
  )

  expect(references.length).toBeGreaterThan(40)
  expect(references.filter((line) => !/ on delete (cascade|no action)/.test(line))).toEqual([])
})

const isOurTable = `relnamespace in ('public'::regnamespace, 'private'::regnamespace) and relkind in ('r', 'p', 'v', 'm', 'S')`
const isOurFunction = `pronamespace in ('public'::regnamespace, 'private'::regnamespace)`
/** Who comes through the API. The service role is on the server only, and passes every wall. */
const grantee = `coalesce(nullif(g.grantee, 0)::regrole::text, 'public')`
const isCaller = `${grantee} in ('public', 'anon', 'authenticated')`
