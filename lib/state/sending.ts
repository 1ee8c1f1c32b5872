/** Takes what a person wants: keeps it, asks for it, or says at once why not. */

import {
  type ArgsOf,
  type Command,
  type CommandName,
  commandOf,
  mayWait,
} from '@/lib/events/commands'
import { predict } from '@/lib/events/predict'
import type { Instant } from '@/lib/events/state'
import { ask } from '@/lib/sync/ask'
import type { Outbox } from '@/lib/sync/outbox'
import type { Clock, Random, Server } from '@/lib/sync/ports'

import { type Sent, sentOf } from './sent'
import type { View } from './view'

/** `id`: of a command whose answer was lost, to be asked for again. */
export type SendOptions = { personId?: string | undefined; id?: string | undefined }
export type Send = <Name extends CommandName>(
  name: Name,
  args: ArgsOf<Name>,
  options?: SendOptions
) => Promise<Sent>

type SendingParts = {
  server: Server
  clock: Clock
  random: Random
  outbox: Outbox
  orchardId: string
  personId: string
  view: () => Pick<View, 'state' | 'signal' | 'ground'>
  now: () => Instant
  /** It is on disk. */
  kept: (command: Command) => Promise<void>
  asking: (name: CommandName, isAsked: boolean) => void
  accepted: () => void
}

export function sender(parts: SendingParts): Send {
  const { outbox, random, orchardId } = parts

  return async (name, args, { personId = parts.personId, id = random.id() } = {}) => {
    let command: Command
    try {
      // One of the commands, whichever it is.
      command = commandOf(name, args, { id, orchardId, personId }) as Command
    } catch {
      return { state: 'failed', id, fault: 'malformed', code: null }
    }
    return mayWait(name) ? keep(command) : askFor(command)
  }

  async function keep(command: Command): Promise<Sent> {
    const { id } = command
    const { state, signal, ground } = parts.view()
    const at = parts.now()
    const prediction = state ? predict(state, command, { now: at, ground }) : 'asking'
    const isRefusedHere = prediction !== 'asking' && 'refused' in prediction
    // Out of touch the phone may be wrong about the day, and what was done is not to be lost.
    if (isRefusedHere && signal === 'reached') {
      return { state: 'refused', id, refused: prediction.refused, next: null }
    }
    try {
      await outbox.add(command, at)
    } catch {
      return { state: 'failed', id, fault: 'unknown', code: 'not_kept' }
    }
    await parts.kept(command)
    return { state: 'kept', id }
  }

  async function askFor(command: Command): Promise<Sent> {
    const at = parts.now()
    parts.asking(command.name, true)
    // Somebody who was put out can send nothing else any more.
    const waits = command.name !== 'hand_in'
    const outcome = await ask({ ...parts, ...(waits && { sentBefore: outbox.drained }) }, command)
    const sent = sentOf(command.id, outcome)
    if (sent.state === 'accepted') {
      await outbox.remember(command, at, sent.answer).catch(() => {})
      parts.accepted()
    }
    parts.asking(command.name, false)
    return sent
  }
}
