import { existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The clone's folder, found from this file whether it runs as written or from the bundle. */
export const root = folderWithPackage(dirname(fileURLToPath(import.meta.url)))

function folderWithPackage(folder: string): string {
  if (existsSync(join(folder, 'package.json'))) return folder
  const above = dirname(folder)
  if (above === folder) throw new Error('package.json is missing: run Rowcall from its clone.')
  return folderWithPackage(above)
}
