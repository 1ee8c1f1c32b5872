/** The production host as a process of its own, and where this run finds it. */

import { type ChildProcess, spawn } from 'node:child_process'
import { createWriteStream, readFileSync } from 'node:fs'
import { createInterface } from 'node:readline'
import { fileURLToPath } from 'node:url'

export type Host = {
  address: string
  logFile: string
  processId: number
  stop: () => Promise<void>
}

type Start = {
  dataFolder: string
  logFile: string
  /** As soon as there is a process, before it is ready. */
  onStart?: (processId: number) => void
}

/** Nobody is there: a journey that looks at the ground answers for it. */
export const groundAddress = 'https://ground.example'

const bundle = fileURLToPath(new URL('../../supabase/local/dist/start.js', import.meta.url))
const patienceMs = 120_000

export async function startHost({ dataFolder, logFile, onStart }: Start): Promise<Host> {
  const child = spawn(process.execPath, [bundle, '--empty'], {
    env: {
      ...withoutOurs(process.env),
      PORT: '0',
      HOST: '127.0.0.1',
      ROWCALL_DATA: dataFolder,
      ROWCALL_LOG: 'info',
      ROWCALL_TILES: `${groundAddress}/{z}/{x}/{y}.png`,
      ROWCALL_TILES_BY: 'Ground Example',
    },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  const processId = child.pid ?? 0
  onStart?.(processId)
  const log = createWriteStream(logFile)
  child.stdout.pipe(log, { end: false })
  child.stderr.pipe(log, { end: false })
  try {
    const port = await portOf(child)
    child.once('exit', sayItEnded)
    return { address: `http://127.0.0.1:${port}`, logFile, processId, stop: () => stop(child) }
  } catch (error) {
    await stop(child)
    throw new Error(`${error}\n${readFileSync(logFile, 'utf8')}`)
  }
}

/** Of the run that this worker belongs to. */
export const hostAddress = (): string => environment('ROWCALL_E2E_ADDRESS')

export const hostLog = (): string => readFileSync(environment('ROWCALL_E2E_LOG'), 'utf8')

export function environment(name: string): string {
  const value = process.env[name]
  if (value === undefined) throw new Error(`${name} is missing: the global set-up did not run.`)
  return value
}

/** A database or a certificate of whoever runs the tests must not be taken for this host's. */
function withoutOurs(variables: NodeJS.ProcessEnv): NodeJS.ProcessEnv {
  const { DATABASE_URL, ROWCALL_TLS_CERT, ROWCALL_TLS_KEY, ROWCALL_BACKEND_URL, ...rest } =
    variables
  return rest
}

/** As it says in its log once it can be reached. */
function portOf(child: ChildProcess): Promise<number> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error('The host was not ready in time.')), patienceMs)
    child.on('exit', (code) => {
      clearTimeout(timer)
      reject(new Error(`The host ended with ${code}. Run npm run build first.`))
    })
    if (!child.stdout) return
    createInterface({ input: child.stdout }).on('line', (line) => {
      const port = /"event":"ready","port":(\d+)/.exec(line)?.[1]
      if (port === undefined) return
      clearTimeout(timer)
      resolve(Number(port))
    })
  })
}

/** In the middle of a run: what follows fails for this reason and no other. */
function sayItEnded(code: number | null, signal: string | null): void {
  process.stderr.write(`\nThe host ended by itself (${signal ?? code}).\n`)
}

async function stop(child: ChildProcess): Promise<void> {
  child.off('exit', sayItEnded)
  if (child.exitCode !== null || child.signalCode !== null) return
  const ended = new Promise((resolve) => child.once('exit', resolve))
  child.kill('SIGTERM')
  await ended
}
