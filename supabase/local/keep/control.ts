/**
 * How `npm run backup` asks the host that runs on the data: a socket in the data directory, which only
 * its owner can enter.
 */
import { createHash } from 'node:crypto'
import { rmSync } from 'node:fs'
import { connect, createServer } from 'node:net'
import { join } from 'node:path'
import { z } from 'zod'
import { messageOf } from '../log'
import type { MadeBackup } from './backup'

/** A longer path is not a socket's anywhere. */
const longestPath = 100

const answer = z.union([
  z.object({ file: z.string(), forgottenAt: z.string().nullable() }),
  z.object({ error: z.string() }),
])

/** Answers whoever connects with a fresh backup. Returns what stops it. */
export function offerBackups(
  dataFolder: string,
  makeBackup: () => Promise<MadeBackup>
): () => void {
  const path = pathIn(dataFolder)
  if (path === null) return () => {}
  // The lock of the directory is ours, so what is there was left by a process that died.
  if (process.platform !== 'win32') rmSync(path, { force: true })
  const server = createServer((socket) => {
    socket.on('error', () => {})
    makeBackup().then(
      (made) => socket.end(JSON.stringify(made)),
      (error) => socket.end(JSON.stringify({ error: messageOf(error) }))
    )
  })
  server.on('error', () => {})
  server.listen(path)
  server.unref()
  return () => server.close()
}

/** What the running host wrote, or null where none runs. */
export async function askForBackup(dataFolder: string): Promise<MadeBackup | null> {
  const path = pathIn(dataFolder)
  if (path === null) return null
  const text = await new Promise<string | null>((resolve) => {
    let received = ''
    const socket = connect(path)
    socket.on('data', (chunk) => {
      received += String(chunk)
    })
    socket.on('error', () => resolve(null))
    socket.on('end', () => resolve(received))
  })
  if (text === null) return null
  const parsed = answer.parse(JSON.parse(text))
  if ('error' in parsed) throw new Error(parsed.error)
  return parsed
}

function pathIn(dataFolder: string): string | null {
  if (process.platform === 'win32') {
    const name = createHash('sha256').update(`control ${dataFolder}`).digest('hex').slice(0, 32)
    return `\\\\.\\pipe\\rowcall-${name}`
  }
  const path = join(dataFolder, 'control.sock')
  return path.length > longestPath ? null : path
}
