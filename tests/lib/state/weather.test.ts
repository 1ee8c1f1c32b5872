/** Whom the weather tells to come out, as their phone and the lead's see it; folds of the same events. */

import { describe, expect, test } from 'vitest'

import { noWeather } from '@/lib/domain/safety/weather'
import { fold } from '@/lib/events/reduce'
import type { State } from '@/lib/events/state'
import { claimsPutOff, newlyPutOff } from '@/lib/events/weather'
import { lightCall, stillInTheDark } from '@/lib/state/light'
import type { View } from '@/lib/state/view'
import { orchardPosition, stillToLeave, toLeaveNow } from '@/lib/state/weather'
import { longitudeAt } from '../../support/sun-place'
import { ann, aState, bo, idOf, lead } from '../events/a-state'

const claim = idOf('claim')
const told = { claim, tree: 1, why: 'thunder' as const, toldAt: '2026-11-30T10:00:00.000Z' }

function seenBy(personId: string, change: Partial<State>): View {
  return { state: aState(change), me: { personId } } as unknown as View
}

const held: State['claims'] = {
  [claim]: {
    tree: 1,
    row: null,
    purpose: 'work',
    kind: 'prune',
    ladder: false,
    buddyId: null,
    openedAt: '2026-11-30T09:00:00.000Z',
    people: { [ann]: 'holder', [bo]: 'helper' },
  },
}

describe('who is told to come out', () => {
  test('is asked until they answer, and the lead sees who has not', () => {
    const change = { claims: held, toLeave: { [ann]: told } }

    expect(toLeaveNow(seenBy(ann, change))).toEqual(told)
    expect(toLeaveNow(seenBy(bo, change))).toBeNull()
    expect(stillToLeave(seenBy(lead, change))).toEqual([{ ...told, personId: ann }])
  })

  test('has left when the claim is over, or when they are no longer in it', () => {
    const alone = { [claim]: { ...held[claim], people: { [bo]: 'holder' } } } as State['claims']

    expect(toLeaveNow(seenBy(ann, { claims: {}, toLeave: { [ann]: told } }))).toBeNull()
    expect(stillToLeave(seenBy(lead, { claims: alone, toLeave: { [ann]: told } }))).toEqual([])
  })

  test('is everybody in a claim when there is thunder, and nobody twice while it lasts', () => {
    const now = '2026-11-30T10:00:00.000Z'
    const ground = { trees: new Map(), blocks: new Map() }
    const calm = aState({ claims: held })
    const loud = { ...calm, weather: { ...noWeather, thunderAt: now } }

    expect(Object.keys(newlyPutOff(calm, loud, { ground, now })).sort()).toEqual([ann, bo].sort())
    expect(newlyPutOff(loud, loud, { ground, now })).toEqual({})
    expect(claimsPutOff(loud, { ground, now: '2026-11-30T10:30:00.000Z' })).toEqual({})
  })

  test('an answer takes them off the list, and a newer event asks again', () => {
    const happening = { at: told.toldAt, commandId: idOf('c'), personId: lead, byPersonId: lead }
    const asked = aState({ claims: held, toLeave: { [ann]: told } })
    const answered = fold(asked, {
      ...happening,
      kind: 'weather_answered',
      body: { person: ann },
    }) as State
    const { toldAt: _, ...again } = told
    const later = fold(answered, {
      ...happening,
      at: '2026-11-30T11:00:00.000Z',
      kind: 'weather_written',
      body: { thunder: true, measuredAt: '2026-11-30T11:00:00.000Z', toLeave: { [ann]: again } },
    }) as State

    expect(answered.toLeave).toEqual({})
    expect(later.toLeave[ann]?.toldAt).toBe('2026-11-30T11:00:00.000Z')
    expect(later.weather.thunderAt).toBe('2026-11-30T11:00:00.000Z')
  })
})

test('the orchard is where a block or a tree is; without either nobody knows', () => {
  const at = { lat: 48, lon: 2 }
  const trees = new Map([[1, { position: at }]])
  const view = (ground: object) => ({ ground }) as unknown as View

  expect(orchardPosition(view({ blocks: new Map([[1, { firstTree: at }]]), trees }))).toEqual(at)
  expect(orchardPosition(view({ blocks: new Map(), trees }))).toEqual(at)
  expect(orchardPosition(view({ blocks: new Map(), trees: new Map() }))).toBeNull()
})

describe('the light', () => {
  const open = { s: { state: 'open', off: {} } } as unknown as State['shifts']
  /** On the equator, in minutes before the sun sets there. */
  const minutesLeft = (minutes: number, change: Partial<State> = {}, person = ann) => {
    const lon = longitudeAt('sunset in 20 minutes', Date.now())
    const at = new Date(Date.now() + (20 - minutes) * 60_000)
    const blocks = new Map([[1, { firstTree: { lat: 0, lon } }]])
    const view = {
      ...seenBy(person, { shifts: open, claims: held, ...change }),
      ground: { trees: new Map(), blocks },
    }
    return {
      call: lightCall(view as unknown as View, at),
      still: stillInTheDark(view as unknown as View, at),
    }
  }
  const withLadder = { claims: { [claim]: { ...held[claim], ladder: true } } } as Partial<State>
  const lamps = {
    exceptions: { dark: { lifts: ['dark'], because: 'lamps', madeBy: lead, madeAt: told.toldAt } },
  }

  test('calls down from ladders, to the last cut, and in; who is at no tree is not called', () => {
    expect([40, 25, 14, -1].map((left) => minutesLeft(left, withLadder).call)).toEqual([
      null,
      'off_ladder',
      'last_cut',
      'come_in',
    ])
    expect([40, 25, 14, -1].map((left) => minutesLeft(left).call)).toEqual([
      null,
      null,
      'last_cut',
      'come_in',
    ])
    expect(minutesLeft(-1, { claims: {} }).call).toBeNull()
  })

  test('leaves people be by lamps, but for ladders; a lead sees who is still in the dark', () => {
    expect(minutesLeft(-1, lamps)).toEqual({ call: null, still: [] })
    expect(minutesLeft(-1, { ...lamps, ...withLadder }).call).toBe('off_ladder')
    expect(minutesLeft(-1).still).toEqual([
      { personId: ann, tree: 1 },
      { personId: bo, tree: 1 },
    ])
  })
})
