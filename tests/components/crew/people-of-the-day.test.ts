/** What a lead reads about people: who came late, how long a skill holds, what is changed about somebody. */

import { describe, expect, test } from 'vitest'

import { changesOf, type KnownPerson, personLacks } from '@/components/crew/changed-person'
import { countReady, groupOf } from '@/components/crew/readiness'
import { skillHolds } from '@/components/crew/skill-until'
import type { View } from '@/lib/hooks'
import { ann, aState, bo, later, lead } from '../../lib/events/a-state'

const seenBy = (state: object) =>
  ({ state: aState(state), names: {}, skewMs: 0 }) as unknown as View
const nobodyTold = { givenVersion: 0, signedVersion: 0 }

test('who was not there when the others were told is late; before the briefing nobody is', () => {
  const { briefed } = aState()
  const some = seenBy({ briefed: { ...briefed, [bo]: nobodyTold } })
  expect(groupOf(some, bo)).toBe('late')
  expect(groupOf(some, ann)).toBe('readyGroup')
  const none = seenBy({ briefed: { [ann]: nobodyTold, [bo]: nobodyTold, [lead]: nobodyTold } })
  expect(groupOf(none, bo)).toBe('notReady')
})

test('who is on a break is here, but cannot start', () => {
  const { attendance, tools } = aState()
  const view = seenBy({
    attendance: { ...attendance, [bo]: { state: 'break', since: later } },
    tools: { ...tools, 3: { ...tools[3], heldBy: lead } },
  })
  expect(countReady(view)).toEqual({ here: 3, ready: 2 })
})

test.each([
  [undefined, 'not_granted'],
  [null, 'no_end'],
  ['2027-01-15', 'ran_out'],
  ['2027-01-16', 'ends_soon'],
  ['2027-01-30', 'ends_soon'],
  ['2027-01-31', 'holds'],
])('on 16 January a skill until %s: %s', (until, holds) => {
  expect(skillHolds(until, '2027-01-16')).toBe(holds)
})

describe('what is changed about somebody', () => {
  const kim: KnownPerson = {
    name: 'Kim',
    role: 'volunteer',
    ageBand: 'adult',
    guardian: null,
    phone: '555 0100',
  }
  const same = { name: null, role: null, ageBand: null, guardian: null, phone: null }

  test.each<[string, Partial<KnownPerson>, object]>([
    ['nothing', {}, {}],
    ['a name, without the space round it', { name: ' Kim L ' }, { name: 'Kim L' }],
    ['no phone any more', { phone: '' }, { phone: '' }],
    [
      'under age, with an adult',
      { ageBand: 'minor', guardian: bo },
      { ageBand: 'minor', guardian: bo },
    ],
    ['a guardian that was chosen and is not needed', { guardian: bo }, {}],
  ])('%s', (_, change, sent) => {
    expect(changesOf(kim, { ...kim, ...change })).toEqual({ ...same, ...sent })
  })

  test.each<[Partial<KnownPerson>, string[]]>([
    [{}, []],
    [{ name: ' ' }, ['name']],
    [{ ageBand: 'minor' }, ['guardian']],
    [{ ageBand: 'minor', guardian: bo, role: 'lead' }, ['role']],
  ])('%j lacks %j', (change, lacks) => {
    expect(personLacks({ ...kim, ...change })).toEqual(lacks)
  })
})
