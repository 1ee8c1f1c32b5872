/** The trees themselves, sent as one command: all of them come in, or the rows that are wrong are named. */

import { createHash, randomUUID } from 'node:crypto'

import type { ParsedInventory } from '@/lib/domain/orchard/inventory'
import { type Fault, isRefused } from '@/lib/events/answer'

import { type BringInText, problemText } from './bring-in-text'
import { type End, ends, said } from './ends'
import { inventoryArgs } from './inventory-args'
import { mustRead, type Seat, sendPlain } from './referee'
import { linesOf, type WrongRow } from './rows-in-file'
import type { Print } from './terminal'

export type Bringing = {
  text: BringInText
  print: Print
  seat: Seat
  file: Uint8Array
  inventory: Extract<ParsedInventory, { state: 'read' }>
}

export async function bringInto({ text, print, seat, file, inventory }: Bringing): Promise<End> {
  const values = inventoryArgs(inventory)
  const before = await headOf(seat)
  // The same file for the same orchard is the same command, so that sending it twice adds nothing.
  const id = idFrom(seat.orchardId, file)
  let outcome = await sendPlain(seat, 'bring_in_trees', values, id)
  // What was refused once may fit now, and a stored refusal would only be repeated.
  if (outcome.ok && isRefused(outcome.value))
    outcome = await sendPlain(seat, 'bring_in_trees', values, randomUUID())

  if (!outcome.ok) return said(print, ...faultOf(text, outcome))
  const answer = outcome.value
  if (isRefused(answer)) {
    const rows = (answer.refused[0]?.detail?.rows ?? []) as WrongRow[]
    for (const { line, code } of linesOf(inventory.lines, rows))
      print(refusedSentence(text, line, code))
    return said(print, problemText(text).nothingBroughtIn, ends.rowsWrong)
  }
  if (answer.n <= before) return said(print, text.inBefore, ends.allIn)
  const { trees, blocks, cultivars } = inventory
  const counts = { trees: trees.length, blocks: blocks.length, cultivars: cultivars.length }
  const notStanding = trees.filter(({ life }) => life !== 'standing').length
  return said(print, text.broughtIn({ ...counts, notStanding }), ends.allIn)
}

function faultOf(text: BringInText, { fault, code }: Fault): [sentence: string, end: End] {
  switch (fault) {
    case 'too_large':
      return [text.tooLarge, ends.missing]
    case 'not_allowed':
    case 'malformed':
    case 'signed_out':
      return [text.refused(code ?? fault), ends.notLetIn]
    case 'offline':
    case 'busy':
    case 'unknown':
      return [text.notHeard, ends.noAnswer]
  }
}

async function headOf({ call, orchardId, personId }: Seat): Promise<number> {
  const values = { p_orchard: orchardId, p_person: personId, p_head: 0 }
  return ((await mustRead(call, 'heartbeat', values)) as { head: number }).head
}

function idFrom(orchardId: string, file: Uint8Array): string {
  const hex = createHash('sha256').update(orchardId).update(file).digest('hex')
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    hex.slice(12, 16),
    hex.slice(16, 20),
    hex.slice(20, 32),
  ].join('-')
}

function refusedSentence(text: BringInText, line: number, code: string): string {
  const sentence = code === 'place_taken' ? text.placeInOrchard : text.otherwiseWrong(code)
  return `${problemText(text).atLine(line)}: ${sentence}`
}
