/** One person's phone: the state it folded, and whom it serves besides. */

import { expect } from 'vitest'

import type { Event } from '@/lib/events/event'
import { reduce } from '@/lib/events/reduce'
import { stateOf } from '@/lib/events/snapshot'
import type { State } from '@/lib/events/state'
import type { Person } from '../support/orchard'

export type Phone = {
  name: string
  person: Person
  /** Others that this login acts for. */
  serves: string[]
  state: State
  epoch: string
}

export type Heard = 'nothing' | 'folded' | 'fetched again' | 'put out'

/** (a), for one phone: what it heard, folded, is what it would be told anew. */
export async function catchUp(phone: Phone): Promise<Heard> {
  const told = (await phone.person.read('events_after', {
    person: phone.person.id,
    epoch: phone.epoch,
    n: phone.state.head,
  })) as { events: Event[] } | { details: string }
  if ('details' in told) {
    expect(told.details).toBe('not_allowed')
    return 'put out'
  }

  let state: State | 'fetch again' = phone.state
  for (const event of told.events) {
    state = reduce(state, event)
    if (state === 'fetch again') break
  }
  const anew = await snapshotOf(phone.person)
  phone.state = anew
  if (state === 'fetch again') return 'fetched again'
  expect(state, `folded by ${phone.name}`).toEqual(anew)
  return told.events.length > 0 ? 'folded' : 'nothing'
}

export async function snapshotOf(person: Person): Promise<State> {
  const told = await person.read('snapshot', { person: person.id })
  const state = stateOf(told)
  if (!state) throw new Error(`Not a snapshot: ${JSON.stringify(told)}`)
  return state
}
