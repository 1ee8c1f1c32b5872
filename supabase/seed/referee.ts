/** How a script speaks to the referee: by the public functions, as whoever is signed in. */

import { randomUUID } from 'node:crypto'

import {
  type Accepted,
  type Answer,
  type FaultCode,
  isRefused,
  type Outcome,
} from '../../lib/events/answer'
import { type ArgsOf, type CommandName, commandOf, isFromOutside } from '../../lib/events/commands'

/** One login's calls, whatever carries them. Status 0: no answer came. */
export type Call = (
  name: string,
  values: Record<string, unknown>
) => Promise<{ status: number; body: unknown }>

/** A new anonymous login each time. */
export type SignIn = () => Promise<Call>

/** Somebody in an orchard. A lead's call with another person's id acts for that person. */
export type Seat = { call: Call; orchardId: string; personId: string }

/** The same id again is the same command again. */
export async function send<Name extends CommandName>(
  seat: Seat,
  name: Name,
  args: ArgsOf<Name>,
  id: string = randomUUID()
): Promise<Outcome<Answer>> {
  const command = commandOf(name, args, { ...seat, id })
  if (!isFromOutside(name)) return sendPlain(seat, name, command.args, id)
  return outcomeOf<Answer>(await seat.call(name, namedAsInSql({ command: id, ...command.args })))
}

/** For a command that no phone sends, so that it is not in the catalogue of lib/events. */
export async function sendPlain(
  { call, orchardId, personId }: Seat,
  name: string,
  args: Record<string, unknown>,
  id: string
): Promise<Outcome<Answer>> {
  const values = { orchard: orchardId, person: personId, command: id, ...args }
  return outcomeOf<Answer>(await call(name, namedAsInSql(values)))
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

/** `Value` is what this function of the referee answers with. */
export async function read<Value>(
  call: Call,
  name: string,
  values: Record<string, unknown>
): Promise<Outcome<Value>> {
  return outcomeOf<Value>(await call(name, namedAsInSql(values)))
}

export async function mustRead<Value>(
  call: Call,
  name: string,
  values: Record<string, unknown>
): Promise<Value> {
  const outcome = await read<Value>(call, name, values)
  if (outcome.ok) return outcome.value
  throw new Error(`${name} could not be read: ${JSON.stringify(outcome)}`)
}

/** `elapsedS` is `p_elapsed_s` there. */
function namedAsInSql(values: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(values).map(([name, value]) => [
      `p_${name.replaceAll(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`)}`,
      value,
    ])
  )
}

function outcomeOf<Value>({ status, body }: Awaited<ReturnType<Call>>): Outcome<Value> {
  if (status >= 200 && status < 300) return { ok: true, value: body as Value }
  const { details } = (body ?? {}) as { details?: unknown }
  return {
    ok: false,
    fault: faultOf(status),
    ...(typeof details === 'string' && { code: details }),
  }
}

const faults: Record<number, FaultCode> = {
  0: 'offline',
  400: 'malformed',
  401: 'signed_out',
  403: 'not_allowed',
  413: 'too_large',
  429: 'busy',
  503: 'busy',
}

function faultOf(status: number): FaultCode {
  return faults[status] ?? 'unknown'
}
