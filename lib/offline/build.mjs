/** Bundles the service worker to where Next.js serves files; next.config.mjs gives it its address. */
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

await build({
  entryPoints: [fileURLToPath(new URL('service-worker.ts', import.meta.url))],
  outfile: fileURLToPath(new URL('../../.next/static/sw.js', import.meta.url)),
  bundle: true,
  minify: true,
  target: 'es2022',
  format: 'iife',
  logLevel: 'warning',
})
