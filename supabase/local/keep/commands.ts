/** `npm run backup [-- file]` and `npm run restore -- file`. */
import { copyFileSync, existsSync } from 'node:fs'
import { resolve } from 'node:path'
import { backUpByHand } from './backup'
import { askForBackup } from './control'
import { carryForgotten } from './forgotten'
import { openData, restoreData, type Where } from './open-data'

export async function backupCommand(where: Where, file?: string): Promise<void> {
  const made =
    (where.databaseUrl ? null : await askForBackup(where.dataFolder)) ?? (await make(where))
  const wanted = file === undefined ? made : resolve(file)
  if (wanted !== made) {
    copyFileSync(made, wanted)
    carryForgotten(wanted, where.dataFolder)
  }
  say(
    `The backup is in ${wanted}\nIt holds people's names and contacts: keep it where only you can read it.`
  )
}

export async function restoreCommand(where: Where, file?: string): Promise<void> {
  if (file === undefined) throw new Error('Which backup? Say npm run restore -- <file>.')
  if (!existsSync(file)) throw new Error(`There is no file ${file}.`)
  const { rows, before } = await restoreData({ ...where, file })
  say(`Restored ${rows} rows.`)
  if (before) say(`What was there before is in ${before}; delete it when all is well.`)
}

async function make(where: Where): Promise<string> {
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
