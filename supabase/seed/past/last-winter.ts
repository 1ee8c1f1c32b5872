/** Last winter's round in the demo: held, closed and remembered. Sent like everything else, then given its times. */

import { randomUUID } from 'node:crypto'

import { dayIn } from '@/lib/util/day-in'

import type { Engine } from '../../local/engine/engine'
import { setTimes, spreadOverEvening } from '../demo-clock'
import { winterOf } from '../demo-day'
import { type Orchard, seatOf } from '../demo-orchard'
import { demoOrchard, demoPeople } from '../people'
import { randomFrom } from '../random'
import { Agenda } from './agenda'
import { daysAfter, lastWinter, saturdayAfter, timeOn } from './calendar'
import { planHazard, planSpring } from './found'
import { outInWinter, pastShifts } from './plan'
import { planShift } from './shift'
import type { Winter } from './winter'

/** Any number; the same past comes of it each time. */
const seed = 20_260_117

export async function liveLastWinter(engine: Engine, orchard: Orchard, now: Date): Promise<void> {
  const season = lastWinter(dayIn(demoOrchard.timeZone, now))
  const round = winterOf(season)
  const winter = emptyWinter(engine, orchard, round.species)
  const { agenda, at } = winter
  const first = saturdayAfter(`${season + 1}-01-09`, 0)
  const founded = daysAfter(first, -20)
  await spreadOverEvening(engine, { from: at(founded, '18:00'), to: at(founded, '20:30') })

  agenda.plan(at(daysAfter(first, -12), '19:00'), () =>
    agenda.must(orchard.manager, 'open_round', round, winter.round)
  )
  for (const plan of pastShifts) planShift(winter, plan, daysAfter(first, 7 * plan.weeks))
  planHazard(winter, first)
  planSpring(winter, daysAfter(round.to, -3))
  agenda.plan(at(round.to, '20:00'), () => endWinter(winter))
  await agenda.run()
  await winter.settle()
}

function emptyWinter(engine: Engine, orchard: Orchard, species: readonly string[]): Winter {
  const agenda = new Agenda()
  return {
    orchard,
    agenda,
    settle: () => setTimes(engine, agenda.meant),
    random: randomFrom(seed),
    round: randomUUID(),
    species: species.filter((one) => !outInWinter.includes(one)),
    at: timeOn(demoOrchard.timeZone),
    done: new Map(),
    begun: new Set(),
    held: new Set(),
    resting: new Set(),
    consented: new Set(),
    flags: new Map(),
  }
}

async function endWinter({ agenda, orchard, round }: Winter): Promise<void> {
  await agenda.must(orchard.manager, 'close_round', { round })
  for (const { name } of demoPeople.filter(({ since }) => since === 'last_winter_only')) {
    const subject = seatOf(orchard.seats, name).personId
    await agenda.must(orchard.manager, 'remove_person', { subject })
  }
}
