/** How far the day has come when a journey begins. */

import { randomUUID } from 'node:crypto'

import { clockAheadHours } from './morning'
import type { Orchard, PersonName } from './orchard'

/**
 * `founded`: trees and people, nothing planned. `planned`: a round, a shift in it and its briefing.
 * `open`: the shift is open and Lee has arrived. `at work`: Ann and Bo are ready for a tree.
 */
export type Day = 'founded' | 'planned' | 'open' | 'at work'

const hourMs = 3600_000

export async function bringDayTo(day: Day, orchard: Orchard): Promise<void> {
  if (day === 'founded') return
  const shift = await plan(orchard)
  if (day === 'planned') return
  await orchard.must('Lee', 'open_shift', { shift })
  await orchard.must('Lee', 'arrive', {})
  if (day === 'open') return
  await makeReady(orchard, 'Ann', 'P1')
  await makeReady(orchard, 'Bo', 'P2')
}

/** Everything that a claim asks of a person: after it nothing is missing. */
export async function makeReady(
  orchard: Orchard,
  name: PersonName,
  toolLabel: string
): Promise<void> {
  const { tool = 0 } = await orchard.must('Lee', 'add_tool', { label: toolLabel, kind: 'pruner' })
  await orchard.must(name, 'give_consent', { textVersion: 1 })
  await orchard.must(name, 'arrive', {})
  await orchard.must('Lee', 'give_briefing', { people: [orchard.idOf(name)] })
  await orchard.must(name, 'sign_briefing', { version: 1, language: 'en', how: 'heard' })
  await orchard.must(name, 'check_equipment', { failedItems: [] })
  await orchard.must(name, 'take_tool', { tool, failedItems: [] })
  await orchard.must('Mo', 'grant_skill', { subject: orchard.idOf(name), skill: 'prunes_alone' })
}

async function plan(orchard: Orchard): Promise<string> {
  const now = Date.now()
  const round = randomUUID()
  const shift = randomUUID()
  const dateIn = (days: number) =>
    new Date(now + clockAheadHours(now) * hourMs + days * 24 * hourMs).toISOString().slice(0, 10)
  // Cherries all year, so that no journey hangs on the month in which it is run.
  await orchard.must('Mo', 'change_orchard', {
    houseRules: { cherry_from_month: 1, cherry_to_month: 12 },
  })
  await orchard.must(
    'Mo',
    'open_round',
    {
      kind: 'winter',
      season: new Date(now).getUTCFullYear(),
      species: ['apple', 'cherry', 'pear'],
      from: dateIn(-20),
      to: dateIn(60),
    },
    round
  )
  await orchard.must(
    'Mo',
    'schedule_shift',
    {
      round,
      date: dateIn(0),
      startsAt: new Date(now - hourMs).toISOString(),
      endsAt: new Date(now + 5 * hourMs).toISOString(),
      signal: 'horn',
    },
    shift
  )
  const topics = [{ code: 'stop_signal' }, { code: 'tools' }]
  await orchard.must('Lee', 'write_briefing', { shift, topics, change: 'first' })
  return shift
}
