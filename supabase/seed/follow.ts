/** One phone's picture of the day: the snapshot, then every event, folded as the app folds them. */

import type { Event } from '../../lib/events/event'
import { reduce } from '../../lib/events/reduce'
import { stateOf } from '../../lib/events/snapshot'
import type { State } from '../../lib/events/state'
import { mustRead, type Seat } from './referee'

export type Follower = {
  state: () => State
  /** Every number heard since the snapshot. */
  numbers: readonly number[]
  /** Hears everything up to now. Throws without signal. */
  catchUp: () => Promise<void>
}

export async function follow(seat: Seat): Promise<Follower> {
  let state = await snapshotOf(seat)
  const numbers: number[] = []

  async function catchUp(): Promise<void> {
    const { epoch, head: n } = state
    const told = await mustRead<Told>(seat.call, 'events_after', { ...whose(seat), epoch, n })
    if (!('events' in told)) {
      state = await snapshotOf(seat)
      return
    }
    for (const event of told.events) {
      numbers.push(event.n)
      const after = reduce(state, event)
      state = after === 'fetch again' ? await snapshotOf(seat) : after
    }
    if (state.head < told.head) await catchUp()
  }

  return { state: () => state, numbers, catchUp }
}

type Told = { events: Event[]; head: number } | { reset: true }

export async function snapshotOf(seat: Seat): Promise<State> {
  const state = stateOf(await mustRead<unknown>(seat.call, 'snapshot', whose(seat)))
  if (!state) throw new Error('The snapshot is not of the shape that this version knows.')
  return state
}

function whose({ orchardId, personId }: Seat) {
  return { orchard: orchardId, person: personId }
}
