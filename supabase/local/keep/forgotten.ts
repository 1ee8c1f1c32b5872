/**
 * Who was forgotten: their ids, beside the backups. A backup that is older than the forgetting still has
 * the names, so whoever restores it forgets them again.
 */
import { readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import type { Engine } from '../engine/engine'
import { backupsFolder } from './backups'

const fileName = 'forgotten'

/** Adds whom this database has forgotten to the list beside the backups. */
export async function noteForgotten(engine: Engine, dataFolder: string): Promise<void> {
  add(backupsFolder(dataFolder), await forgottenIn(engine))
}

/** A backup that goes elsewhere takes the list along. */
export function carryForgotten(backupFile: string, dataFolder: string): void {
  add(dirname(backupFile), listIn(backupsFolder(dataFolder)))
}

/** In this clone's own list, and in the one that came with the backup. */
export function forgottenBeside(backupFile: string, dataFolder: string): string[] {
  return [...new Set([backupsFolder(dataFolder), dirname(backupFile)].flatMap(listIn))]
}

/** When somebody was last forgotten; null: nobody yet. What was written before that still has their name. */
export async function lastForgotten(engine: Engine): Promise<string | null> {
  if (!(await has(engine, 'private.forgotten_people()'))) return null
  const [row] = await engine.query<{ at: string | null }>(
    `select to_char(max(forgotten_at) at time zone 'utc', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') as at from public.people`
  )
  return row?.at ?? null
}

export async function forgetAgain(engine: Engine, people: readonly string[]): Promise<void> {
  if (people.length === 0 || !(await has(engine, 'private.forget_again(uuid[])'))) return
  await engine.query('select private.forget_again($1::uuid[])', [`{${people.join()}}`])
}

async function forgottenIn(engine: Engine): Promise<string[]> {
  if (!(await has(engine, 'private.forgotten_people()'))) return []
  const rows = await engine.query<{ id: string }>(
    'select unnest(private.forgotten_people())::text as id'
  )
  return rows.map(({ id }) => id)
}

/** Not in the schema of an older clone. */
async function has(engine: Engine, signature: string): Promise<boolean> {
  const [row] = await engine.query<{ has: boolean }>(
    'select to_regprocedure($1) is not null as has',
    [signature]
  )
  return row?.has === true
}

function add(folder: string, people: readonly string[]): void {
  const known = listIn(folder)
  const all = [...new Set([...known, ...people])]
  if (all.length === known.length) return
  writeFileSync(join(folder, fileName), `${all.sort().join('\n')}\n`, { mode: 0o600 })
}

function listIn(folder: string): string[] {
  try {
    const lines = readFileSync(join(folder, fileName), 'utf8').split('\n')
    return lines.filter((line) => /^[0-9a-f-]{36}$/.test(line))
  } catch {
    return []
  }
}
