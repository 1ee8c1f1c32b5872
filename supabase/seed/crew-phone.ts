/** A simulated phone: it follows the day, loses signal, keeps what it could not send and sends it later. */

import { randomUUID } from 'node:crypto'

import type { Answer, Fault, Outcome } from '@/lib/events/answer'
import type { ArgsOf, CommandName } from '@/lib/events/commands'
import type { State } from '@/lib/events/state'

import { type Follower, follow } from './follow'
import type { PublicClient } from './public-client'
import { type Call, type Seat, send } from './referee'

/** What was sent and answered, as the phone remembers it. */
export type Sent = {
  id: string
  again: () => Promise<Outcome<Answer>>
  name: string
  answer: Answer
}

export type CrewPhone = {
  name: string
  seat: Seat
  state: () => State
  follower: Follower
  sent: readonly Sent[]
  faults: readonly (Fault & { name: string })[]
  unsent: () => number
  hasSignal: () => boolean
  loseSignal: () => void
  /** Sends what was kept, then hears what happened. */
  findSignal: () => Promise<void>
  hear: () => Promise<void>
  /** Asked once, and dropped when no answer comes: null. */
  ask: <Name extends CommandName>(name: Name, args: ArgsOf<Name>) => Promise<Answer | null>
  /** Kept until there is an answer, however often that takes. */
  keep: <Name extends CommandName>(name: Name, args: ArgsOf<Name>) => Promise<void>
  /** The next answer gets lost on its way: the referee has done it, and the phone does not know. */
  loseNextAnswer: () => void
  close: () => Promise<void>
}

/** Broadcasts come in bursts; one question answers all of them. */
const bellMs = 150

export async function openCrewPhone(
  name: string,
  client: PublicClient,
  whose: { orchardId: string; personId: string },
  each?: (state: State) => void
): Promise<CrewPhone> {
  let signal = true
  let losesAnswer = false
  const call: Call = async (asked) => {
    if (!signal) return { ok: false, fault: 'offline' }
    const outcome = await client.call(asked)
    const isLost = losesAnswer
    losesAnswer = false
    return isLost || !signal ? { ok: false, fault: 'offline' } : outcome
  }
  const seat: Seat = { ...whose, call }
  const follower = await follow(seat, each)
  const sent: Sent[] = []
  const faults: (Fault & { name: string })[] = []
  const waiting: { id: string; name: string; again: () => Promise<Outcome<Answer>> }[] = []
  let bell: NodeJS.Timeout | null = null
  let hangUp = listen()

  function listen(): () => void {
    const topic = `orchard:${whose.orchardId}:${follower.state().channelEpoch}`
    return client.listen(topic, { heard: ring, frame: () => {}, joined: ring, lost: () => {} })
  }

  function ring(): void {
    bell ??= setTimeout(() => {
      bell = null
      void hear()
    }, bellMs)
  }

  async function hear(): Promise<void> {
    const before = follower.state().channelEpoch
    await follower.catchUp().catch(() => {})
    if (signal && follower.state().channelEpoch !== before) {
      hangUp()
      hangUp = listen()
    }
  }

  function command<Name extends CommandName>(commandName: Name, args: ArgsOf<Name>) {
    const id = randomUUID()
    return { id, name: commandName, again: () => send(seat, commandName, args, id) }
  }

  async function flush(): Promise<void> {
    for (let next = waiting[0]; next; next = waiting[0]) {
      const outcome = await next.again()
      if (!outcome.ok && (outcome.fault === 'offline' || outcome.fault === 'busy')) return
      waiting.shift()
      if (outcome.ok) sent.push({ ...next, answer: outcome.value })
      else faults.push({ ...outcome, name: next.name })
    }
  }

  return {
    name,
    seat,
    follower,
    sent,
    faults,
    hear,
    state: follower.state,
    unsent: () => waiting.length,
    hasSignal: () => signal,
    loseSignal: () => {
      signal = false
      hangUp()
    },
    findSignal: async () => {
      signal = true
      hangUp = listen()
      await flush()
      await hear()
    },
    ask: async (commandName, args) => {
      const asked = command(commandName, args)
      const outcome = await asked.again()
      if (outcome.ok) sent.push({ ...asked, answer: outcome.value })
      else if (outcome.fault !== 'offline') faults.push({ ...outcome, name: commandName })
      await hear()
      return outcome.ok ? outcome.value : null
    },
    keep: async (commandName, args) => {
      waiting.push(command(commandName, args))
      await flush()
      await hear()
    },
    loseNextAnswer: () => {
      losesAnswer = true
    },
    close: async () => {
      if (bell) clearTimeout(bell)
      hangUp()
      await client.close()
    },
  }
}
