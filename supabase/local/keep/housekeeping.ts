/** What is done now and then while the host runs: the nightly backup, and forgetting what has been sent. */
import type { Engine } from '../engine/engine'
import { type Log, messageOf } from '../log'
import { backUp } from './backup'
import { forgetOldest, isNightlyDue, nextBackupFile } from './backups'
import { noteForgotten } from './forgotten'

const everyMs = 600_000

/** Returns what stops it. */
export function keepHouse(engine: Engine, dataFolder: string, log: Log): () => void {
  const timer = setInterval(() => {
    tidy(engine, dataFolder, log).catch((error) =>
      log('error', 'housekeeping', { message: messageOf(error) })
    )
  }, everyMs)
  timer.unref()
  return () => clearInterval(timer)
}

async function tidy(engine: Engine, dataFolder: string, log: Log): Promise<void> {
  await engine.query(`delete from realtime.messages where inserted_at < now() - interval '1 hour'`)
  // Rules about our own tables are theirs, as on Supabase, where a scheduled job would run them.
  await engine.script(
    `do $$ begin
       if to_regprocedure('private.tidy()') is not null then perform private.tidy(); end if;
     end $$`
  )
  await noteForgotten(engine, dataFolder)
  if (!isNightlyDue(dataFolder)) return
  const { rows } = await backUp(engine, nextBackupFile(dataFolder, 'nightly'))
  forgetOldest(dataFolder, 'nightly')
  log('info', 'backup', { rows })
  await engine.vacuum()
}
