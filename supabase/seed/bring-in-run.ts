/** Bringing a file of trees in: read first, so that a bad file uses no link up; then all of it or nothing. */

import { readFileSync } from 'node:fs'

import { parseInventory } from '@/lib/domain/orchard/inventory'
import type { InventoryProblem } from '@/lib/domain/orchard/inventory-problem'
import type { Language } from '@/lib/text/language'

import { type BringInText, bringInText, problemText } from './bring-in-text'
import { bringInto } from './bring-in-trees'
import { hashOfCode, newCode } from './codes'
import { type End, ends, said } from './ends'
import { backendAt, signIn } from './public-client'
import { type Call, mustSend, type Seat, send } from './referee'
import type { Print } from './terminal'
import { type Entered, found, lookAt, redeem, type WayIn, wayInOf } from './way-in'

export type BringIn = {
  file: string
  link: string
  language: Language
  server?: string
  name?: string
  manager?: string
  timeZone?: string
  units?: 'metric' | 'us'
}

/** Opens a new login at an address. A test brings its own. */
export type Open = (address: string) => Promise<{ call: Call; close: () => Promise<void> }>

const openPublic: Open = async (address) => signIn(await backendAt(address))

export async function bringIn(wish: BringIn, print: Print, open: Open = openPublic): Promise<End> {
  const text = bringInText(wish.language)
  const file = readIfThere(wish.file)
  if (!file) return said(print, text.noFile(wish.file), ends.missing)
  const inventory = parseInventory({ file, thisYear: new Date().getFullYear() })
  if (inventory.state === 'refused') {
    for (const problem of inventory.problems) print(sentenceOf(problem, text))
    return said(print, problemText(text).nothingBroughtIn, ends.rowsWrong)
  }
  for (const { line, why, text: says } of inventory.passedOver) {
    print(problemText(text).passed[why](problemText(text).lineSays(line, says)))
  }
  const wayIn = wayInOf(wish.link)
  if (!wayIn) return said(print, text.notALink, ends.notLetIn)

  const address = wish.server ?? new URL(wish.link).origin
  const noAnswer = () => said(print, text.noAnswer(address), ends.noAnswer)
  const client = await open(address).catch(() => null)
  if (!client) return noAnswer()
  try {
    const asked = { wish, text, print, wayIn, call: client.call }
    const entered = await enter(asked)
    if (typeof entered === 'number') return entered
    const { seat } = entered
    const end = await bringInto({ text, print, seat, file, inventory }).catch(noAnswer)
    await handBack(asked, entered)
    return end
  } catch {
    return noAnswer()
  } finally {
    await client.close()
  }
}

type Asked = { wish: BringIn; text: BringInText; print: Print; wayIn: WayIn; call: Call }
type In = { seat: Seat; hasOtherDevice: boolean }

async function enter({ wish, text, print, wayIn, call }: Asked): Promise<In | End> {
  const { manager, name, timeZone, language, units = 'metric' } = wish
  const { code, isSetUp } = wayIn
  if (isSetUp) {
    if (!manager || !name || !timeZone) {
      const needed = { '--name': name, '--manager': manager, '--time-zone': timeZone }
      const lacks = Object.entries(needed).flatMap(([option, value]) => (value ? [] : [option]))
      return said(print, text.missing(lacks.join(', ')), ends.missing)
    }
    if (!isTimeZone(timeZone)) return said(print, text.noTimeZone(timeZone), ends.missing)
    const orchard = { code, name, personName: manager, timeZone, language, units }
    return seated(await found(call, orchard), false)
  }
  const looked = await lookAt(call, code)
  if (!looked) return said(print, text.linkOver, ends.notLetIn)
  if (looked.role !== 'manager') return said(print, text.notManager(looked.role), ends.notLetIn)
  // Whoever comes by it waits until a manager lets them in, and nobody does that for a script.
  if (looked.kind === 'role') return said(print, text.waitsFirst, ends.notLetIn)
  return seated(await redeem(call, code, null), looked.kind === 'device')

  function seated(entered: Entered, hasOtherDevice: boolean): In | End {
    if (entered.state === 'in') return { seat: entered.seat, hasOtherDevice }
    const isOver = entered.code.startsWith('code_')
    return said(print, isOver ? text.linkOver : text.refused(entered.code), ends.notLetIn)
  }
}

/** This script is no device that anybody keeps, so whoever has no other gets a link for theirs. */
async function handBack({ wish, text, print }: Asked, { seat, hasOtherDevice }: In): Promise<void> {
  if (hasOtherDevice) {
    await send(seat, 'end_login', {})
    return
  }
  const code = newCode()
  await mustSend(seat, 'make_invite', { kind: 'device', codeHash: hashOfCode(code), hours: 24 })
  print(text.managersLink)
  print(`${new URL(wish.link).origin}/join#${code}`)
}

function sentenceOf({ line, code, column, found, allowed }: InventoryProblem, text: BringInText) {
  const { atLine, problems } = problemText(text)
  return `${atLine(line)}: ${problems[code]({ column: column ?? '', found, allowed })}`
}

function isTimeZone(name: string): boolean {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: name }) !== null
  } catch {
    return false
  }
}

function readIfThere(file: string): Uint8Array | null {
  try {
    return readFileSync(file)
  } catch {
    return null
  }
}
