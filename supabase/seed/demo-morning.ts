/** The demo's morning up to the first cut: planned, counted, briefed, equipped, trees marked, and flagged. */

import { randomUUID } from 'node:crypto'

import type { Tree } from '@/lib/domain/orchard/types'
import type { Skill } from '@/lib/events/state'
import type { Engine } from '../local/engine/engine'
import { type DemoDay, demoDay, itIsDay } from './demo-day'
import { inRow, type Orchard, seatOf, seatPeople, treeAt } from './demo-orchard'
import { cankers, dangerousTree, diseasedTree, keepOutM, markedRows, topics } from './demo-plan'
import { demoOrchard, demoPeople, demoSeats } from './people'
import { mustSend } from './referee'

export type Demo = Orchard & { day: DemoDay; shift: string }

/** Who is new this season comes in, and today's shift is planned. */
export async function planToday(engine: Engine, orchard: Orchard, now: Date): Promise<Demo> {
  const day = demoDay(now, demoOrchard.timeZone)
  await seatPeople(
    engine,
    orchard,
    demoPeople.filter(({ since }) => since === 'today')
  )
  const round = randomUUID()
  await mustSend(orchard.manager, 'open_round', day.round, round)
  const shift = randomUUID()
  await mustSend(orchard.manager, 'schedule_shift', { ...day.shift, round }, shift)
  await mustSend(orchard.manager, 'write_briefing', { shift, topics, change: 'first' })
  return { ...orchard, day, shift }
}

export async function beginMorning(demo: Demo): Promise<void> {
  const { lead, shift, day } = demo
  await mustSend(lead, 'open_shift', { shift, off: day.off ?? {} })
  await mustSend(lead, 'make_exception', itIsDay)
  const awayToday: string[] = [demoSeats.manager]
  const here = demoPeople.filter(
    ({ name, since }) => !awayToday.includes(name) && since !== 'last_winter_only'
  )
  const crew = here.filter(({ name, role }) => role !== 'visitor' && name !== demoSeats.newcomer)

  for (const { name } of here) await mustSend(seatOf(demo.seats, name), 'arrive', {})
  const briefed = crew.map(({ name }) => seatOf(demo.seats, name).personId)
  await mustSend(lead, 'give_briefing', { people: briefed })
  for (const person of crew) await makeReady(demo, person)

  await takeTools(
    demo,
    crew.filter(({ ageBand }) => ageBand === 'adult')
  )
  await lookAtTrees(demo)
  await findCankers(demo)
}

async function makeReady(demo: Demo, person: (typeof demoPeople)[number]): Promise<void> {
  const { name, guardian, language, hasPhone } = person
  const seat = seatOf(demo.seats, name)
  await mustSend(seat, 'give_consent', {
    textVersion: 1,
    by: guardian ? seatOf(demo.seats, guardian).personId : null,
  })
  const how = hasPhone ? 'heard' : 'read_to_me'
  await mustSend(seat, 'sign_briefing', { version: 1, language, how })
  await mustSend(seat, 'check_equipment', { failedItems: [] })
}

/** A pruner for everybody; saws and ladders for those who may use them, as long as there are any. */
async function takeTools(demo: Demo, crew: typeof demoPeople): Promise<void> {
  const left = { P: 1, S: 1, T: 1 }
  const most = { P: 14, S: 5, T: 2 }
  const askedFor: Record<keyof typeof left, Skill | null> = { P: null, S: 'hand_saw', T: 'ladder' }
  for (const { name, skills } of crew) {
    for (const letter of ['P', 'S', 'T'] as const) {
      const skill = askedFor[letter]
      if (left[letter] > most[letter] || (skill && !skills.includes(skill))) continue
      const tool = demo.tools.get(`${letter}${left[letter]++}`) ?? 0
      await mustSend(seatOf(demo.seats, name), 'take_tool', { tool, failedItems: [] })
    }
  }
}

async function lookAtTrees(demo: Demo): Promise<void> {
  const { lead, day } = demo
  const inRound = (tree: Tree) =>
    tree.life === 'standing' && day.round.species.includes(tree.species)
  const marked = markedRows.flatMap(([code, row]) => inRow(demo.inventory, code, row))
  for (const tree of marked.filter(inRound)) {
    await mustSend(lead, 'mark_big_cuts', { tree: tree.no })
  }
  await mustSend(seatOf(demo.seats, 'Nadia Brightwater'), 'flag_tree', {
    tree: treeAt(demo, diseasedTree),
    kind: 'disease',
    sign: 'canker',
    severity: 'low',
    part: 'branch',
  })
  await mustSend(seatOf(demo.seats, 'Iker Salvaterra'), 'flag_tree', {
    tree: treeAt(demo, dangerousTree),
    kind: 'arborist',
    sign: 'hanging_limb',
    severity: 'high',
    part: 'limb',
    keepOutM,
    reasons: [
      { code: 'hanging_limb', seen: true },
      { code: 'limb_thick', seen: true, value: 12, limit: 10 },
    ],
    limb: { cm: 12, bearingDeg: 135 },
  })
}

async function findCankers(demo: Demo): Promise<void> {
  const finder = seatOf(demo.seats, 'Nadia Brightwater')
  for (const { at, severity, isConfirmed } of cankers) {
    const flag = randomUUID()
    const seen = { sign: 'canker', severity, part: 'limb' } as const
    await mustSend(finder, 'flag_tree', { tree: treeAt(demo, at), kind: 'disease', ...seen }, flag)
    if (isConfirmed) await mustSend(demo.lead, 'confirm_flag', { flag, ...seen })
  }
}
