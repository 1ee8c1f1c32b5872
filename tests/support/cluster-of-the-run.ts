/** One PostgreSQL for all test files of a run: each makes databases of its own in it. Where there is none, none is started. */
import type { TestProject } from 'vitest/node'
import { noPostgres, startCluster } from './postgres'

declare module 'vitest' {
  interface ProvidedContext {
    /** Where its socket is. */
    postgresFolder: string
  }
}

export default async function setUp({ provide }: TestProject) {
  if (noPostgres !== null) return
  const { folder, stop } = await startCluster()
  provide('postgresFolder', folder)
  return stop
}
