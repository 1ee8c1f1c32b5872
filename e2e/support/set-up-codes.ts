/**
 * Set-up codes are made outside the API, by the owner of the data: here before the host opens them. Each is a
 * file that one test takes away, so that every test has an orchard of its own.
 */

import { mkdirSync, readdirSync, unlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { openData } from '../../supabase/local/keep/open-data'
import { hashOfCode, newCode } from '../../supabase/seed/codes'
import { environment } from './host'

const enough = 400

export async function makeSetUpCodes(dataFolder: string, codesFolder: string): Promise<void> {
  mkdirSync(codesFolder)
  const { engine, close } = await openData({ dataFolder, databaseUrl: null })
  try {
    const codes = Array.from({ length: enough }, newCode)
    await engine.query(
      'select private.make_setup_code(hash) from jsonb_array_elements_text($1::jsonb) as hash',
      [JSON.stringify(codes.map(hashOfCode))]
    )
    for (const code of codes) writeFileSync(join(codesFolder, code), '')
  } finally {
    await close()
  }
}

/** Workers take at the same time; a file can be taken away once. */
export function takeSetUpCode(): string {
  const folder = environment('ROWCALL_E2E_CODES')
  for (const code of readdirSync(folder)) {
    try {
      unlinkSync(join(folder, code))
      return code
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error
    }
  }
  throw new Error('All set-up codes are taken: make more in e2e/support/set-up-codes.ts.')
}
