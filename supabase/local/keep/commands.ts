/** `npm run backup [-- file | --forget]` and `npm run restore -- file`. */
import { copyFileSync, existsSync, rmSync } from 'node:fs'
import { resolve } from 'node:path'
import { backUpByHand, type MadeBackup } from './backup'
import { backupsBefore, nightsKept } from './backups'
import { askForBackup } from './control'
import { carryForgotten } from './forgotten'
import { openData, restoreData, type Where } from './open-data'

/** `--forget` instead of a file: the backups that still name somebody who was forgotten are deleted. */
export async function backupCommand(where: Where, word?: string): Promise<void> {
  const isForgetting = word === '--forget'
  const { file: made, forgottenAt } =
    (where.databaseUrl ? null : await askForBackup(where.dataFolder)) ?? (await make(where))
  const wanted = word === undefined || isForgetting ? made : resolve(word)
  if (wanted !== made) {
    copyFileSync(made, wanted)
    carryForgotten(wanted, where.dataFolder)
  }
  say(
    `The backup is in ${wanted}\nIt holds people's names and contacts: keep it where only you can read it.`
  )
  const older = forgottenAt === null ? [] : backupsBefore(where.dataFolder, forgottenAt, made)
  if (older.length === 0) {
    if (isForgetting) say('No older backup names anybody who was forgotten.')
    return
  }
  if (isForgetting) for (const file of older) rmSync(file)
  const names = older.map((file) => `  ${file}`).join('\n')
  say(
    isForgetting
      ? `Deleted, since they still named somebody who was forgotten:\n${names}`
      : `These still name somebody who was forgotten since. A restore forgets them again. Each night’s go after ${nightsKept} nights; npm run backup -- --forget deletes all of them now:\n${names}`
  )
}

export async function restoreCommand(where: Where, file?: string): Promise<void> {
  if (file === undefined) throw new Error('Which backup? Say npm run restore -- <file>.')
  if (!existsSync(file)) throw new Error(`There is no file ${file}.`)
  const { rows, before } = await restoreData({ ...where, file })
  say(`Restored ${rows} rows.`)
  if (before) say(`What was there before is in ${before}; delete it when all is well.`)
}

async function make(where: Where): Promise<MadeBackup> {
  const { engine, close } = await openData(where)
  try {
    return await backUpByHand(engine, where.dataFolder)
  } finally {
    await close()
  }
}

function say(sentence: string): void {
  process.stdout.write(`${sentence}\n`)
}
