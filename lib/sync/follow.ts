/**
 * Follows the orchard: broadcasts are a courtesy, numbers are the truth. Whatever is out of
 * turn, silent or unsure ends in asking for everything after the last number.
 */

import type { Fault, Outcome } from '@/lib/events/answer'
import { type Event, isHeard } from '@/lib/events/event'
import { isLead, openShift } from '@/lib/events/look-ups'
import { reduce } from '@/lib/events/reduce'
import type { State } from '@/lib/events/state'

import { waitMs } from './backoff'
import { openChannel } from './channel'
import { heartbeatMs } from './limits'
import type { Clock, Heartbeat, Live, Random, Server } from './ports'
import { timerOf } from './timer'

export type Standing = 'asking' | 'reached' | 'no_signal' | 'not_admitted' | 'signed_out' | 'out'

export type FollowParts = {
  server: Server
  clock: Clock
  random: Random
  orchardId: string
  personId: string
  /** Everybody of this orchard for whom this login acts: it hears what is private to each. */
  isMine: (personId: string) => boolean
  /** From last time, to go on from. */
  start: State | null
  /** `events` are those that led here; none when it was fetched whole. */
  changed: (state: State, events: readonly Event[]) => void
  stood: (standing: Standing) => void
  heartbeat: (beat: Heartbeat, skewMs: number) => void
}

export type Follow = {
  /** Signal is back, the page is looked at again, an answer tells of a later number. */
  ask: () => void
  isOut: () => Promise<'out' | 'in' | 'unknown'>
  close: () => void
}

/** Nobody but the one concerned hears a quiet event, so everybody asks, but not in one moment. */
const quietWithinMs = 1_500
/** The first beat comes soon: it tells how far off this device's clock is. */
const firstBeatMs = 1_000
/** Somebody who waits to be let in looks this often. */
const notAdmittedMs = 5_000

export function follow(parts: FollowParts): Follow {
  const { server, clock, random, orchardId, personId } = parts
  const retry = timerOf(clock)
  const beat = timerOf(clock)
  const quiet = timerOf(clock)
  const channel = openChannel({
    server,
    clock,
    random,
    heard,
    ask: () => void catchUp(),
    isShift: () => state !== null && openShift(state) !== null,
  })
  let state = parts.start
  let topic = ''
  let wantsWhole = state === null
  let closed = false
  let catchingUp = false
  let again = false
  let tries = 0

  parts.stood('asking')
  if (state) tune(state)
  void catchUp()
  beat.in(firstBeatMs, sendBeat)

  return {
    ask: () => {
      tries = 0
      void catchUp()
    },
    isOut,
    close,
  }

  async function catchUp(): Promise<void> {
    again = true
    if (catchingUp) return
    catchingUp = true
    retry.off()
    while (again && !closed) {
      again = false
      const outcome = await step()
      if (closed) break
      if (outcome.ok) reached()
      else failed(outcome)
      // What was heard meanwhile is asked for with the next try.
      if (!outcome.ok) break
      if (outcome.value === 'behind') again = true
    }
    catchingUp = false
  }

  async function step(): Promise<Outcome<'done' | 'behind'>> {
    if (!state || wantsWhole) return fetchWhole()
    const told = await server.eventsAfter(orchardId, personId, state.epoch, state.head)
    if (!told.ok) return told
    if (closed) return { ok: true, value: 'done' }
    const headBefore = state.head
    wantsWhole = 'reset' in told.value || !take(told.value.events)
    if (wantsWhole || 'reset' in told.value) return { ok: true, value: 'behind' }
    const moved = state.head > headBefore
    return { ok: true, value: moved && state.head < told.value.head ? 'behind' : 'done' }
  }

  async function fetchWhole(): Promise<Outcome<'done'>> {
    const told = await server.snapshot(orchardId, personId)
    if (!told.ok) return told
    wantsWhole = false
    if (!closed) show(told.value, [])
    return { ok: true, value: 'done' }
  }

  /** Folds what comes next in turn. False: only the snapshot knows. */
  function take(events: readonly Event[]): boolean {
    if (!state) return false
    let next = state
    const folded: Event[] = []
    for (const event of events) {
      const after = reduce(next, event)
      if (after === 'fetch again') return false
      if (after !== next) folded.push(event)
      next = after
    }
    if (folded.length > 0) show(next, folded)
    return true
  }

  function show(next: State, events: readonly Event[]): void {
    state = next
    parts.changed(next, events)
    tune(next)
  }

  function tune({ channelEpoch }: State): void {
    const next = `orchard:${orchardId}:${channelEpoch}`
    if (next === topic || closed) return
    topic = next
    channel.tune(topic)
  }

  function heard(event: Live): void {
    if (!state || event.n <= state.head) return
    const isNext = !catchingUp && event.n === state.head + 1
    if (isNext && !(event.more && mayConcernMe(event, state))) {
      if (take([event])) {
        reached()
        return
      }
      wantsWhole = true
    }
    const onlyPerhaps = isNext && !isLead(state) && !isHeard(event)
    if (onlyPerhaps) quiet.in(random.share() * quietWithinMs, () => void catchUp())
    else void catchUp()
  }

  function mayConcernMe(event: Live, known: State): boolean {
    if (isLead(known) || !isHeard(event)) return true
    return [event.personId, ...(event.concerns ?? [])].some(parts.isMine)
  }

  async function sendBeat(): Promise<void> {
    beat.in(heartbeatMs, sendBeat)
    const outcome = await heartbeat()
    if (closed) return
    if (!outcome.ok) failed(outcome)
    else {
      reached()
      const { head, epoch } = outcome.value
      if (!state || head > state.head || epoch !== state.epoch) void catchUp()
    }
  }

  async function heartbeat(): Promise<Outcome<Heartbeat>> {
    const sentAt = clock.now()
    const outcome = await server.heartbeat(orchardId, personId, state?.head ?? 0)
    if (outcome.ok && !closed) {
      const middle = (sentAt + clock.now()) / 2
      parts.heartbeat(outcome.value, Date.parse(outcome.value.now) - middle)
    }
    return outcome
  }

  async function isOut(): Promise<'out' | 'in' | 'unknown'> {
    const outcome = await heartbeat()
    if (outcome.ok) return 'in'
    if (!closed) failed(outcome)
    return standingOf(outcome) === 'out' ? 'out' : 'unknown'
  }

  function reached(): void {
    tries = 0
    retry.off()
    parts.stood('reached')
  }

  function failed(fault: Fault): void {
    const standing = standingOf(fault)
    parts.stood(standing)
    if (standing === 'out' || standing === 'signed_out') close()
    else {
      const pauseMs = standing === 'not_admitted' ? notAdmittedMs : waitMs(tries++, random.share())
      retry.in(pauseMs, () => void catchUp())
    }
  }

  function close(): void {
    closed = true
    channel.close()
    for (const timer of [retry, beat, quiet]) timer.off()
  }
}

function standingOf({ fault, code }: Fault): Standing {
  if (fault === 'signed_out') return 'signed_out'
  if (fault === 'not_allowed') return code === 'not_admitted' ? 'not_admitted' : 'out'
  return 'no_signal'
}
