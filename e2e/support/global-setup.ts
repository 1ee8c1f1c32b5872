/** One host for the whole run, as `npm run build` left it, on data of its own that is gone afterwards. */

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

import { startHost } from './host'
import { makeSetUpCodes } from './set-up-codes'

export default async function setUp(): Promise<() => Promise<void>> {
  const folder = mkdtempSync(join(tmpdir(), 'rowcall-e2e-'))
  const dataFolder = join(folder, 'data')
  const codesFolder = join(folder, 'codes')
  await makeSetUpCodes(dataFolder, codesFolder)
  const host = await startHost({ dataFolder, logFile: join(folder, 'host.log') })
  // Workers are started after this, with this environment.
  Object.assign(process.env, {
    ROWCALL_E2E_ADDRESS: host.address,
    ROWCALL_E2E_CODES: codesFolder,
    ROWCALL_E2E_LOG: host.logFile,
  })
  return async () => {
    await host.stop()
    rmSync(folder, { recursive: true, force: true })
  }
}
