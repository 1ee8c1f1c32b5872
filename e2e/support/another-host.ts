/** A second host with an empty orchard of its own, for what moves from one to another. */

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

import { openData } from '../../supabase/local/keep/open-data'
import { hashOfCode, newCode } from '../../supabase/seed/codes'
import { startHost } from './host'

export async function withAnotherHost(
  run: (host: { address: string; code: string }) => Promise<void>
): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'rowcall-e2e-other-'))
  const dataFolder = join(folder, 'data')
  const code = newCode()
  try {
    const { engine, close } = await openData({ dataFolder, databaseUrl: null })
    await engine.query('select private.make_setup_code($1)', [hashOfCode(code)])
    await close()
    const host = await startHost({ dataFolder, logFile: join(folder, 'host.log') })
    try {
      await run({ address: host.address, code })
    } finally {
      await host.stop()
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
