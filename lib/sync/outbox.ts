/** What this device has not sent yet, sent in order of lane until each command has its answer. */

import { type Answer, isRefused } from '@/lib/events/answer'
import { type Command, type Lane, laneOf, lanes } from '@/lib/events/commands'
import type { Instant } from '@/lib/events/state'

import { waitMs } from './backoff'
import { openKeptList } from './kept-list'
import { answerLimitMs, keepSentMs, photoLimitMs } from './limits'
import type { Bell, Clock, Kept, Locks, Random, Server, Storage } from './ports'

export type OutboxParts = {
  server: Server
  storage: Storage
  clock: Clock
  random: Random
  locks: Locks
  bell: Bell
  /** `ownerKey`: nothing of another login, person or orchard is ever touched. */
  owner: string
  changed: (items: readonly Kept[]) => void
  /** After "not allowed": is it this command, or is this person out of the orchard? */
  isOut: () => Promise<'out' | 'in' | 'unknown'>
  signedOut: () => void
}

export type Outbox = {
  /** Resolves when it is on disk. */
  add: (command: Command, at: Instant) => Promise<void>
  /** For a later restore: what was asked and accepted is part of what this device sent. */
  remember: (command: Command, at: Instant, answer: Answer) => Promise<void>
  dismiss: (seq: number) => Promise<void>
  sendAgain: (seq: number) => Promise<void>
  /** The backend was restored: send again what it may have forgotten. */
  onEpoch: (epoch: string) => Promise<void>
  /** Resolves when all but photos is sent. */
  drained: () => Promise<void>
  /** Signal is back, or somebody is in again: try now. */
  wake: () => void
  close: () => void
}

/** A fault of the server's own is tried so often; then the person hears of it, and the rest goes on. */
const mostTries = 6

const unsent = { state: 'unsent', answer: null, fault: null, answeredAt: null } as const

