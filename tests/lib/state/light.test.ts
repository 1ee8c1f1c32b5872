import { describe, expect, test } from 'vitest'

import type { Tree } from '@/lib/domain/orchard/types'
import { dayLightAt } from '@/lib/domain/safety/sun'
import { isTooDark, laddersLackLight } from '@/lib/events/dark'
import type { State } from '@/lib/events/state'
import { darknessMatters, lightCall, stillInTheDark } from '@/lib/state/light'
import { aTree } from '../domain/an-orchard'
import { aClaim, ann, aState, bo, later, lead } from '../events/a-state'

const position = { lat: 40.4, lon: -3.7 }

function groundAt(where: Tree['position']) {
  const tree = aTree({ no: 1, sizeClass: null, position: where })
  return { trees: new Map([[1, tree]]), blocks: new Map() }
}

const ground = groundAt(position)
const { sun } = dayLightAt(position, Date.parse('2027-01-16T12:00:00.000Z'))
if (sun.state !== 'rises') throw new Error('The sun rises in Madrid.')
const { from: sunrise, to: sunset } = sun.times
const minutesFrom = (ms: number, minutes: number) => new Date(ms + minutes * 60_000)

const me = {
  orchardId: '',
  orchardName: '',
  personId: ann,
  personName: '',
  role: 'volunteer',
  language: 'en',
  admitted: true,
} as const

function view(change: Partial<State>, where = ground) {
  return { state: aState(change), ground: where, me }
}

const onLadder = { claims: { one: { ...aClaim(1, { [ann]: 'holder' }), ladder: true } } } as const
const onGround = { claims: { one: aClaim(1, { [ann]: 'holder' }) } }

function excepted(...lifts: string[]): Pick<State, 'exceptions'> {
  return { exceptions: { dark: { lifts, because: 'lamps', madeBy: lead, madeAt: later } } }
}

describe('an evening', () => {
  test('takes people off ladders first, then asks for the last cut, then to come in', () => {
    const calls = (claims: Partial<State>) =>
      [-60, -25, -10, 5].map((minutes) => lightCall(view(claims), minutesFrom(sunset, minutes)))

    expect(calls(onLadder)).toEqual([null, 'off_ladder', 'last_cut', 'come_in'])
    expect(calls(onGround)).toEqual([null, null, 'last_cut', 'come_in'])
    expect(calls({})).toEqual([null, null, null, null])
  })

  test('goes on by lamps on the ground alone, and with ladders only where it is day', () => {
    const calls = (claims: Partial<State>, ...lifts: string[]) =>
      [-10, 5].map((minutes) =>
        lightCall(view({ ...claims, ...excepted(...lifts) }), minutesFrom(sunset, minutes))
      )

    expect(calls(onGround, 'dark')).toEqual([null, null])
    expect(calls(onLadder, 'dark')).toEqual(['off_ladder', 'off_ladder'])
    expect(calls(onLadder, 'dark', 'light')).toEqual([null, null])
  })

  test('shows a lead who is still at a tree, less those who were told and are asked for', () => {
    const claims = { one: aClaim(1, { [ann]: 'holder', [bo]: 'helper' }) }
    const toLeave = { [bo]: { claim: 'one', tree: 1, why: 'dark', toldAt: later } } as const
    const still = (change: Partial<State>, minutes = 5) =>
      stillInTheDark(view({ claims, ...change }), minutesFrom(sunset, minutes))

    expect(still({})).toHaveLength(2)
    expect(still({ toLeave })).toEqual([{ personId: ann, tree: 1 }])
    expect(still({}, -5)).toEqual([])
    expect(still(excepted('dark'))).toEqual([])
  })
})

test('before sunrise it is dark, for ladders too, however soon the sun is up', () => {
  const here = { ground, now: minutesFrom(sunrise, -5).toISOString() }
  const up = { ground, now: minutesFrom(sunrise, 5).toISOString() }

  expect([isTooDark(aState(), here), laddersLackLight(aState(), here)]).toEqual([true, true])
  expect([isTooDark(aState(), up), laddersLackLight(aState(), up)]).toEqual([false, false])
})

test('an exception may be made from an hour before sunset until the sun is up', () => {
  const matters = (at: Date) => darknessMatters(ground, at)

  expect(
    [minutesFrom(sunset, -70), minutesFrom(sunset, -50), minutesFrom(sunset, 300)].map(matters)
  ).toEqual([false, true, true])
  expect(matters(minutesFrom(sunrise, 10))).toBe(false)
})

test('where nobody knows where the orchard is, nobody knows that it is dark', () => {
  const nowhere = groundAt(null)
  const midnight = minutesFrom(sunset, 360)
  const here = { ground: nowhere, now: midnight.toISOString() }

  expect(isTooDark(aState(), here) || laddersLackLight(aState(), here)).toBe(false)
  expect(lightCall(view(onLadder, nowhere), midnight)).toBeNull()
  expect(darknessMatters(nowhere, midnight)).toBe(false)
})
