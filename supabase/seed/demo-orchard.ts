/** The demo before its shift opens: the orchard, its trees, its people, its tools, and today's plan. */

import { randomUUID } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { type Inventory, parseInventory } from '@/lib/domain/orchard/inventory'
import type { Engine } from '../local/engine/engine'
import { root } from '../local/root'
import { hashOfCode, newCode } from './codes'
import { demoBlockSettings } from './demo-blocks'
import { type DemoDay, demoDay } from './demo-day'
import { emergencyCard, failedTool, toolsInTheShed } from './demo-plan'
import { signInInside } from './inside'
import { inventoryArgs } from './inventory-args'
import { invite } from './links'
import { type DemoPerson, demoOrchard, demoPeople, demoSeats } from './people'
import { accepted, atTheGate, mustSend, type Seat, type SignIn, sendPlain } from './referee'
import { type Land, landOf } from './trees-to-take'

export type Demo = {
  day: DemoDay
  shift: string
  land: Land
  inventory: Inventory
  manager: Seat
  lead: Seat
  /** By name. Whoever has no phone sits at the lead's. */
  seats: ReadonlyMap<string, Seat>
  /** Tool numbers by label. */
  tools: ReadonlyMap<string, number>
}

export async function makeOrchard(engine: Engine, now: Date): Promise<Demo> {
  const signIn = signInInside(engine)
  const day = demoDay(now, demoOrchard.timeZone)
  const inventory = readInventory(now)
  const manager = await foundOrchard(engine, signIn)
  await mustSend(manager, 'change_orchard', { emergency: emergencyCard })
  const brought = await sendPlain(manager, 'bring_in_trees', inventoryArgs(inventory), randomUUID())
  accepted('bring_in_trees', brought)

  const seats = await seatPeople(engine, signIn, manager)
  const lead = seatOf(seats, demoSeats.lead)
  await grantSkills({ manager, lead, seats })
  const tools = await fillShed(manager)
  const shift = await planShift(manager, day)
  return {
    day,
    shift,
    land: landOf(inventory.trees, inventory.blocks),
    inventory,
    manager,
    lead,
    seats,
    tools,
  }
}

export function seatOf(seats: ReadonlyMap<string, Seat>, name: string): Seat {
  const seat = seats.get(name)
  if (!seat) throw new Error(`${name} is not in the demo.`)
  return seat
}

function readInventory(now: Date): Inventory {
  const read = parseInventory({
    file: readFileSync(join(root, 'supabase/seed/orchard.csv')),
    thisYear: now.getUTCFullYear(),
    blockSettings: demoBlockSettings,
  })
  if (read.state === 'refused') {
    throw new Error(`The demo's orchard.csv is damaged: ${JSON.stringify(read.problems[0])}`)
  }
  return read
}

async function foundOrchard(engine: Engine, signIn: SignIn): Promise<Seat> {
  const code = newCode()
  await engine.query('select private.make_setup_code($1)', [hashOfCode(code)])
  const call = await signIn()
  const { orchard, person } = await mustSend(atTheGate(call), 'create_orchard', {
    ...demoOrchard,
    code,
    personName: demoSeats.manager,
  })
  return { call, orchardId: orchard ?? '', personId: person ?? '' }
}

async function seatPeople(
  engine: Engine,
  signIn: SignIn,
  manager: Seat
): Promise<Map<string, Seat>> {
  const seats = new Map<string, Seat>([[demoSeats.manager, manager]])
  for (const person of demoPeople.filter(({ name }) => !seats.has(name))) {
    const { person: personId = '' } = await mustSend(manager, 'add_person', {
      name: person.name,
      role: person.role,
      ageBand: person.ageBand,
      guardian: person.guardian ? seatOf(seats, person.guardian).personId : null,
    })
    const lead = seats.get(demoSeats.lead) ?? manager
    seats.set(
      person.name,
      person.hasPhone
        ? await phoneOf(engine, signIn, { person, personId, orchardId: manager.orchardId })
        : { ...lead, personId }
    )
  }
  return seats
}

async function phoneOf(
  engine: Engine,
  signIn: SignIn,
  whose: { person: DemoPerson; personId: string; orchardId: string }
): Promise<Seat> {
  const { person, personId, orchardId } = whose
  const role = person.role === 'visitor' ? 'volunteer' : person.role
  const code = await invite(engine, { orchardId, kind: 'device', role, personId })
  const call = await signIn()
  await mustSend(atTheGate(call), 'redeem', { code })
  return { call, orchardId, personId }
}

/** Nobody grants to oneself. */
async function grantSkills({
  manager,
  lead,
  seats,
}: Pick<Demo, 'manager' | 'lead' | 'seats'>): Promise<void> {
  for (const { name, skills } of demoPeople) {
    const subject = seatOf(seats, name).personId
    const by = subject === manager.personId ? lead : manager
    for (const skill of skills) await mustSend(by, 'grant_skill', { subject, skill })
  }
}

async function fillShed(manager: Seat): Promise<Map<string, number>> {
  const tools = new Map<string, number>()
  for (const { label, kind } of toolsInTheShed) {
    const { tool = 0 } = await mustSend(manager, 'add_tool', { label, kind })
    tools.set(label, tool)
  }
  await mustSend(manager, 'fail_tool', {
    tool: tools.get(failedTool.label) ?? 0,
    failedItems: failedTool.items,
    note: failedTool.note,
  })
  return tools
}

async function planShift(manager: Seat, day: DemoDay): Promise<string> {
  const round = randomUUID()
  const shift = randomUUID()
  await mustSend(manager, 'open_round', day.round, round)
  await mustSend(manager, 'schedule_shift', { ...day.shift, round }, shift)
  // What a lead would take in there; none of it says anything about people.
  const topics = ['stop_signal', 'tools', 'ladders', 'saws', 'keep_out', 'disease']
  const codes = topics.map((code) => ({ code }))
  await mustSend(manager, 'write_briefing', { shift, topics: codes, change: 'first' })
  return shift
}
