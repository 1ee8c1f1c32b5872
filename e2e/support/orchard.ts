/** A small orchard and its people, made by the commands that people send from their phones. */

import { randomUUID } from 'node:crypto'

import type { BackendAddress } from '@/lib/data/client'
import type { Accepted } from '@/lib/events/answer'
import type { ArgsOf, CommandName } from '@/lib/events/commands'
import type { Shift } from '@/lib/events/state'
import { routes } from '@/lib/routes'

import { hashOfCode, newCode } from '../../supabase/seed/codes'
import { snapshotOf } from '../../supabase/seed/follow'
import { backendAt } from '../../supabase/seed/public-client'
import {
  accepted,
  atTheGate,
  mustRead,
  mustSend,
  type Seat,
  sendPlain,
} from '../../supabase/seed/referee'
import { hostAddress } from './host'
import { type Login, newLogin } from './login'
import { clockAheadHours } from './morning'
import { takeSetUpCode } from './set-up-codes'
import { emergencyCard, inventory, orchardName } from './things'

/** Mo manages, Lee leads, Di has no phone. */
export const personNames = ['Mo', 'Lee', 'Ann', 'Bo', 'Cy', 'Di'] as const
export type PersonName = (typeof personNames)[number]

export class Orchard {
  private readonly seats = new Map<PersonName, Seat>()
  private readonly logins = new Map<PersonName, Login>()

  private constructor(
    private readonly backend: BackendAddress,
    private readonly orchardId: string
  ) {}

  /** Trees are in and people are added; nothing is planned. */
  static async found(): Promise<Orchard> {
    const backend = await backendAt(hostAddress())
    const login = await newLogin(backend)
    const { orchard: orchardId = '', person: personId = '' } = await mustSend(
      atTheGate(login.call),
      'create_orchard',
      {
        code: takeSetUpCode(),
        name: orchardName,
        personName: 'Mo',
        timeZone: timeZoneAt(Date.now()),
        language: 'en',
        units: 'metric',
      }
    )
    const orchard = new Orchard(backend, orchardId)
    orchard.seat('Mo', personId, login)
    await orchard.must('Mo', 'change_orchard', { emergency: emergencyCard })
    const trees = await sendPlain(orchard.seatOf('Mo'), 'bring_in_trees', inventory, randomUUID())
    accepted('bring_in_trees', trees)
    for (const name of personNames.slice(1)) await orchard.add(name)
    return orchard
  }

  /** A step of the story; where it is refused there is no story. Di's are sent from Lee's tablet. */
  async must<Name extends CommandName>(
    who: PersonName,
    name: Name,
    args: ArgsOf<Name>,
    id?: string
  ): Promise<Accepted> {
    return mustSend(this.seatOf(who), name, args, id)
  }

  /** A call has the id of its command. */
  async call(who: PersonName, args: ArgsOf<'call_for_help'>): Promise<{ id: string }> {
    const id = randomUUID()
    await this.must(who, 'call_for_help', args, id)
    return { id }
  }

  idOf(name: PersonName): string {
    return this.seatOf(name).personId
  }

  loginOf(name: PersonName): Login {
    return known(this.logins, name)
  }

  /** A link as the app makes it, to be opened in a browser. */
  async link(
    by: PersonName,
    wanted: Omit<ArgsOf<'make_invite'>, 'codeHash'>,
    { ended = false } = {}
  ): Promise<string> {
    const code = newCode()
    const invite = randomUUID()
    await this.must(by, 'make_invite', { ...wanted, codeHash: hashOfCode(code) }, invite)
    if (ended) await this.must(by, 'end_invite', { invite })
    return routes.join(code)
  }

  /** The tools that somebody has now. */
  async toolsOf(name: PersonName): Promise<number[]> {
    const { personId } = this.seatOf(name)
    const { tools } = await snapshotOf(this.seatOf('Lee'))
    const held = Object.entries(tools).filter(([, { heldBy }]) => heldBy === personId)
    return held.map(([no]) => Number(no))
  }

  async openShift(): Promise<Shift & { id: string }> {
    const { shifts } = await snapshotOf(this.seatOf('Lee'))
    const open = Object.entries(shifts).find(([, shift]) => shift.state === 'open')
    if (!open) throw new Error('No shift is open in this orchard.')
    return { ...open[1], id: open[0] }
  }

  /** What leads hear of one kind of event, the oldest first. */
  async heard(kind: string): Promise<Record<string, unknown>[]> {
    const lee = this.seatOf('Lee')
    const whose = { p_orchard: this.orchardId, p_person: lee.personId }
    const { epoch } = await snapshotOf(lee)
    const told = await mustRead(lee.call, 'events_after', { ...whose, p_epoch: epoch, p_n: 0 })
    // The app's own client checks this shape; here only what the leads hear is looked at.
    const { events } = told as { events: { kind?: string; leadBody?: Record<string, unknown> }[] }
    return events.filter((event) => event.kind === kind).map(({ leadBody }) => leadBody ?? {})
  }

  /** All that were taken here, as the leads get them. */
  async photos(): Promise<Buffer[]> {
    const taken = await this.heard('photo_added')
    return Promise.all(
      taken.map(async ({ photo }) => {
        const asked = { p_orchard: this.orchardId, p_photo: photo }
        const { jpeg } = (await mustRead(this.seatOf('Lee').call, 'read_photo', asked)) as {
          jpeg: string
        }
        return Buffer.from(jpeg, 'base64')
      })
    )
  }

  private async add(name: PersonName): Promise<void> {
    const role = name === 'Lee' ? 'lead' : 'volunteer'
    const { person: personId = '' } = await this.must('Mo', 'add_person', { name, role })
    if (name === 'Di') {
      this.seat(name, personId, this.loginOf('Lee'))
      return
    }
    const code = newCode()
    const wanted = { kind: 'device', subject: personId, codeHash: hashOfCode(code) } as const
    await this.must('Mo', 'make_invite', wanted)
    const login = await newLogin(this.backend)
    await mustSend(atTheGate(login.call), 'redeem', { code })
    this.seat(name, personId, login)
  }

  private seat(name: PersonName, personId: string, login: Login): void {
    this.seats.set(name, { call: login.call, orchardId: this.orchardId, personId })
    this.logins.set(name, login)
  }

  private seatOf(name: PersonName): Seat {
    return known(this.seats, name)
  }
}

/** Zones of this family say how far Greenwich is ahead of them. */
function timeZoneAt(nowMs: number): string {
  const ahead = clockAheadHours(nowMs)
  return ahead === 0 ? 'Etc/UTC' : `Etc/GMT${ahead > 0 ? '-' : '+'}${Math.abs(ahead)}`
}

function known<Thing>(things: ReadonlyMap<PersonName, Thing>, name: PersonName): Thing {
  const thing = things.get(name)
  if (thing === undefined) throw new Error(`${name} is not in this orchard.`)
  return thing
}
