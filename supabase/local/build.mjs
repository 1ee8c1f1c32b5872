/**
 * Bundles the host for production, the last step of `npm run build`: it starts in under a second, without
 * the sources being compiled again. With --host-only the pages were not built before it.
 */
import { rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { markBuilt } from './built.mjs'

const folder = fileURLToPath(new URL('.', import.meta.url))

// Parts have the hash of their content in their names, and old ones would pile up.
rmSync(join(folder, 'dist'), { recursive: true, force: true })
await build({
  absWorkingDir: folder,
  // The worker and the first-time process run from files of their own, beside the rest.
  entryPoints: ['start.ts', 'engine/pglite-worker.ts', 'engine/pglite-first-time.ts'],
  entryNames: '[name]',
  outdir: 'dist',
  bundle: true,
  splitting: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  packages: 'external',
  sourcemap: true,
  logLevel: 'warning',
})
markBuilt('host')
if (!process.argv.includes('--host-only')) markBuilt('pages')
