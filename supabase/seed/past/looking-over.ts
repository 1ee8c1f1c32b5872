/** Every quarter of an hour a lead looks at a finished tree: passed, or opened again for whoever finished it. */

import { hours, onLookout, reopenedPercent, reopenReasons } from './plan'
import { type Day, seatIn } from './winter'

const everyMin = 15
/** Time to do it again. */
const lastMin = 45

export function planLookingOver(day: Day): void {
  const { agenda } = day.winter
  const from = day.clock(hours.ready).getTime()
  const to = day.clock(hours.home).getTime()
  const everyMs = everyMin * 60_000
  for (let atMs = from + 3 * everyMs; atMs < to; atMs += everyMs) {
    agenda.plan(new Date(atMs), () => lookAt(day))
  }
}

async function lookAt({ winter, again, lookedOver, clock, finished }: Day): Promise<void> {
  const { agenda, begun, done, random } = winter
  const tree = random.pick(finished.filter((no) => done.has(no) && !lookedOver.has(no)))
  const by = tree === null ? undefined : done.get(tree)
  if (tree === null || by === undefined) return
  const leftMin = (clock(hours.brush).getTime() - agenda.now().getTime()) / 60_000
  const lead = seatIn(winter, onLookout)
  if (leftMin < lastMin || !random.percent(reopenedPercent)) {
    lookedOver.add(tree)
    await agenda.must(lead, 'look_over', { tree, result: 'passed' })
    return
  }
  const reason = random.pick(reopenReasons)
  await agenda.must(lead, 'look_over', { tree, result: 'reopened', reason })
  done.delete(tree)
  begun.add(tree)
  again.set(by, [...(again.get(by) ?? []), tree])
}
