/** One phone's picture of the day: the snapshot, then every event, folded as the app folds them. */

import { events } from '@/lib/data/answers'
import type { Event } from '@/lib/events/event'
import { reduce } from '@/lib/events/reduce'
import { stateOf } from '@/lib/events/snapshot'
import type { State } from '@/lib/events/state'
import { type Out, read } from '@/lib/util/shape'

import { mustRead, type Seat } from './referee'

export type Follower = {
  state: () => State
  /** What it heard, in order; a snapshot stands for all numbers up to its head. */
  heard: readonly Heard[]
  /** Hears everything up to now, once at a time. Throws without signal. */
  catchUp: () => Promise<void>
}

export type Heard = { event: Event } | { snapshot: number }

/** `each` is shown every state on the way. */
export async function follow(
  seat: Seat,
  each: (state: State) => void = () => {}
): Promise<Follower> {
  let state = await snapshotOf(seat)
  const heard: Heard[] = [{ snapshot: state.head }]
  let under: Promise<void> = Promise.resolve()

  async function catchUp(): Promise<void> {
    const told = await eventsAfter(seat, { epoch: state.epoch, n: state.head })
    if ('reset' in told) {
      await takeSnapshot()
      return
    }
    for (const event of told.events) {
      heard.push({ event })
      const after = reduce(state, event)
      if (after === 'fetch again') await takeSnapshot()
      else state = after
      each(state)
    }
    if (state.head < told.head) await catchUp()
  }

  async function takeSnapshot(): Promise<void> {
    state = await snapshotOf(seat)
    heard.push({ snapshot: state.head })
  }

  return {
    state: () => state,
    heard,
    catchUp: () => {
      under = under.catch(() => {}).then(catchUp)
      return under
    },
  }
}

export async function eventsAfter(
  seat: Seat,
  { epoch, n }: { epoch: string; n: number }
): Promise<Out<typeof events>> {
  const values = { ...whose(seat), p_epoch: epoch, p_n: n }
  const told = read(events, await mustRead(seat.call, 'events_after', values))
  if (!told) throw new Error('The events are not of the shape that this version knows.')
  return told.value
}

export async function snapshotOf(seat: Seat): Promise<State> {
  const state = stateOf(await mustRead(seat.call, 'snapshot', whose(seat)))
  if (!state) throw new Error('The snapshot is not of the shape that this version knows.')
  return state
}

function whose({ orchardId, personId }: Seat) {
  return { p_orchard: orchardId, p_person: personId }
}