export function openOutbox(parts: OutboxParts): Outbox {
  const { server, storage, clock, random, locks, owner } = parts
  const closing = new AbortController()
  const busy = new Set<Lane>()
  const triesOf = new Map<number, number>()
  let leading = false
  let paused = false
  let tries = 0
  let stopWaiting: (() => void) | null = null
  let lastUrgent = 0
  const drainWaiters: (() => void)[] = []

  const list = openKeptList({
    ...parts,
    changed: (items) => {
      parts.changed(items)
      tellDrained()
      hurry()
      pump()
    },
  })
  locks.lead(
    `rowcall|${owner}`,
    (over) => {
      leading = true
      over.addEventListener('abort', () => {
        leading = false
      })
      void list.reload().then(forgetOld)
    },
    closing.signal
  )
  void list.reload()

  return {
    add: (command, at) => list.add({ owner, command, at, ...unsent }),
    remember: (command, at, answer) => {
      const answeredAt = clock.now()
      return list.add({ owner, command, at, state: 'sent', answer, fault: null, answeredAt })
    },
    dismiss: (seq) => list.remove([seq]),
    sendAgain,
    onEpoch,
    drained: () =>
      new Promise((resolve) => {
        drainWaiters.push(resolve)
        tellDrained()
      }),
    wake: () => {
      paused = false
      tries = 0
      stopWaiting?.()
      stopWaiting = null
      pump()
    },
    close: () => {
      closing.abort()
      stopWaiting?.()
      list.close()
    },
  }

  /** Whoever calls a stop or flags a hazard does not wait for the next try, on whichever page. */
  function hurry(): void {
    const urgent = list
      .items()
      .findLast(({ state, command }) => state === 'unsent' && laneOf(command.name) === 'urgent')
    if (!urgent || urgent.seq <= lastUrgent) return
    lastUrgent = urgent.seq
    stopWaiting?.()
    stopWaiting = null
  }

  /** Higher lanes first; a lane under way does not keep a higher one from starting. */
  function pump(): void {
    if (!leading || paused || stopWaiting || closing.signal.aborted) return
    for (const lane of lanes) {
      const next = list
        .items()
        .find((kept) => kept.state === 'unsent' && laneOf(kept.command.name) === lane)
      if (!next) continue
      const first = doneBefore(next) ?? next
      if (!busy.has(laneOf(first.command.name))) void sendFrom(laneOf(first.command.name), first)
      return
    }
  }

  /** What was done at a tree before something was flagged there goes first, since the flag ends the claim; not what the server fails on. */
  function doneBefore({ command, seq }: Kept): Kept | undefined {
    if (command.name !== 'flag_tree') return undefined
    return list
      .items()
      .find(
        (kept) =>
          kept.seq < seq &&
          kept.state === 'unsent' &&
          laneOf(kept.command.name) === 'work' &&
          'tree' in kept.command.args &&
          kept.command.args.tree === command.args.tree &&
          !triesOf.has(kept.seq)
      )
  }

  async function sendFrom(lane: Lane, kept: Kept): Promise<void> {
    busy.add(lane)
    const outcome = await server.send(kept.command, lane === 'photo' ? photoLimitMs : answerLimitMs)
    if (!closing.signal.aborted) {
      if (outcome.ok) await settle(kept, { answer: outcome.value })
      else await handle(kept, outcome.fault, outcome.code)
    }
    busy.delete(lane)
    pump()
  }

  async function handle(kept: Kept, fault: string, code = fault): Promise<void> {
    switch (fault) {
      case 'signed_out':
        paused = true
        return parts.signedOut()
      case 'not_allowed': {
        const standing = await parts.isOut()
        if (standing === 'in') return settle(kept, { fault: code })
        if (standing === 'unknown') return waitAWhile()
        paused = true
        return
      }
      case 'malformed':
      case 'too_large':
        return settle(kept, { fault: code })
      case 'unknown': {
        const before = triesOf.get(kept.seq) ?? 0
        triesOf.set(kept.seq, before + 1)
        return before + 1 < mostTries ? waitAWhile() : settle(kept, { fault: code })
      }
      default:
        return waitAWhile()
    }
  }

  function waitAWhile(): void {
    stopWaiting ??= clock.after(waitMs(tries, random.share()), () => {
      stopWaiting = null
      pump()
    })
    tries++
  }

  async function settle(kept: Kept, result: { answer: Answer } | { fault: string }): Promise<void> {
    tries = 0
    triesOf.delete(kept.seq)
    const answer = 'answer' in result ? result.answer : null
    await list.change({
      ...kept,
      state: answer && !isRefused(answer) ? 'sent' : 'refused',
      answer,
      fault: 'fault' in result ? result.fault : null,
      answeredAt: clock.now(),
    })
  }

  /** A stored refusal would come again under the same id, so a refused wish is made anew. */
  async function sendAgain(seq: number): Promise<void> {
    const kept = list.items().find((item) => item.seq === seq && item.state === 'refused')
    if (!kept) return
    const id = kept.answer ? random.id() : kept.command.id
    const { at } = kept
    await list.renew(kept, { owner, command: { ...kept.command, id }, at, ...unsent })
  }

  async function onEpoch(epoch: string): Promise<void> {
    const key = `epoch|${owner}`
    const known = await storage.read(key)
    if (known === epoch || !leading) return
    if (known !== undefined) {
      const lately = clock.now() - keepSentMs
      for (const kept of list.items()) {
        if (kept.state !== 'sent' || (kept.answeredAt ?? 0) < lately) continue
        await list.change({ ...kept, ...unsent })
      }
    }
    await storage.write(key, epoch)
    pump()
  }

  async function forgetOld(): Promise<void> {
    const lately = clock.now() - keepSentMs
    const old = list
      .items()
      .filter((kept) => kept.state === 'sent' && (kept.answeredAt ?? 0) < lately)
    if (old.length > 0) await list.remove(old.map(({ seq }) => seq))
  }

  function tellDrained(): void {
    const waits = list
      .items()
      .some(({ state, command }) => state === 'unsent' && laneOf(command.name) !== 'photo')
    if (waits) return
    for (const resolve of drainWaiters.splice(0)) resolve()
  }
}
