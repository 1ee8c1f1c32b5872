import { expect, test } from 'vitest'

import { ringsOf } from '@/components/alarm/rings'
import type { Call, State } from '@/lib/events/state'
import type { View } from '@/lib/hooks'
import { type Hour, longitudeAt } from '../../support/sun-place'

const calledAt = '2027-02-27T10:00:00.000Z'
const after = (seconds: number) => new Date(Date.parse(calledAt) + seconds * 1000)
const call: Call = {
  kind: 'question',
  tree: null,
  subject: null,
  calledBy: 'ann',
  calledAt,
  answeredBy: null,
  answeredAt: null,
}

function seen(role: 'lead' | 'volunteer', change: Partial<State>): View {
  const state = {
    me: { personId: 'me', role },
    people: { me: { role }, ann: { role: 'volunteer' } },
    attendance: { me: { state: 'here', since: '2027-02-27T08:00:00.000Z' } },
    calls: {},
    toLeave: {},
    stops: {},
    claims: {},
    shifts: {},
    briefed: {},
    ...change,
  }
  const ground = { trees: new Map(), blocks: new Map() }
  return { state, ground, me: { personId: 'me' } } as unknown as View
}

/** Each reason to ring within so many seconds, asked every second. */
function keysWithin(view: View, seconds: number): string[] {
  const keys = Array.from({ length: seconds }, (_, second) => ringsOf(view, after(second)))
  return [...new Set(keys.flat().map(({ key }) => key))]
}

test('a question rings once, and once more when a minute has passed', () => {
  const view = seen('lead', { calls: { c: call } })
  expect(keysWithin(view, 300)).toEqual(['call|c|0', 'call|c|1'])
})

test('what is grave rings each minute until somebody answers', () => {
  const injury = { ...call, kind: 'injury' as const }
  expect(keysWithin(seen('lead', { calls: { c: injury } }), 300)).toHaveLength(5)
  const answered = { ...injury, answeredBy: 'other', answeredAt: calledAt }
  expect(keysWithin(seen('lead', { calls: { c: answered } }), 300)).toEqual([])
})

test('a volunteer’s phone rings for a stop that wants an answer, not for calls', () => {
  const stop = { block: null, calledBy: 'ann', calledAt, resumed: false, answers: {}, seenBy: {} }
  expect(keysWithin(seen('volunteer', { calls: { c: call } }), 300)).toEqual([])
  const stopped = seen('volunteer', { stops: { s: stop } })
  expect(ringsOf(stopped, after(1))).toEqual([{ key: 'stop|s', tone: 'stop' }])
  const mine = seen('volunteer', { stops: { s: { ...stop, answers: { me: 'stopped' } } } })
  expect(ringsOf(mine, after(1))).toEqual([])
})

test('whoever is at a tree is rung once for a briefing that asks to come down, and nobody else', () => {
  const shifts = { s: { state: 'open', briefingVersion: 2, comeDownVersion: 2 } }
  const briefed = { me: { givenVersion: 1, signedVersion: 1 } }
  const claims = { c: { tree: 3, people: { me: 'helper' } } }
  const at = (some: object) => keysWithin(seen('volunteer', some as Partial<State>), 120)

  expect(at({ shifts, briefed, claims })).toEqual(['come down|s|2'])
  expect(at({ shifts, briefed })).toEqual([])
  expect(at({ shifts, briefed: { me: { givenVersion: 2, signedVersion: 2 } }, claims })).toEqual([])
})

test('whoever is at a tree is rung once when the light goes, and nobody else', () => {
  const claims = { c: { tree: 3, people: { me: 'holder' } } }
  const shifts = { s: { state: 'open', off: {}, briefingVersion: 1, comeDownVersion: 0 } }
  const briefed = { me: { givenVersion: 1, signedVersion: 1 } }
  const exceptions = {}
  const orchard = { houseRules: {} }
  const day = { ...seen('volunteer', { claims, shifts, briefed, exceptions, orchard } as never) }
  const at = (hour: Hour, some: object = {}) => {
    const firstTree = { lat: 0, lon: longitudeAt(hour, Date.now()) }
    const ground = { trees: new Map(), blocks: new Map([[1, { firstTree }]]) }
    const view = { ...day, ground, state: { ...day.state, ...some } } as unknown as View
    return ringsOf(view, new Date()).map(({ key }) => key)
  }

  expect(at('midnight')).toEqual(['light|come_in|s'])
  expect(at('noon')).toEqual([])
  expect(at('midnight', { claims: {} })).toEqual([])
  const lamps = { lifts: ['dark'], because: 'lamps' }
  expect(at('midnight', { exceptions: { dark: lamps } })).toEqual([])
})
