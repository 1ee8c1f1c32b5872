/** The links that the host prints when it starts. Made anew each time: only their hashes are kept. */

import { randomUUID } from 'node:crypto'

import { routes } from '@/lib/routes'
import type { Engine } from '../local/engine/engine'
import { hashOfCode, newCode } from './codes'
import { demoOrchard, demoSeats } from './people'

const seatNames = ['manager', 'lead', 'volunteer', 'newcomer', 'join', 'set_up'] as const
/**
 * volunteer: ready to claim. newcomer: has just arrived and lacks things. join: whoever opens it
 * joins the shift. set_up: makes the orchard and its first manager.
 */
export type SeatName = (typeof seatNames)[number]

/** `path` carries a code: to be printed, never logged. */
export type Link = { seat: SeatName; path: string }

/** On an empty database the way to make an orchard; in the demo one way in for each role. */
export async function linksAtStart(engine: Engine): Promise<Link[]> {
  const orchards = await engine.query<{ id: string; name: string }>(
    'select id, name from public.orchards'
  )
  if (orchards.length === 0) return [await setUpLink(engine)]
  const demo = orchards.find(({ name }) => name === demoOrchard.name)
  return demo ? demoLinks(engine, demo.id) : []
}

export async function setUpLink(engine: Engine): Promise<Link> {
  const code = newCode()
  await engine.query('select private.make_setup_code($1)', [hashOfCode(code)])
  return { seat: 'set_up', path: routes.setUp(code) }
}

async function demoLinks(engine: Engine, orchardId: string): Promise<Link[]> {
  // What the host made at earlier starts; people's own links have a maker.
  await engine.query(
    `update public.invites set ended_at = now()
     where orchard_id = $1 and made_by is null and ended_at is null`,
    [orchardId]
  )
  const people = await engine.query<{ id: string; name: string; role: string }>(
    'select id, name, role from public.people where orchard_id = $1 and removed_at is null',
    [orchardId]
  )
  const links: Link[] = []
  for (const seat of ['manager', 'lead', 'volunteer', 'newcomer'] as const) {
    const person = people.find(({ name }) => name === demoSeats[seat])
    if (!person) continue
    const role = seat === 'newcomer' ? 'volunteer' : seat
    const code = await invite(engine, { orchardId, kind: 'device', role, personId: person.id })
    links.push({ seat, path: routes.join(code) })
  }
  const [shift] = await engine.query<{ id: string }>(
    `select id from public.shifts where orchard_id = $1 and state = 'open'`,
    [orchardId]
  )
  if (shift) {
    const code = await invite(engine, {
      orchardId,
      kind: 'join',
      role: 'volunteer',
      shiftId: shift.id,
    })
    links.push({ seat: 'join', path: routes.join(code) })
  }
  return links
}

export type Invite = {
  orchardId: string
  kind: 'device' | 'join'
  role: 'manager' | 'lead' | 'volunteer'
  personId?: string
  shiftId?: string
}

/** Gives the code. */
export async function invite(engine: Engine, wanted: Invite): Promise<string> {
  const { orchardId, kind, role, personId = null, shiftId = null } = wanted
  const id = randomUUID()
  const code = newCode()
  await engine.query(
    `select private.make_invite($1, $2, $3, $4, $5, now() + interval '90 days', $6, $7)`,
    [id, orchardId, kind, role, hashOfCode(code), shiftId, personId]
  )
  // A demo is looked at on a phone, a tablet and a laptop.
  await engine.query('update public.invites set uses_left = 500 where id = $1', [id])
  return code
}
