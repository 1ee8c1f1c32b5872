/** The folder of backups: where each goes, and how many are kept. */
import { mkdirSync, readdirSync, rmSync, statSync } from 'node:fs'
import { basename, join } from 'node:path'

const kinds = ['nightly', 'before-migration', 'by-hand'] as const
export type BackupKind = (typeof kinds)[number]

/** Of each kind; of the nightly ones that is so many nights. */
export const nightsKept = 14
const hourMs = 3_600_000

export function backupsFolder(dataFolder: string): string {
  const folder = join(dataFolder, 'backups')
  mkdirSync(folder, { recursive: true, mode: 0o700 })
  return folder
}

export function nextBackupFile(dataFolder: string, kind: BackupKind, at = new Date()): string {
  const time = at.toISOString().slice(0, 19).replaceAll(':', '-')
  return join(backupsFolder(dataFolder), `${time}-${kind}.jsonl.gz`)
}

/** At night; or at once where the machine has been off for more than a night. */
export function isNightlyDue(dataFolder: string, now = new Date()): boolean {
  const newest = backupsOf(dataFolder, 'nightly').at(-1)
  const ageMs = newest ? now.getTime() - statSync(newest).mtimeMs : Infinity
  const isNight = [1, 2, 3, 4].includes(now.getHours())
  const dueMs = (isNight ? 20 : 30) * hourMs
  return ageMs > dueMs
}

export function forgetOldest(dataFolder: string, kind: BackupKind): void {
  for (const file of backupsOf(dataFolder, kind).slice(0, -nightsKept)) rmSync(file)
}

/** Of every kind: begun before that moment, but for the one that was just made. */
export function backupsBefore(dataFolder: string, at: string, made: string): string[] {
  const begin = at.slice(0, 19).replaceAll(':', '-')
  return kinds
    .flatMap((kind) => backupsOf(dataFolder, kind))
    .filter((file) => file !== made && basename(file).slice(0, begin.length) <= begin)
}

/** Oldest first: the names begin with the time. */
function backupsOf(dataFolder: string, kind: BackupKind): string[] {
  const folder = backupsFolder(dataFolder)
  return readdirSync(folder)
    .filter((name) => name.endsWith(`-${kind}.jsonl.gz`))
    .sort()
    .map((name) => join(folder, name))
}
