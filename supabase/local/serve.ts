/** One process, one port: the data, what Supabase would do, and the pages. */
import { addressesOf, sentencesOf } from './addresses'
import { createHost } from './host'
import { makeTokens } from './http/tokens'
import { backUp } from './keep/backup'
import { nextBackupFile } from './keep/backups'
import { offerBackups } from './keep/control'
import { keepHouse } from './keep/housekeeping'
import { openData } from './keep/open-data'
import { readOrMakeSecret } from './keep/secrets'
import { onReady } from './links'
import { makeLog, messageOf } from './log'
import { type Pages, preparePages } from './pages'
import type { Settings } from './settings'

export type Serving = { settings: Settings; isDevelopment: boolean; isEmpty: boolean }

export async function serve({ settings, isDevelopment, isEmpty }: Serving): Promise<void> {
  const { address, certificate, dataFolder } = settings
  const log = makeLog()
  const stopping = new Stopping((message) => log('error', 'stopped', { message }))
  const { engine, isNew, close } = await openData({
    ...settings,
    onDeath: (error) => void stopping.stop(error),
  })
  stopping.add(close)
  const tokens = await makeTokens(readOrMakeSecret(dataFolder))
  // The root layout hands it to the page; the address is the page's own unless somebody says otherwise.
  process.env.ROWCALL_ANON_KEY = tokens.anonKey

  let pages: Pages | null = null
  const host = await createHost({
    engine,
    tokens,
    log,
    ...(certificate && { certificate }),
    pages: (request, response) => {
      if (pages) pages.handle(request, response)
      else response.writeHead(503, { 'retry-after': '2' }).end()
    },
    otherUpgrade: (request, socket, head) => {
      if (pages?.upgrade) pages.upgrade(request, socket, head)
      else socket.destroy()
    },
  })
  const port = await host.listen(settings.port, address)
  stopping.add(() => host.close())
  pages = await preparePages({ isDevelopment, address, port })
  stopping.add(async () => pages?.close())

  stopping.add(keepHouse(engine, dataFolder, log))
  if (!settings.databaseUrl) {
    stopping.add(
      offerBackups(dataFolder, async () => {
        const file = nextBackupFile(dataFolder, 'by-hand')
        await backUp(engine, file)
        return file
      })
    )
  }
  const addresses = addressesOf(address, port, certificate !== null)
  process.stdout.write(`\n${sentencesOf(addresses).join('\n')}\n`)
  log('info', 'ready', { port, engine: engine.name, isNew })
  const reachableAt = addresses.network[0] ?? addresses.thisMachine ?? ''
  await onReady({ address: reachableAt, engine, isNew, isEmpty })
}

/** Stops in the reverse order of starting, once, whoever asks. */
class Stopping {
  private readonly steps: (() => Promise<void> | void)[] = []
  private isStopping = false

  constructor(private readonly report: (message: string) => void) {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => void this.stop())
    process.on('uncaughtException', (error) => void this.stop(error))
    process.on('unhandledRejection', (error) => void this.stop(error))
  }

  add(step: () => Promise<void> | void): void {
    this.steps.unshift(step)
  }

  async stop(error?: unknown): Promise<void> {
    if (error !== undefined) this.report(messageOf(error))
    if (this.isStopping) return
    this.isStopping = true
    for (const step of this.steps) {
      try {
        await step()
      } catch (failure) {
        this.report(messageOf(failure))
      }
    }
    process.exit(error === undefined ? 0 : 1)
  }
}
