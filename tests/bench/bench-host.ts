/** The production host as `npm run build` left it, on fresh data, with a set-up code and its memory watched. */

import { mkdirSync, readdirSync } from 'node:fs'
import { join } from 'node:path'

import { type Host, startHost } from '../../e2e/support/host'
import { makeSetUpCodes } from '../../e2e/support/set-up-codes'
import { watchMemory } from './memory'

export async function benchHost(
  folder: string
): Promise<{ host: Host; code: string; mostAtStart: number }> {
  // Somewhere else first: what a first start takes is measured on a folder that has nothing in it.
  const first = join(folder, 'first-start')
  mkdirSync(first)
  let processId: number | undefined
  const stopWatching = watchMemory(() => processId)
  const fresh = await startHost({
    dataFolder: join(first, 'data'),
    logFile: join(first, 'host.log'),
    onStart: (id) => {
      processId = id
    },
  })
  await fresh.stop()
  const mostAtStart = stopWatching()

  const dataFolder = join(folder, 'data')
  await makeSetUpCodes(dataFolder, join(folder, 'codes'))
  const host = await startHost({ dataFolder, logFile: join(folder, 'host.log') })
  const [code = ''] = readdirSync(join(folder, 'codes'))
  return { host, code, mostAtStart }
}
