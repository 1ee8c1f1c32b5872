/** What the loops need from outside, handed in, so that a test can play a whole day in a moment. */

import type { Answer, Outcome } from '@/lib/events/answer'
import type { Command } from '@/lib/events/commands'
import type { Event } from '@/lib/events/event'
import type { Instant, State } from '@/lib/events/state'

/** The referee, asked as one login. */
export type Server = {
  send: (command: Command, limitMs: number) => Promise<Outcome<Answer>>
  snapshot: (orchardId: string, personId: string) => Promise<Outcome<State>>
  eventsAfter: (
    orchardId: string,
    personId: string,
    epoch: string,
    n: number
  ) => Promise<Outcome<Told>>
  heartbeat: (orchardId: string, personId: string, head: number) => Promise<Outcome<Heartbeat>>
  /** Opens a channel. What it returns closes it. */
  listen: (topic: string, ear: Ear) => () => void
}

export type Told = { reset: true } | { events: Event[]; head: number }

export type Heartbeat = {
  head: number
  epoch: string
  channelEpoch: number
  minClient: number
  now: Instant
}

/** `more`: whoever may know more than the broadcast says should ask; `concerns` are some of them. */
export type Live = Event & { more: boolean; concerns?: readonly string[] | undefined }

export type Ear = {
  heard: (event: Live) => void
  /** Any sign of life. */
  frame: () => void
  joined: () => void
  /** Closed, refused or in error: this channel will not come back. */
  lost: () => void
}

export type Clock = {
  /** Milliseconds since 1970, as the device counts them. */
  now: () => number
  /** Runs once; what it returns calls it off. */
  after: (ms: number, run: () => void) => () => void
}

export type Random = {
  /** From 0 up to 1. */
  share: () => number
  id: () => string
}

/** One sender per browser: of all pages that ask for `name`, one leads at a time. */
export type Locks = {
  lead: (name: string, whileLeading: (over: AbortSignal) => void, until: AbortSignal) => void
}

/** Tells the other pages of this browser that the outbox changed. */
export type Bell = {
  ring: () => void
  onRing: (run: () => void) => () => void
  close: () => void
}

/** What a command in the outbox has come to. `seq` is the order in which they were made. */
export type Kept = {
  seq: number
  owner: string
  command: Command
  /** The device's time plus measured skew. */
  at: Instant
  state: 'unsent' | 'sent' | 'refused'
  /** With `refused` a refusal, or null when it never got to be an answer. */
  answer: Answer | null
  /** Why it could not be sent at all. */
  fault: string | null
  answeredAt: number | null
}

export type Storage = {
  /** Resolves when it is on disk. */
  add: (kept: Omit<Kept, 'seq'>) => Promise<Kept>
  /** In the order in which they were made. */
  all: (owner: string) => Promise<Kept[]>
  /** Only if it is still there: what somebody put away stays away. */
  change: (kept: Kept) => Promise<void>
  remove: (seqs: readonly number[]) => Promise<void>
  read: (key: string) => Promise<unknown>
  write: (key: string, value: unknown) => Promise<void>
  drop: (key: string) => Promise<void>
  /** Takes or renews a lease, in one transaction. */
  lease: (name: string, holder: string, nowMs: number, lengthMs: number) => Promise<boolean>
}
