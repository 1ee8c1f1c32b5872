import { describe, expect, test } from 'vitest'

import type { Command } from '@/lib/events/commands'
import { missingOfPerson } from '@/lib/events/missing'
import { predict } from '@/lib/events/predict'
import { fold } from '@/lib/events/reduce'
import type { Briefed, Shift, State } from '@/lib/events/state'

import { ann, aState, bo, happened, idOf, later, lead, shift } from './a-state'

const start = aState()

function stateWith(some: Partial<Shift>, briefed: Briefed, more: Partial<State> = {}): State {
  const known = start.shifts[shift]
  if (!known) throw new Error('no shift')
  return {
    ...start,
    shifts: { [shift]: { ...known, ...some } },
    briefed: { [ann]: briefed },
    ...more,
  }
}

function briefedAfter(state: State, kind: string, body: unknown): Briefed | undefined {
  const after = fold(state, happened(kind, body))
  return after === 'fetch again' ? undefined : after.briefed[ann]
}

describe('what is missing after the briefing changed', () => {
  const missing = (some: Partial<Shift>, briefed: Briefed) =>
    missingOfPerson(stateWith(some, briefed), ann)
      .map(({ code }) => code)
      .filter((code) => code.startsWith('briefing'))

  test.each([
    {
      what: 'before the next tree: signing is enough',
      some: { briefingVersion: 2, comeDownVersion: 0 },
      briefed: { givenVersion: 1, signedVersion: 2 },
      codes: [],
    },
    {
      what: 'come down now: given once does not count for the new version',
      some: { briefingVersion: 2, comeDownVersion: 2 },
      briefed: { givenVersion: 1, signedVersion: 2 },
      codes: ['briefing_not_given'],
    },
    {
      what: 'come down now: told and signed',
      some: { briefingVersion: 2, comeDownVersion: 2 },
      briefed: { givenVersion: 2, signedVersion: 2 },
      codes: [],
    },
    {
      what: 'told before a later change of words',
      some: { briefingVersion: 3, comeDownVersion: 2 },
      briefed: { givenVersion: 2, signedVersion: 3 },
      codes: [],
    },
    {
      what: 'never briefed, whatever is signed',
      some: { briefingVersion: 1, comeDownVersion: 0 },
      briefed: { givenVersion: 0, signedVersion: 1 },
      codes: ['briefing_not_given'],
    },
  ])('$what', ({ some, briefed, codes }) => {
    expect(missing(some, briefed)).toEqual(codes)
  })
})

test('their own hand counts as told for who was briefed once, and for nobody else', () => {
  const changed = { briefingVersion: 2, comeDownVersion: 2 }
  const once = { givenVersion: 1, signedVersion: 1 }
  const never = { givenVersion: 0, signedVersion: 0 }

  expect(
    briefedAfter(stateWith(changed, once), 'briefing_signed', { version: 2, own: true })
  ).toEqual({ givenVersion: 2, signedVersion: 2 })
  expect(briefedAfter(stateWith(changed, once), 'briefing_signed', { version: 2 })).toEqual({
    givenVersion: 1,
    signedVersion: 2,
  })
  expect(
    briefedAfter(stateWith(changed, never), 'briefing_signed', { version: 2, own: true })
  ).toEqual({ givenVersion: 0, signedVersion: 2 })
})

test('come down now is remembered when a lesser change follows', () => {
  const after = fold(
    stateWith({ briefingVersion: 2, comeDownVersion: 2 }, { givenVersion: 1, signedVersion: 1 }),
    happened('briefing_written', { shift, version: 3, change: 'before_next_tree' })
  )

  expect(after).toMatchObject({
    shifts: {
      [shift]: { briefingVersion: 3, briefingChange: 'before_next_tree', comeDownVersion: 2 },
    },
  })
})

describe('signing is expected', () => {
  const signing = (personId: string): Command => ({
    name: 'sign_briefing',
    id: idOf('command'),
    orchardId: start.orchardId,
    personId,
    args: { version: 2, language: 'en', how: 'read' },
  })
  const changed = { briefingVersion: 2, comeDownVersion: 2 }
  const once = { givenVersion: 1, signedVersion: 1 }

  test('as my own hand on my own phone', () => {
    expect(predict(stateWith(changed, once), signing(ann), { now: later })).toEqual([
      { kind: 'briefing_signed', body: { version: 2, own: true } },
    ])
  })

  test('but not on a lead’s phone for somebody who was briefed before: it may be theirs too', () => {
    const onLeads: Partial<State> = { me: { personId: lead, role: 'lead' } }

    expect(predict(stateWith(changed, once, onLeads), signing(ann), { now: later })).toBe('asking')
    expect(predict(stateWith(changed, once, onLeads), signing(bo), { now: later })).toEqual([
      { kind: 'briefing_signed', body: { version: 2, own: false } },
    ])
  })
})
