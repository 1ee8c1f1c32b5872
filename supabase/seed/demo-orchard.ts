/** The demo before anything happens in it: the orchard, its trees, its people and its tools. */

import { randomUUID } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { type Inventory, parseInventory } from '@/lib/domain/orchard/inventory'
import type { Tree } from '@/lib/domain/orchard/types'
import type { Engine } from '../local/engine/engine'
import { root } from '../local/root'
import { hashOfCode, newCode } from './codes'
import { demoBlockSettings } from './demo-blocks'
import { emergencyCard, failedTool, type Place, toolsInTheShed } from './demo-plan'
import { signInInside } from './inside'
import { inventoryArgs } from './inventory-args'
import { invite } from './links'
import { type DemoPerson, demoOrchard, demoPeople, demoSeats } from './people'
import { accepted, atTheGate, mustSend, type Seat, type SignIn, sendPlain } from './referee'
import { type Land, landOf } from './trees-to-take'

export type Orchard = {
  land: Land
  inventory: Inventory
  manager: Seat
  lead: Seat
  /** By name. Whoever has no phone sits at the lead's. */
  seats: Map<string, Seat>
  /** Tool numbers by label. */
  tools: ReadonlyMap<string, number>
}

export async function makeOrchard(engine: Engine, now: Date): Promise<Orchard> {
  const inventory = readInventory(now)
  const manager = await foundOrchard(engine)
  await mustSend(manager, 'change_orchard', { emergency: emergencyCard })
  const brought = await sendPlain(manager, 'bring_in_trees', inventoryArgs(inventory), randomUUID())
  accepted('bring_in_trees', brought)

  const seats = new Map([[demoSeats.manager as string, manager]])
  await seatPeople(
    engine,
    { seats, manager },
    demoPeople.filter(({ since }) => since !== 'today')
  )
  const lead = seatOf(seats, demoSeats.lead)
  const tools = await fillShed(manager)
  return { land: landOf(inventory.trees, inventory.blocks), inventory, manager, lead, seats, tools }
}

export function treeAt({ inventory }: Orchard, [code, row, place]: Place): number {
  const tree = inRow(inventory, code, row).find((found) => found.place === place)
  if (!tree) throw new Error(`The demo has no tree at ${code} ${row}·${place}.`)
  return tree.no
}

export function inRow({ blocks, trees }: Inventory, code: string, row: number): Tree[] {
  const block = blocks.find((found) => found.code === code)?.no
  return trees.filter((tree) => tree.block === block && tree.row === row)
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

async function foundOrchard(engine: Engine): Promise<Seat> {
  const code = newCode()
  await engine.query('select private.make_setup_code($1)', [hashOfCode(code)])
  const call = await signInInside(engine)()
  const { orchard, person } = await mustSend(atTheGate(call), 'create_orchard', {
    ...demoOrchard,
    code,
    personName: demoSeats.manager,
  })
  return { call, orchardId: orchard ?? '', personId: person ?? '' }
}

/** Added by the manager, each with what they may do, and with a phone of their own where they have one. */
export async function seatPeople(
  engine: Engine,
  { seats, manager }: Pick<Orchard, 'seats' | 'manager'>,
  people: readonly DemoPerson[]
): Promise<void> {
  const signIn = signInInside(engine)
  for (const person of people.filter(({ name }) => !seats.has(name))) {
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
  for (const { name, skills } of people) {
    const subject = seatOf(seats, name).personId
    // Nobody grants to oneself.
    const by = subject === manager.personId ? seatOf(seats, demoSeats.lead) : manager
    for (const skill of skills) await mustSend(by, 'grant_skill', { subject, skill })
  }
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
