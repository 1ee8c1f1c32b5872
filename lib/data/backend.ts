/** The only door to the backend: everything that can be asked of it, checked as it comes in. */

import type { Answer, Outcome } from '@/lib/events/answer'
import type { Command } from '@/lib/events/commands'
import { stateOf } from '@/lib/events/snapshot'
import * as shape from '@/lib/util/shape'

import * as shapes from './answers'
import { type BackendAddress, type Call, type ClientOptions, connect, isLost } from './client'
import { listener } from './listen'
import { type Sheet, sheetOf } from './sheet'
import { wireOf } from './wire'

export type Membership = {
  orchardId: string
  orchardName: string
  language: 'en' | 'es'
  personId: string
  personName: string
  role: 'manager' | 'lead' | 'volunteer' | 'visitor'
  admitted: boolean
}

const readLimitMs = 15_000
const sheetLimitMs = 60_000

export type Backend = ReturnType<typeof openBackend>

export function openBackend(where: BackendAddress, options: ClientOptions = {}) {
  const connection = connect(where, options)
  const { address, client, call } = connection
  const listen = listener(connection)

  return {
    address,

    /** Null: nobody is signed in on this device. */
    user: async (): Promise<Outcome<string | null>> =>
      caught(async () => {
        const { data, error } = await (await client()).auth.getSession()
        if (error && !isLost(error)) return { ok: false, fault: 'offline' }
        return { ok: true, value: data.session?.user.id ?? null }
      }),

    /** Anonymous: no e-mail, no password. Whoever is signed in stays who they are. */
    signIn: async (): Promise<Outcome<string>> =>
      caught(async () => {
        const { auth } = await client()
        const known = await auth.getSession()
        if (known.data.session) return { ok: true, value: known.data.session.user.id }
        if (known.error && !isLost(known.error)) return { ok: false, fault: 'offline' }
        const { data, error } = await auth.signInAnonymously()
        if (data.user) return { ok: true, value: data.user.id }
        return { ok: false, fault: error?.status === 429 ? 'busy' : 'offline' }
      }),

    myOrchards: async (): Promise<Outcome<Membership[]>> => {
      const told = await read({ name: 'my_orchards', values: {} }, shapes.memberships)
      if (!told.ok) return told
      return { ok: true, value: told.value.map(membershipOf) }
    },

    lookAtInvite: (code: string) =>
      read({ name: 'look_at_invite', values: { p_code: code } }, shapes.invite),

    /** As this login and no other. */
    as: (userId: string) => ({
      send: (command: Command, limitMs: number): Promise<Outcome<Answer>> =>
        read({ ...wireOf(command), limitMs, userId }, shapes.answer),

      snapshot: async (orchardId: string, personId: string) => {
        const values = { p_orchard: orchardId, p_person: personId }
        const told = await call({ name: 'snapshot', values, limitMs: readLimitMs, userId })
        if (!told.ok) return told
        const state = stateOf(told.value)
        return state ? { ok: true as const, value: state } : notUnderstood
      },

      eventsAfter: (orchardId: string, personId: string, epoch: string, n: number) => {
        const values = { p_orchard: orchardId, p_person: personId, p_epoch: epoch, p_n: n }
        return read({ name: 'events_after', values, userId }, shapes.events)
      },

      heartbeat: (orchardId: string, personId: string, head: number) => {
        const values = { p_orchard: orchardId, p_person: personId, p_head: head }
        return read({ name: 'heartbeat', values, userId }, shapes.heartbeat)
      },

      listen,
    }),

    treeSheet: async (orchardId: string, version: number): Promise<Outcome<TextSheet>> => {
      const values = { p_orchard: orchardId, p_version: version }
      const told = await call({ name: 'tree_sheet', values, limitMs: sheetLimitMs })
      if (!told.ok) return told
      const text = typeof told.value === 'string' ? told.value : ''
      const sheet = sheetOf(text)
      return sheet ? { ok: true, value: { text, sheet } } : notUnderstood
    },

    names: (orchardId: string, people: readonly string[] | null) =>
      read({ name: 'names', values: { p_orchard: orchardId, p_people: people } }, shapes.names),

    emergencyCard: (orchardId: string) =>
      read({ name: 'emergency_card', values: { p_orchard: orchardId } }, shapes.emergencyCard),

    privatePeople: (orchardId: string) =>
      read({ name: 'private_people', values: { p_orchard: orchardId } }, shapes.privatePeople),

    toLookOver: (orchardId: string) =>
      read({ name: 'trees_to_look_over', values: { p_orchard: orchardId } }, shapes.toLookOver),

    notesOfRound: (orchardId: string) =>
      read({ name: 'notes_of_round', values: { p_orchard: orchardId } }, shapes.notesOfRound),

    /** Null: the shift that was opened last. */
    shiftRecord: (orchardId: string, shiftId: string | null) => {
      const values = { p_orchard: orchardId, p_shift: shiftId }
      return read({ name: 'shift_record', values }, shapes.shiftRecord)
    },

    /** `version` null: the newest. */
    briefing: (orchardId: string, shiftId: string, version: number | null) => {
      const values = { p_orchard: orchardId, p_shift: shiftId, p_version: version }
      return read({ name: 'read_briefing', values }, shapes.briefing)
    },

    photo: (orchardId: string, photoId: string) => {
      const values = { p_orchard: orchardId, p_photo: photoId }
      return read({ name: 'read_photo', values }, shapes.photo)
    },

    toolFaults: (orchardId: string) =>
      read({ name: 'tool_faults', values: { p_orchard: orchardId } }, shapes.toolFaults),

    cameIn: (orchardId: string) =>
      read({ name: 'came_in', values: { p_orchard: orchardId } }, shapes.cameIn),

    calls: (orchardId: string) =>
      read({ name: 'read_calls', values: { p_orchard: orchardId } }, shapes.calls),

    incidents: (orchardId: string) =>
      read({ name: 'read_incidents', values: { p_orchard: orchardId } }, shapes.incidents),

    flagDetails: (orchardId: string, flags: readonly string[]) => {
      const values = { p_orchard: orchardId, p_flags: flags }
      return read({ name: 'flag_details', values }, shapes.flagDetails)
    },

    myFlags: (orchardId: string, personId: string) => {
      const values = { p_orchard: orchardId, p_person: personId }
      return read({ name: 'my_flags', values }, shapes.myFlags)
    },

    treeNotes: (orchardId: string, tree: number) => {
      const values = { p_orchard: orchardId, p_tree: tree }
      return read({ name: 'tree_notes', values }, shapes.notes)
    },

    /** For what is asked for only inside: lib/data/rooms.ts has its shapes, so that the door does not carry them. */
    read,
  }

  async function read<Value>(
    asked: Omit<Call, 'limitMs'> & { limitMs?: number },
    valueShape: shape.Shape<Value>
  ): Promise<Outcome<Value>> {
    const told = await call({ limitMs: readLimitMs, ...asked })
    if (!told.ok) return told
    const known = shape.read(valueShape, told.value)
    return known ? { ok: true, value: known.value } : notUnderstood
  }
}

/** The text is what is kept on the device. */
export type TextSheet = { text: string; sheet: Sheet }

const notUnderstood = { ok: false as const, fault: 'unknown' as const, code: 'not_understood' }

function membershipOf(told: shape.Out<typeof shapes.memberships>[number]): Membership {
  return {
    orchardId: told.orchard,
    orchardName: told.name,
    language: told.language,
    personId: told.person,
    personName: told.personName ?? '',
    role: told.role,
    admitted: told.admitted,
  }
}

async function caught<Value>(run: () => Promise<Outcome<Value>>): Promise<Outcome<Value>> {
  try {
    return await run()
  } catch {
    return { ok: false, fault: 'offline' }
  }
}
