/** A shift of the past opens and closes: everybody is counted in, briefed and equipped, and counted out. */

import { demoPeople, demoSeats } from '../people'
import { hours, lateMin, onLookout } from './plan'
import { crewOf, type Day, seatIn } from './winter'
import { WorkingDay } from './work'

export function planAttendance(day: Day): void {
  const { agenda } = day.winter
  const late = day.workers.find(({ name }) => name === day.plan.late)
  const crew = crewOf(day)
  agenda.plan(day.clock(hours.from), () =>
    comeIn(day, [onLookout, ...crew.filter((name) => name !== late?.name)])
  )
  for (const worker of day.workers) {
    if (worker !== late) new WorkingDay(day, worker).beginAt(day.clock(hours.ready))
  }
  if (late) {
    const ready = new Date(day.clock(hours.ready).getTime() + lateMin * 60_000)
    agenda.plan(ready, () => comeIn(day, [late.name]))
    new WorkingDay(day, late).beginAt(ready)
  }
  agenda.plan(day.clock(hours.home), () => goHome(day, [...crew, onLookout]))
}

async function comeIn(day: Day, names: readonly string[]): Promise<void> {
  const { agenda } = day.winter
  const seats = names.map((name) => seatIn(day.winter, name))
  for (const seat of seats) {
    await agenda.must(seat, 'arrive', {})
    agenda.pass(1)
  }
  const lead = seatIn(day.winter, demoSeats.lead)
  await agenda.must(lead, 'give_briefing', { people: seats.map(({ personId }) => personId) })
  for (const name of names) await getReady(day, name)
}

async function getReady(day: Day, name: string): Promise<void> {
  const { winter } = day
  const { agenda, consented } = winter
  const person = demoPeople.find((one) => one.name === name)
  if (!person) throw new Error(`${name} is not in the demo.`)
  const seat = seatIn(winter, name)
  if (!consented.has(name)) {
    consented.add(name)
    const by = person.guardian ? seatIn(winter, person.guardian).personId : null
    await agenda.must(seat, 'give_consent', { textVersion: 1, by })
  }
  const how = person.hasPhone ? 'heard' : 'read_to_me'
  await agenda.must(seat, 'sign_briefing', { version: 1, language: person.language, how })
  await agenda.must(seat, 'check_equipment', { failedItems: [] })
  if (person.ageBand === 'minor') return
  const hasSaw = day.workers.some((worker) => worker.name === name && worker.saw)
  for (const letter of hasSaw ? ['P', 'S'] : ['P']) await takeTool(day, name, letter)
}

/** The next that hangs there. */
async function takeTool({ winter, tools }: Day, name: string, letter: string): Promise<void> {
  const out = [...tools.values()].flat().filter((label) => label.startsWith(letter)).length
  const label = `${letter}${out + 1}`
  tools.set(name, [...(tools.get(name) ?? []), label])
  const tool = winter.orchard.tools.get(label) ?? 0
  await winter.agenda.must(seatIn(winter, name), 'take_tool', { tool, failedItems: [] })
}

async function goHome({ winter, tools }: Day, names: readonly string[]): Promise<void> {
  const { agenda, orchard } = winter
  for (const name of names) {
    for (const label of tools.get(name) ?? []) {
      const tool = orchard.tools.get(label) ?? 0
      await agenda.must(seatIn(winter, name), 'return_tool', { tool })
    }
    await agenda.must(seatIn(winter, name), 'leave', {})
    agenda.pass(1)
  }
}
