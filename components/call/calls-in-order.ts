/** The calls of a shift as the list has them: what is known at once, and what was read with its words. */

import type { State } from '@/lib/events/state'
import { type CallRead, isGrave } from '@/lib/hooks'

/** What is open is as the state says, also before it is read again and without signal. */
export function withWords(open: State['calls'], read: readonly CallRead[]): CallRead[] {
  const words = new Map(read.map((call) => [call.call, call]))
  const fromState = Object.entries(open).map(([id, call]) => ({
    note: null,
    outcome: null,
    hasIncident: false,
    ...words.get(id),
    ...call,
    call: id,
    endedBy: null,
    endedAt: null,
  }))
  return [...fromState, ...read.filter(({ call, endedAt }) => endedAt !== null && !open[call])]
}

/** Open ones grave and old first, ended ones the newest first. */
export function openFirst(calls: readonly CallRead[]): { open: CallRead[]; ended: CallRead[] } {
  const byTime = calls.toSorted((a, b) => (a.calledAt < b.calledAt ? -1 : 1))
  return {
    open: byTime
      .filter(({ endedAt }) => endedAt === null)
      .toSorted((a, b) => Number(isGrave(b.kind)) - Number(isGrave(a.kind))),
    ended: byTime.filter(({ endedAt }) => endedAt !== null).reverse(),
  }
}
