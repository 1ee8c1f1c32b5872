/** The files of the repository as they stand: committed, or about to be. */

import { execFileSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../..', import.meta.url))

/** Paths from the root, without what git ignores. */
export function filesOfRepository(): string[] {
  const listed = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], {
    cwd: root,
    encoding: 'utf8',
  })
  // What is deleted and not committed yet is still listed.
  return listed.split('\n').filter((path) => path !== '' && existsSync(join(root, path)))
}

export function textOf(path: string): string {
  return readFileSync(join(root, path), 'utf8')
}
