/** The tables that are kept: all of ours and who is signed in. Messages on their way are not. */
import type { Query } from '../engine/engine'

export type Table = { name: string; columns: string[] }

export function tablesOf(query: Query): Promise<Table[]> {
  return query<Table>(
    `select c.oid::regclass::text as name,
            array_agg(a.attname::text order by a.attnum) filter (where a.attgenerated = '') as columns
     from pg_catalog.pg_class c
     join pg_catalog.pg_namespace s on s.oid = c.relnamespace
     join pg_catalog.pg_attribute a on a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped
     where c.relkind = 'r' and s.nspname in ('auth', 'public', 'private')
     group by c.oid, s.nspname, c.relname
     order by s.nspname collate "C", c.relname collate "C"`
  )
}
