/** One process, one port: the data, what Supabase would do, and the pages. */
import { addressesOf, sentencesOf } from './addresses'
import type { Engine } from './engine/engine'
import { createHost } from './host'
import { makeTokens } from './http/tokens'
import { backUpByHand } from './keep/backup'
import { offerBackups } from './keep/control'
import { keepHouse } from './keep/housekeeping'
import { openData } from './keep/open-data'
import { readOrMakeSecret } from './keep/secrets'
import { type Log, makeLog, messageOf } from './log'
import { LatePages, preparePages } from './pages'
import type { Settings } from './settings'

export type Ready = {
  /** Where phones reach it: on the local network if there is one. */
  address: string
  engine: Engine
  /** The database was made by this start. */
  isNew: boolean
}

export type Serving = {
  settings: Settings
  isDevelopment: boolean
  /** What is done for people once the host can be reached. */
  onReady: (ready: Ready) => Promise<void>
}

export async function serve(serving: Serving): Promise<void> {
  const log = makeLog()
  const stopping = new Stopping(log)
  try {
    await start(serving, stopping, log)
  } catch (error) {
    await stopping.undo()
    throw error
  }
}

async function start({ settings, isDevelopment, onReady }: Serving, stopping: Stopping, log: Log) {
  const { address, certificate, dataFolder, databaseUrl } = settings
  const onDeath = (error: Error) => void stopping.stop(error)
  const { engine, isNew, close } = await openData({ dataFolder, databaseUrl, onDeath })
  stopping.add(close)
  const tokens = await makeTokens(readOrMakeSecret(dataFolder))
  // The root layout hands it to the page; the address is the page's own unless somebody says otherwise.
  process.env.ROWCALL_ANON_KEY = tokens.anonKey

  const pages = new LatePages()
  const host = await createHost({
    engine,
    tokens,
    log,
    ...(certificate && { certificate }),
    pages: pages.handle,
    otherUpgrade: pages.upgrade,
  })
  const port = await host.listen(settings.port, address)
  stopping.add(() => host.close())
  pages.there = await preparePages({ isDevelopment, address, port })
  stopping.add(() => pages.there?.close())
  stopping.add(keepHouse(engine, dataFolder, log))
  if (!databaseUrl) stopping.add(offerBackups(dataFolder, () => backUpByHand(engine, dataFolder)))

  const addresses = addressesOf(address, port, certificate !== null)
  process.stdout.write(`\n${sentencesOf(addresses).join('\n')}\n`)
  log('info', 'ready', { port, engine: engine.name, isNew })
  const reachableAt = addresses.network[0] ?? addresses.thisMachine ?? ''
  await onReady({ address: reachableAt, engine, isNew })
}

/** Stops in the reverse order of starting, once, whoever asks. */
class Stopping {
  private readonly steps: (() => Promise<void> | void)[] = []
  private isStopping = false

  constructor(private readonly log: Log) {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => void this.stop())
    process.on('uncaughtException', (error) => void this.stop(error))
    process.on('unhandledRejection', (error) => void this.stop(error))
  }

  add(step: () => Promise<void> | void): void {
    this.steps.unshift(step)
  }

  async stop(error?: unknown): Promise<void> {
    if (error !== undefined) this.report(error)
    if (this.isStopping) return
    this.isStopping = true
    await this.undo()
    process.exit(error === undefined ? 0 : 1)
  }

  async undo(): Promise<void> {
    for (const step of this.steps.splice(0)) {
      try {
        await step()
      } catch (failure) {
        this.report(failure)
      }
    }
  }

  private report(error: unknown): void {
    this.log('error', 'stopped', { message: messageOf(error) })
  }
}
