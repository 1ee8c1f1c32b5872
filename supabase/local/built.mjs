/** Whether what was built is of these sources: compared by content, since a fresh clone gives every file the same time. */
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../..', import.meta.url))
const shared = ['lib', 'supabase/local', 'supabase/seed', 'package-lock.json', 'tsconfig.json']
const parts = {
  host: { sources: shared, folder: 'supabase/local/dist' },
  pages: {
    sources: [...shared, 'app', 'components', 'proxy.ts', 'next.config.mjs'],
    folder: '.next',
  },
}

export function isBuilt(name) {
  const stamp = stampOf(name)
  return existsSync(stamp) && readFileSync(stamp, 'utf8') === fingerprintOf(parts[name].sources)
}

export function markBuilt(name) {
  mkdirSync(join(root, parts[name].folder), { recursive: true })
  writeFileSync(stampOf(name), fingerprintOf(parts[name].sources))
}

/** In the folder that was built, to vanish with it. */
function stampOf(name) {
  return join(root, parts[name].folder, 'built-from')
}

function fingerprintOf(sources) {
  const hash = createHash('sha256')
  for (const file of sources.flatMap(filesIn)) {
    hash.update(file).update(readFileSync(join(root, file)))
  }
  return hash.digest('hex')
}

function filesIn(path) {
  const full = join(root, path)
  if (!existsSync(full)) return []
  if (!statSync(full).isDirectory()) return [path]
  return readdirSync(full)
    .filter((name) => name !== 'dist')
    .sort()
    .flatMap((name) => filesIn(join(path, name)))
}
