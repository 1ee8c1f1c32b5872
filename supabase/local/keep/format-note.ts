/** The note beside the data that says what wrote them, so that nothing else opens them. */
import { readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { z } from 'zod'

/** Data of one version do not open in another, so this changes only together with a dump and a load. */
export const pgliteVersion = '0.5.16'
const postgresMajor = 18

const formatNote = z.object({
  engine: z.string(),
  version: z.string(),
  postgresMajor: z.number(),
  migration: z.string().nullable(),
})
export type FormatNote = z.infer<typeof formatNote>

export function noteOf(migration: string | null): FormatNote {
  return { engine: 'PGlite', version: pgliteVersion, postgresMajor, migration }
}

export function assertPgliteVersion(): void {
  const entry = createRequire(import.meta.url).resolve('@electric-sql/pglite')
  const described: unknown = JSON.parse(
    readFileSync(join(dirname(entry), '../package.json'), 'utf8')
  )
  const { version } = z.object({ version: z.string() }).parse(described)
  if (version !== pgliteVersion) {
    throw new Error(
      `PGlite ${version} is installed, and Rowcall's data are for ${pgliteVersion}. Run npm ci, then start again.`
    )
  }
}

/** Refuses data that this clone would misread, in a sentence that says what to do. */
export function checkNote(note: FormatNote, knownMigrations: readonly string[]): void {
  if (
    note.engine !== 'PGlite' ||
    note.postgresMajor !== postgresMajor ||
    note.version !== pgliteVersion
  ) {
    throw new Error(
      `The data were written by ${note.engine} ${note.version} (PostgreSQL ${note.postgresMajor}); this clone has PGlite ${pgliteVersion} (PostgreSQL ${postgresMajor}). Take a backup with the Rowcall that wrote them (npm run backup), then set ROWCALL_DATA to a new folder and restore it there (npm run restore).`
    )
  }
  if (note.migration !== null && !knownMigrations.includes(note.migration)) {
    throw new Error(
      `The data were written by a newer Rowcall (migration ${note.migration}). Update this clone, or restore a backup from before.`
    )
  }
}

export function readNote(dataFolder: string): FormatNote | null {
  const text = readIfThere(join(dataFolder, 'format.json'))
  if (text === null) return null
  const note = formatNote.safeParse(parsed(text))
  if (!note.success) {
    throw new Error(
      `format.json in ${dataFolder} cannot be read. Restore a backup into a new folder (ROWCALL_DATA).`
    )
  }
  return note.data
}

export function writeNote(dataFolder: string, note: FormatNote): void {
  writeFileSync(join(dataFolder, 'format.json'), `${JSON.stringify(note, null, 2)}\n`)
}

function readIfThere(file: string): string | null {
  try {
    return readFileSync(file, 'utf8')
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null
    throw error
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}
