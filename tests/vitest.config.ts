import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const root = fileURLToPath(new URL('..', import.meta.url))

export default defineConfig({
  root,
  resolve: { alias: { '@': root } },
  test: {
    testTimeout: 60_000,
    hookTimeout: 120_000,
    // Two cores, and PGlite takes a few hundred megabytes an instance.
    maxWorkers: 2,
    // Modules are read once a worker and not once a file: no test leaves anything in them.
    isolate: false,
    unstubGlobals: true,
    unstubEnvs: true,
    projects: [
      {
        extends: true,
        test: { name: 'unit', include: testsIn('lib', 'components', 'repo') },
      },
      {
        extends: true,
        test: {
          name: 'database',
          include: testsIn('supabase', 'contract', 'chaos'),
          globalSetup: fileURLToPath(new URL('./support/cluster-of-the-run.ts', import.meta.url)),
        },
      },
    ],
  },
})

function testsIn(...folders: string[]): string[] {
  return folders.map((folder) => `tests/${folder}/**/*.test.{ts,tsx}`)
}
