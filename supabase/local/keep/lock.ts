/**
 * One process per data directory. PGlite has no lock of its own, and two of them on one directory lose
 * rows without an error. The lock is one that the kernel frees when its holder dies, however it dies.
 */
import { createHash } from 'node:crypto'
import { closeSync, constants, openSync, realpathSync } from 'node:fs'
import { createServer } from 'node:net'
import { join } from 'node:path'

export type Lock = { release: () => Promise<void> }

class LockedError extends Error {
  constructor(folder: string) {
    super(
      `Rowcall is already running on the data in ${folder}. Stop it first, or set ROWCALL_DATA to another folder.`
    )
    this.name = 'LockedError'
  }
}

export async function lockFolder(folder: string): Promise<Lock> {
  const realFolder = realpathSync(folder)
  return process.platform === 'darwin' ? lockFile(realFolder) : lockName(realFolder)
}

/** Linux: an abstract socket, Windows: a named pipe. Both are names without a file that could stay behind. */
function lockName(realFolder: string): Promise<Lock> {
  const name = `rowcall-${createHash('sha256').update(realFolder).digest('hex').slice(0, 32)}`
  const server = createServer((socket) => socket.destroy())
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) =>
      reject(error.code === 'EADDRINUSE' ? new LockedError(realFolder) : error)
    )
    server.listen(
      { path: process.platform === 'win32' ? `\\\\.\\pipe\\${name}` : `\0${name}` },
      () => {
        server.unref()
        resolve({ release: () => new Promise((done) => server.close(() => done())) })
      }
    )
  })
}

/** macOS has no abstract sockets, but can open a file with an exclusive lock. */
async function lockFile(realFolder: string): Promise<Lock> {
  const exclusive = 0x20
  const { O_CREAT, O_RDWR, O_NONBLOCK } = constants
  try {
    const file = openSync(
      join(realFolder, 'lock'),
      O_CREAT | O_RDWR | O_NONBLOCK | exclusive,
      0o600
    )
    return { release: async () => closeSync(file) }
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EAGAIN') throw new LockedError(realFolder)
    throw error
  }
}
