import { describe, expect, test } from 'vitest'

import type { Call, State } from '@/lib/events/state'
import { callsToMe, leadsHere, lostPersonCalls, myCalls } from '@/lib/state/calls'
import type { View } from '@/lib/state/view'

const now = new Date('2027-01-16T09:00:00.000Z')
const ago = (seconds: number) => new Date(now.getTime() - seconds * 1000).toISOString()

function aCall(change: Partial<Call> = {}): Call {
  return {
    kind: 'question',
    tree: 7,
    subject: null,
    calledBy: 'ann',
    calledAt: ago(10),
    answeredBy: null,
    answeredAt: null,
    ...change,
  }
}

type Seen = Pick<View, 'state' | 'me'>

/** Mo manages and is not here; Lee leads here; Kim leads and is not here; Ann prunes. */
function seenBy(who: string, calls: Record<string, Call>, change: Partial<State> = {}): Seen {
  const roles = { mo: 'manager', lee: 'lead', kim: 'lead', ann: 'volunteer', bo: 'volunteer' }
  const here = { state: 'here', since: ago(3600) }
  const state = {
    me: { personId: who, role: roles[who as keyof typeof roles] },
    people: Object.fromEntries(Object.entries(roles).map(([id, role]) => [id, { role }])),
    attendance: { lee: here, ann: here, bo: here },
    calls,
    ...change,
  }
  return { state, me: { personId: who } } as unknown as Seen
}

const idsFor = (seen: Seen) => callsToMe(seen, now).map(({ id }) => id)

describe('whom a call asks', () => {
  test.each([
    { who: 'lee', seconds: 5, asked: true, why: 'a lead who is here, at once' },
    { who: 'kim', seconds: 59, asked: false, why: 'a lead who is not here, not yet' },
    { who: 'kim', seconds: 60, asked: true, why: 'a lead who is not here, after a minute' },
    { who: 'mo', seconds: 59, asked: false, why: 'the manager, not yet' },
    { who: 'mo', seconds: 60, asked: true, why: 'the manager, after a minute' },
    { who: 'bo', seconds: 600, asked: false, why: 'another volunteer, never' },
    { who: 'ann', seconds: 600, asked: false, why: 'the caller, never' },
  ])('$why', ({ who, seconds, asked }) => {
    expect(idsFor(seenBy(who, { c: aCall({ calledAt: ago(seconds) }) }))).toEqual(
      asked ? ['c'] : []
    )
  })

  test('everybody who leads at once, where no lead is here but the one who calls', () => {
    const byLee = { c: aCall({ calledBy: 'lee' }) }
    expect(idsFor(seenBy('mo', byLee))).toEqual(['c'])
    expect(idsFor(seenBy('kim', byLee))).toEqual(['c'])
    expect(idsFor(seenBy('lee', byLee))).toEqual([])
    expect(idsFor(seenBy('mo', { c: aCall() }, { attendance: {} }))).toEqual(['c'])
  })

  test('a clock that is behind makes no call younger than new', () => {
    expect(idsFor(seenBy('lee', { c: aCall({ calledAt: ago(-30) }) }))).toEqual(['c'])
    expect(idsFor(seenBy('mo', { c: aCall({ calledAt: ago(-30) }) }))).toEqual([])
  })
})

test('what is answered stays with who answered; what is grave stays with everybody until it is over', () => {
  const calls = {
    question: aCall({ answeredBy: 'lee', calledAt: ago(90) }),
    injury: aCall({ kind: 'injury', answeredBy: 'lee', calledAt: ago(80) }),
  }
  expect(idsFor(seenBy('lee', calls))).toEqual(['injury', 'question'])
  expect(idsFor(seenBy('mo', calls))).toEqual(['injury'])
})

test('injuries stand first, then who is missing, then what nobody answered, then the oldest', () => {
  const calls = {
    tool: aCall({ kind: 'tool', calledAt: ago(50) }),
    answered: aCall({ calledAt: ago(300), answeredBy: 'lee' }),
    old: aCall({ calledAt: ago(200) }),
    lost: aCall({ kind: 'lost_person', calledAt: ago(20) }),
    late: aCall({ kind: 'injury', calledAt: ago(5) }),
    early: aCall({ kind: 'injury', calledAt: ago(40) }),
  }
  expect(idsFor(seenBy('lee', calls))).toEqual(['early', 'late', 'lost', 'old', 'tool', 'answered'])
})

test('a caller has their own calls, the gravest first, and everybody else who is looked for', () => {
  const calls = {
    mine: aCall(),
    hurt: aCall({ kind: 'injury' }),
    lost: aCall({ kind: 'lost_person', calledBy: 'bo', subject: 'kim' }),
  }
  expect(myCalls(seenBy('ann', calls)).map(({ id }) => id)).toEqual(['hurt', 'mine'])
  expect(lostPersonCalls(seenBy('ann', calls)).map(({ id }) => id)).toEqual(['lost'])
  expect(lostPersonCalls(seenBy('bo', calls))).toEqual([])
})

test('leads here are those who were counted in', () => {
  expect(leadsHere(seenBy('ann', {}))).toEqual(['lee'])
  expect(leadsHere({ state: null })).toEqual([])
})
