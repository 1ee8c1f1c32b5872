/** The schema that migrations made, read back from the catalogue as one text in a fixed order. `npm run schema` writes it. */
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { makeTemplate, openTestEngine } from './engine/memory'
import { readMigrations } from './keep/migrate'
import { root } from './root'

export const schemaFile = join(root, 'supabase/schema.sql')

type Query = (sql: string) => Promise<Record<string, unknown>[]>

export async function schemaOf(query: Query): Promise<string> {
  const parts = ['-- Generated from migrations/ by `npm run schema`. Do not edit.']
  for (const sql of [types, tables, foreignKeys, indexes, policies, functions, defaults]) {
    const rows = await query(sql)
    parts.push(rows.map(({ text }) => String(text)).join('\n\n'))
  }
  return `${parts.join('\n\n')}\n`
}

const ours = `'public'::regnamespace, 'private'::regnamespace`

const types = `
  select format(E'create type %s as (\\n%s\\n);', t.oid::regtype, string_agg(
    format('  %I %s', a.attname, format_type(a.atttypid, a.atttypmod)), E',\\n' order by a.attnum)) as text
  from pg_type t
  join pg_class c on c.oid = t.typrelid and c.relkind = 'c'
  join pg_attribute a on a.attrelid = c.oid and a.attnum > 0
  where t.typnamespace in (${ours})
  group by t.oid order by t.oid::regtype::text collate "C"`

// Not null is said with the column; Postgres 18 would list it as a constraint too.
const tables = `
  select format(E'create table %s (\\n%s\\n);', c.oid::regclass, concat_ws(E',\\n',
    (select string_agg(format('  %I %s', a.attname, format_type(a.atttypid, a.atttypmod))
        || case when a.attnotnull then ' not null' else '' end
        || coalesce(' default ' || pg_get_expr(d.adbin, d.adrelid), ''), E',\\n' order by a.attnum)
      from pg_attribute a left join pg_attrdef d on d.adrelid = a.attrelid and d.adnum = a.attnum
      where a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped),
    (select string_agg(format('  constraint %I %s', k.conname, pg_get_constraintdef(k.oid)), E',\\n'
        order by k.contype, k.conname collate "C")
      from pg_constraint k where k.conrelid = c.oid and k.contype in ('p', 'u', 'c'))))
    || case when c.relrowsecurity then E'\\nalter table ' || c.oid::regclass || ' enable row level security;' else '' end
    || coalesce((
      select string_agg(E'\\n' || case
          when d.objsubid = 0 then format('comment on table %s is %L;', c.oid::regclass, d.description)
          else format('comment on column %s.%I is %L;', c.oid::regclass, a.attname, d.description) end, '' order by d.objsubid)
      from pg_description d left join pg_attribute a on a.attrelid = d.objoid and a.attnum = d.objsubid
      where d.objoid = c.oid and d.classoid = 'pg_class'::regclass), '') as text
  from pg_class c
  where c.relnamespace in (${ours}) and c.relkind = 'r'
  order by c.oid::regclass::text collate "C"`

const foreignKeys = `
  select string_agg(format('alter table %s add constraint %I %s;', k.conrelid::regclass, k.conname, pg_get_constraintdef(k.oid)), E'\\n'
    order by k.conrelid::regclass::text collate "C", k.conname collate "C") as text
  from pg_constraint k where k.contype = 'f' and k.connamespace in (${ours})`

const indexes = `
  select string_agg(pg_get_indexdef(i.indexrelid) || ';', E'\\n' order by i.indexrelid::regclass::text collate "C") as text
  from pg_index i join pg_class c on c.oid = i.indrelid
  where c.relnamespace in (${ours}) and c.relkind = 'r'
    and not exists (select 1 from pg_constraint k where k.conindid = i.indexrelid and k.contype in ('p', 'u'))`

const policies = `
  select string_agg(format(E'create policy %I on %I.%I for %s to %s\\n  using (%s);', policyname, schemaname, tablename, lower(cmd),
    array_to_string(roles, ', '), qual), E'\\n' order by policyname collate "C") as text
  from pg_policies`

const functions = `
  select rtrim(pg_get_functiondef(p.oid), E'\\n') || ';'
    || coalesce(E'\\ncomment on function ' || p.oid::regprocedure || ' is ' || quote_literal(obj_description(p.oid, 'pg_proc')) || ';', '')
    || coalesce((
      select string_agg(format(E'\\ngrant execute on function %s to %s;', p.oid::regprocedure,
        case when g.grantee = 0 then 'public' else g.grantee::regrole::text end), '' order by g.grantee::regrole::text collate "C")
      from aclexplode(p.proacl) g where g.grantee <> p.proowner and g.grantee::regrole::text <> 'service_role'), '') as text
  from pg_proc p
  where p.pronamespace in (${ours})
  order by p.oid::regprocedure::text collate "C"`

const defaults = `
  select string_agg(format('-- default privileges %s %s: %s', coalesce('in ' || nullif(d.defaclnamespace, 0)::regnamespace::text, 'everywhere'),
    case d.defaclobjtype when 'f' then 'functions' when 'r' then 'tables' else d.defaclobjtype::text end, d.defaclacl::text), E'\\n'
    order by d.defaclnamespace, d.defaclobjtype) as text
  from pg_default_acl d
  where pg_get_userbyid(d.defaclrole) = pg_get_userbyid((select nspowner from pg_namespace where nspname = 'private'))`

async function writeSchema(): Promise<void> {
  const engine = await openTestEngine(await makeTemplate(readMigrations()))
  writeFileSync(schemaFile, await schemaOf((sql) => engine.query(sql)))
  await engine.close()
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await writeSchema()
