/** One phone's picture of the day: the snapshot, then every event, folded as the app folds them. */

import { events } from '@/lib/data/answers'
import { reduce } from '@/lib/events/reduce'
import { stateOf } from '@/lib/events/snapshot'
import type { State } from '@/lib/events/state'
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
    const since = { p_epoch: state.epoch, p_n: state.head }
    const told = events.parse(
      await mustRead(seat.call, 'events_after', { ...whose(seat), ...since })
    )
    if ('reset' in told) {
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

export async function snapshotOf(seat: Seat): Promise<State> {
  const state = stateOf(await mustRead(seat.call, 'snapshot', whose(seat)))
  if (!state) throw new Error('The snapshot is not of the shape that this version knows.')
  return state
}

function whose({ orchardId, personId }: Seat) {
  return { p_orchard: orchardId, p_person: personId }
}
