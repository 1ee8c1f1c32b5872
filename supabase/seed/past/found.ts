/** What was found on trees, and what became of it by spring. */

import { randomUUID } from 'node:crypto'

import type { DateOnly } from '@/lib/events/state'

import { inRow, treeAt } from '../demo-orchard'
import { demoSeats } from '../people'
import { hours, leftOutReason, leftOutRow, onLookout, pastFlags, pastHazard } from './plan'
import { type Day, seatIn, type Winter } from './winter'

/** By whoever finished the tree, before they went home; a lead has a look on the way. */
export function planFinds({ winter, finished, clock }: Day): void {
  const { agenda, done, flags, orchard } = winter
  agenda.plan(clock(hours.finds), async () => {
    for (const { at, ended: _, ...seen } of pastFlags) {
      const tree = treeAt(orchard, at)
      const by = done.get(tree)
      if (by === undefined || !finished.includes(tree)) continue
      const flag = randomUUID()
      flags.set(tree, flag)
      const found = { ...seen, tree, kind: 'disease' } as const
      await agenda.must(seatIn(winter, by), 'flag_tree', found, flag)
      await agenda.must(seatIn(winter, onLookout), 'confirm_flag', { flag, ...seen })
    }
  })
}

/** The tall ones at the road: a lead sees the crack, and none of them are the crew's this winter. */
export function planHazard(winter: Winter, day: DateOnly): void {
  const { agenda, done, flags, orchard } = winter
  agenda.plan(winter.at(day, '15:10'), async () => {
    const lead = seatIn(winter, onLookout)
    const tree = treeAt(orchard, pastHazard.at)
    const flag = randomUUID()
    flags.set(tree, flag)
    await agenda.must(lead, 'flag_tree', { ...pastHazard.seen, tree, kind: 'arborist' }, flag)
    const others = inRow(orchard.inventory, ...leftOutRow).filter(
      (one) => one.life === 'standing' && !done.has(one.no)
    )
    const trees = others.map(({ no }) => no)
    await agenda.must(lead, 'leave_out_trees', { trees, reason: leftOutReason })
  })
}

/** Looked at again when the buds swell. */
export function planSpring(winter: Winter, day: DateOnly): void {
  const { agenda, flags, orchard } = winter
  const lead = seatIn(winter, demoSeats.lead)
  agenda.plan(winter.at(day, '17:00'), async () => {
    for (const { at, ended } of pastFlags) {
      const flag = flags.get(treeAt(orchard, at))
      if (flag === undefined) continue
      agenda.pass(4)
      if (ended) await agenda.must(lead, 'withdraw_flag', { flag, note: ended })
      else
        await agenda.must(lead, 'follow_up_flag', {
          flag,
          note: 'Still weeps. Look again when it is dormant.',
        })
    }
    const flag = flags.get(treeAt(orchard, pastHazard.at))
    const { done, doneBy } = pastHazard
    if (flag) await agenda.must(orchard.manager, 'clear_flag', { flag, done, doneBy, doneOn: day })
  })
}
