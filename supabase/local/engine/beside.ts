/** Files that run in a thread or a process of their own: source under tsx and in tests, bundle in production. */
import { createRequire } from 'node:module'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { Worker, type WorkerOptions } from 'node:worker_threads'

const isBundled = import.meta.url.endsWith('.js')

export function besideEngine(name: string): string {
  return fileURLToPath(new URL(`./${name}.${isBundled ? 'js' : 'ts'}`, import.meta.url))
}

/** What Node needs to run them as a process. */
export const loader: string[] = isBundled ? [] : ['--import', resolved('tsx')]

/** A thread of Node 20 does not take --import, so there tsx is loaded by the first line it runs. */
export function startWorker(name: string, options: WorkerOptions): Worker {
  const file = besideEngine(name)
  if (isBundled) return new Worker(file, options)
  const tsx = JSON.stringify(new URL('./esm/api/index.mjs', resolved('tsx')))
  const source = JSON.stringify(pathToFileURL(file))
  return new Worker(
    `import(${tsx}).then(({ register }) => { register(); return import(${source}) })`,
    { ...options, eval: true }
  )
}

function resolved(name: string): string {
  return pathToFileURL(createRequire(import.meta.url).resolve(name)).href
}
