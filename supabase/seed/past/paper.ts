/** The shift without signal: everybody wrote down what they did, and in the evening a lead entered it. */

import { demoSeats } from '../people'
import { minutesFor } from './minutes'
import { hours, type PastWorker, restMin, walkMin } from './plan'
import { nextOf } from './trees'
import { crewOf, type Day, seatIn } from './winter'

type Line = { name: string; tree: number; begunAt: string; at: string }

export function planPaper(day: Day): void {
  const { winter } = day
  const { agenda } = winter
  agenda.plan(day.clock(hours.evening), async () => {
    // The referee finds the shift of a time on paper by when each was open.
    await winter.settle()
    const lead = seatIn(winter, demoSeats.lead)
    const as = (name: string) => ({ ...lead, personId: seatIn(winter, name).personId })
    for (const name of crewOf(day)) await agenda.must(as(name), 'enter_attendance', stayOf(day))
    for (const { name, ...work } of day.workers.flatMap((worker) => linesOf(day, worker)))
      await agenda.must(as(name), 'enter_work', work)
    await agenda.must(lead, 'mark_brush', { trees: day.finished, hauled: true })
  })
}

/** As people write it: to five minutes. */
function stayOf({ clock, winter }: Day) {
  const about = (time: string, minutes = 0) =>
    after(clock(time), minutes + 5 * Math.floor(winter.random.share() * 3))
  return {
    arrivedAt: about(hours.from),
    breaks: [[about(hours.rest), about(hours.rest, restMin)]],
    leftAt: about(hours.home),
  }
}

/** Their part of the rows, until it is time for the brush. */
function linesOf(day: Day, worker: PastWorker): Line[] {
  const { done, random } = day.winter
  const lines: Line[] = []
  let at = day.clock(hours.ready)
  let tree = nextOf(day, worker, null)
  while (tree) {
    const end = new Date(after(at, minutesFor(tree, worker.pace, random)))
    if (end > day.clock(hours.brush)) break
    lines.push({
      name: worker.name,
      tree: tree.no,
      begunAt: at.toISOString(),
      at: end.toISOString(),
    })
    done.set(tree.no, worker.name)
    day.finished.push(tree.no)
    const isRest = at < day.clock(hours.rest) && end >= day.clock(hours.rest)
    at = new Date(after(end, isRest ? restMin : walkMin))
    tree = nextOf(day, worker, tree)
  }
  return lines
}

function after(time: Date, minutes: number): string {
  return new Date(time.getTime() + minutes * 60_000).toISOString()
}
