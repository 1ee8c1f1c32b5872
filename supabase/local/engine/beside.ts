/** Files that run in a thread or a process of their own: source under tsx and in tests, bundle in production. */
import { fileURLToPath } from 'node:url'

const isBundled = import.meta.url.endsWith('.js')

export function besideEngine(name: string): string {
  return fileURLToPath(new URL(`./${name}.${isBundled ? 'js' : 'ts'}`, import.meta.url))
}

/** What Node needs to run them. */
export const loader: string[] = isBundled ? [] : ['--import', 'tsx']
