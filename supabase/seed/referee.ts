/** How a script speaks to the referee: by the public functions, as whoever is signed in. */

import { randomUUID } from 'node:crypto'

import { answer } from '@/lib/data/answers'
import type { Connection } from '@/lib/data/client'
import { wireOf } from '@/lib/data/wire'
import { type Accepted, type Answer, isRefused, type Outcome } from '@/lib/events/answer'
import { type ArgsOf, type CommandName, commandOf } from '@/lib/events/commands'
import { read } from '@/lib/util/shape'

/** One login's calls, whatever carries them. */
export type Call = Connection['call']

/** A new anonymous login each time. */
export type SignIn = () => Promise<Call>

/** Somebody in an orchard. A lead's call with another person's id acts for that person. */
export type Seat = { call: Call; orchardId: string; personId: string }

const limitMs = 20_000

/** The same id again is the same command again. */
export async function send<Name extends CommandName>(
  seat: Seat,
  name: Name,
  args: ArgsOf<Name>,
  id: string = randomUUID()
): Promise<Outcome<Answer>> {
  const { call, orchardId, personId } = seat
  // A command of one name is a command.
  const command = commandOf(name, args, { id, orchardId, personId }) as Parameters<typeof wireOf>[0]
  return answered(await call({ ...wireOf(command), limitMs }))
}

/** For a command that no phone sends, so that it is not in the catalogue of lib/events. */
export async function sendPlain(
  { call, orchardId, personId }: Seat,
  name: string,
  values: Record<string, unknown>,
  id: string
): Promise<Outcome<Answer>> {
  const whose = { p_orchard: orchardId, p_command: id, p_person: personId }
  return answered(await call({ name, values: { ...whose, ...values }, limitMs }))
}

/** For what nothing should stand in the way of. */
export async function mustSend<Name extends CommandName>(
  seat: Seat,
  name: Name,
  args: ArgsOf<Name>,
  id?: string
): Promise<Accepted> {
  return accepted(name, await send(seat, name, args, id))
}

export function accepted(name: string, outcome: Outcome<Answer>): Accepted {
  if (outcome.ok && !isRefused(outcome.value)) return outcome.value
  throw new Error(`${name} was not accepted: ${JSON.stringify(outcome)}`)
}

/** Before there is a seat: the link's code makes or finds the person. */
export function atTheGate(call: Call): Seat {
  return { call, orchardId: '', personId: '' }
}

export async function mustRead(
  call: Call,
  name: string,
  values: Record<string, unknown>
): Promise<unknown> {
  const outcome = await call({ name, values, limitMs })
  if (outcome.ok) return outcome.value
  throw new Error(`${name} could not be read: ${JSON.stringify(outcome)}`)
}

function answered(outcome: Outcome<unknown>): Outcome<Answer> {
  if (!outcome.ok) return outcome
  const known = read(answer, outcome.value)
  return known ? { ok: true, ...known } : { ok: false, fault: 'unknown', code: 'not_understood' }
}
