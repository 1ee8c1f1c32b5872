/** The secret that signs sign-ins, made at the first start and readable by nobody else. */
import { randomBytes } from 'node:crypto'
import { accessSync, chmodSync, constants, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

export function makeDataFolder(folder: string): void {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 })
    // Also fails where the folder is somebody else's.
    chmodSync(folder, 0o700)
    accessSync(folder, constants.W_OK)
  } catch (error) {
    const { code = '' } = error as NodeJS.ErrnoException
    throw new Error(
      `The data cannot be kept in ${folder} (${code}). Set ROWCALL_DATA to a folder that belongs to the user who runs Rowcall.`
    )
  }
}

export function readOrMakeSecret(folder: string): Buffer {
  const file = join(folder, 'secret')
  try {
    // Fails when it is there, so that two first starts cannot each make one.
    writeFileSync(file, `${randomBytes(32).toString('hex')}\n`, { mode: 0o600, flag: 'wx' })
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error
  }
  const secret = Buffer.from(readFileSync(file, 'utf8').trim(), 'hex')
  if (secret.length < 32) {
    throw new Error(
      `The file ${file} is damaged. Delete it and start again: phones sign in again by themselves within the hour.`
    )
  }
  return secret
}
