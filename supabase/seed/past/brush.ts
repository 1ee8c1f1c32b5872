/** When the pruning is over, pairs haul the wood of the rows that were done. */

import { randomUUID } from 'node:crypto'

import type { Tree } from '@/lib/domain/orchard/types'

import { inRow } from '../demo-orchard'
import { demoSeats } from '../people'
import { brushGoes, haulMin, hours } from './plan'
import { treesOf } from './trees'
import { type Day, seatIn, type Winter } from './winter'

export function planBrush(day: Day): void {
  const { winter, workers, plan } = day
  const { agenda } = winter
  agenda.plan(day.clock(hours.brush), async () => {
    agenda.pass(2)
    await sayWhere(winter, treesOf(day))
    const pairs = pairsOf(workers.map(({ name }) => name))
    for (const [index, [block, row]] of plan.rows.slice(0, pairs.length).entries()) {
      const trees = inRow(winter.orchard.inventory, block, row)
      agenda.plan(agenda.inMinutes(index), () => haul(winter, trees, pairs[index] ?? []))
    }
  })
}

async function sayWhere(winter: Winter, trees: readonly Tree[]): Promise<void> {
  const rows = [...new Set(trees.map(({ row }) => row))]
  const lead = seatIn(winter, demoSeats.lead)
  await winter.agenda.must(lead, 'direct_brush', {
    block: trees[0]?.block ?? 0,
    rows,
    goes: brushGoes,
  })
}

async function haul(winter: Winter, row: Tree[], [name = '', other = '']: string[]): Promise<void> {
  const { agenda, done } = winter
  const [tree] = row
  const trees = row.flatMap(({ no }) => (done.has(no) ? [no] : []))
  if (!tree || trees.length === 0) return
  const claim = randomUUID()
  const seat = seatIn(winter, name)
  const helpers = [seatIn(winter, other).personId]
  await agenda.must(seat, 'take_brush', { block: tree.block, row: tree.row, helpers }, claim)
  agenda.plan(agenda.inMinutes(haulMin), () => agenda.must(seat, 'finish_brush', { claim, trees }))
}

function pairsOf(names: readonly string[]): string[][] {
  return names.flatMap((name, index) => {
    const other = names[index + 1]
    return index % 2 === 0 && other ? [[name, other]] : []
  })
}
