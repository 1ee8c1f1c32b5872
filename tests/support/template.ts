/** The migrated PGlite that in-memory databases are opened from, kept between test files and runs. */
import { createHash, randomBytes } from 'node:crypto'
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { join } from 'node:path'
import { bootstrapText } from '../../supabase/local/bootstrap/bootstrap'
import { makeTemplate } from '../../supabase/local/engine/memory'
import { pgliteVersion } from '../../supabase/local/keep/format-note'
import type { Migration } from '../../supabase/local/keep/migrate'
import { root } from '../../supabase/local/root'

const folder = join(root, 'node_modules/.cache/rowcall')
const templates = new Map<string, Promise<Blob>>()

export function templateOf(migrations: readonly Migration[]): Promise<Blob> {
  const key = createHash('sha256')
    .update(JSON.stringify([pgliteVersion, bootstrapText(), migrations]))
    .digest('hex')
    .slice(0, 20)
  const template = templates.get(key) ?? readOrMake(key, migrations)
  templates.set(key, template)
  return template
}

async function readOrMake(key: string, migrations: readonly Migration[]): Promise<Blob> {
  const file = join(folder, `pglite-${key}.tar`)
  if (existsSync(file)) return new Blob([readFileSync(file)])
  const template = await makeTemplate(migrations)
  mkdirSync(folder, { recursive: true })
  // Another worker may be writing the same one: whoever is last, the file is whole.
  const aside = `${file}.${randomBytes(4).toString('hex')}`
  writeFileSync(aside, Buffer.from(await template.arrayBuffer()))
  renameSync(aside, file)
  forgetOldest()
  return template
}

/** Each is 40 MB, and every change to a migration makes a new one. */
function forgetOldest(): void {
  const files = readdirSync(folder)
    .filter((name) => /^pglite-.*\.tar$/.test(name))
    .map((name) => join(folder, name))
    .sort((a, b) => statSync(b).mtimeMs - statSync(a).mtimeMs)
  for (const file of files.slice(8)) rmSync(file, { force: true })
}
