/** Puts a backup into a new, empty database, whichever engine wrote it. */
import { createReadStream } from 'node:fs'
import { createGunzip } from 'node:zlib'
import { z } from 'zod'
import { prepareSchemas } from '../bootstrap/bootstrap'
import type { Engine, Query } from '../engine/engine'
import { applyMigrations, type Migration } from './migrate'
import { type Table, tablesOf } from './tables'

const header = z.object({
  format: z.literal('rowcall-backup'),
  version: z.literal(1),
  migrations: z.array(z.string()),
})
const tableLine = z.object({ table: z.string(), columns: z.array(z.string()) })
const lastLine = z.object({ end: z.literal(true), rows: z.number() })

// A row never begins so: its first name is a column's, and none is called "table" or "end".
const tableStart = '{"table":'
const endStart = '{"end":'

const bytesAtOnce = 1_000_000

export type Backup = { file: string; migrations: readonly string[]; rows: number }

/** Reads a backup once through, so that a damaged one is refused before anything is made. */
export async function inspectBackup(
  file: string,
  migrations: readonly Migration[]
): Promise<Backup> {
  const lines = linesOf(file)
  const first = await lines.next()
  const { migrations: then } = readHeader(first.done ? '' : first.value, file)
  refuseNewer(then, migrations)
  let count = 0
  for await (const text of lines) {
    if (text.startsWith(tableStart)) continue
    if (text.startsWith(endStart)) return { file, migrations: then, rows: readEnd(text, count) }
    count += 1
  }
  throw damaged('its end is missing')
}

/** The engine is empty: no migration has been applied to it. */
export async function restoreInto(
  engine: Engine,
  { file, migrations: then }: Backup,
  migrations: readonly Migration[]
): Promise<void> {
  await prepareSchemas((sql) => engine.script(sql))
  await applyMigrations(
    engine,
    migrations.filter(({ name }) => then.includes(name))
  )
  await engine.transaction('read write', (query) => load(query, file))
  await applyMigrations(
    engine,
    migrations.filter(({ name }) => !then.includes(name))
  )
  await engine.script(
    `do $$ begin
       if to_regprocedure('private.after_restore()') is not null then perform private.after_restore(); end if;
     end $$`
  )
}

/**
 * References between tables are taken off and put on again at the end, where all of them are checked,
 * so the order of tables does not matter. Triggers would act a second time on what has been done.
 */
async function load(query: Query, file: string): Promise<void> {
  const tables = await tablesOf(query)
  const references = await query<{ table: string; name: string; definition: string }>(
    `select conrelid::regclass::text as table, quote_ident(conname) as name, pg_get_constraintdef(oid) as definition
     from pg_catalog.pg_constraint
     where contype = 'f' and connamespace in ('auth'::regnamespace, 'public'::regnamespace, 'private'::regnamespace)`
  )
  for (const { table, name } of references)
    await query(`alter table ${table} drop constraint ${name}`)
  for (const { name } of tables) await query(`alter table ${name} disable trigger user`)
  await query(`truncate ${tables.map(({ name }) => name).join(', ')}`)

  await loadRows(query, file, tables)

  for (const { name } of tables) await query(`alter table ${name} enable trigger user`)
  for (const { table, name, definition } of references) {
    await query(`alter table ${table} add constraint ${name} ${definition}`)
  }
  await advanceSequences(query)
}

async function loadRows(query: Query, file: string, tables: readonly Table[]): Promise<void> {
  let into: Table | null = null
  let waiting: string[] = []
  let bytes = 0
  const flush = async () => {
    if (into && waiting.length > 0) await insert(query, into, waiting)
    waiting = []
    bytes = 0
  }
  const lines = linesOf(file)
  await lines.next()
  for await (const text of lines) {
    if (text.startsWith(endStart)) return flush()
    if (text.startsWith(tableStart)) {
      await flush()
      into = known(tableLine.parse(JSON.parse(text)), tables)
    } else {
      waiting.push(text)
      bytes += text.length
      if (bytes > bytesAtOnce) await flush()
    }
  }
}

async function insert(query: Query, { name, columns }: Table, rows: readonly string[]) {
  const list = columns.map((column) => `"${column}"`).join(', ')
  await query(
    `insert into ${name} (${list}) overriding system value
     select ${list} from json_populate_recordset(null::${name}, $1::json)`,
    [`[${rows.join(',')}]`]
  )
}

/** Numbers given from now on are above those restored. */
async function advanceSequences(query: Query): Promise<void> {
  const sequences = await query<{ table: string; column: string; sequence: string }>(
    `select t.oid::regclass::text as table, quote_ident(a.attname) as column, s.oid::regclass::text as sequence
     from pg_catalog.pg_depend d
     join pg_catalog.pg_class s on s.oid = d.objid and s.relkind = 'S'
     join pg_catalog.pg_class t on t.oid = d.refobjid
     join pg_catalog.pg_attribute a on a.attrelid = t.oid and a.attnum = d.refobjsubid
     where d.deptype in ('a', 'i')
       and t.relnamespace in ('auth'::regnamespace, 'public'::regnamespace, 'private'::regnamespace)`
  )
  for (const { table, column, sequence } of sequences) {
    await query(
      `select setval($1::regclass, coalesce(max(${column}), 1), max(${column}) is not null) from ${table}`,
      [sequence]
    )
  }
}

function known(line: z.infer<typeof tableLine>, tables: readonly Table[]): Table {
  const table = tables.find(({ name }) => name === line.table)
  const strange = line.columns.find((column) => !table?.columns.includes(column))
  if (!table || strange !== undefined) {
    throw damaged(`${line.table}${strange ? `.${strange}` : ''} is not in the schema of its time`)
  }
  return { name: table.name, columns: line.columns }
}

function readEnd(text: string, count: number): number {
  const end = lastLine.safeParse(parsedOrNull(text))
  if (!end.success) throw damaged('its end is missing')
  if (end.data.rows !== count) {
    throw damaged(`${end.data.rows} rows were written and ${count} are there`)
  }
  return count
}

function readHeader(text: string, file: string) {
  const parsed = header.safeParse(parsedOrNull(text))
  if (!parsed.success) throw new Error(`${file} is not a backup of Rowcall.`)
  return parsed.data
}

function refuseNewer(then: readonly string[], migrations: readonly Migration[]): void {
  const unknown = then.filter((name) => !migrations.some((migration) => migration.name === name))
  if (unknown.length > 0) {
    throw new Error(
      `The backup was written by a newer Rowcall (migration ${unknown.at(-1)}). Update this clone, then restore again.`
    )
  }
}

/** Split at line feeds alone: Node's readline also splits where a text holds U+2028. */
async function* linesOf(file: string): AsyncGenerator<string> {
  let rest = ''
  try {
    const text = createReadStream(file).pipe(createGunzip()).setEncoding('utf8')
    for await (const chunk of text as AsyncIterable<string>) {
      const lines = (rest + chunk).split('\n')
      rest = lines.pop() ?? ''
      yield* lines
    }
  } catch (error) {
    if (error instanceof Error && 'code' in error && String(error.code).startsWith('Z_')) {
      throw damaged('it cannot be unpacked')
    }
    throw error
  }
}

function damaged(why: string): Error {
  return new Error(`The backup is damaged: ${why}. Nothing was restored; take another one.`)
}

function parsedOrNull(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}
