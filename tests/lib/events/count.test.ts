/** Who answered for whom at a stop, who was not found, and company at a tree. */

import { describe, expect, test } from 'vitest'

import { buddyLacks, claimLacks } from '@/lib/events/company'
import type { Happening } from '@/lib/events/event'
import { fold } from '@/lib/events/reduce'
import type { State } from '@/lib/events/state'

import { aClaim, ann, aState, bo, happened, idOf, later, lead, shift } from './a-state'

const stopId = idOf('stop')
const stop = {
  block: null,
  calledBy: bo,
  calledAt: later,
  resumed: false,
  answers: {},
  seenBy: {},
}

type Told = Partial<Happening> & { kind: string; body: unknown }

function told(state: State, ...events: Told[]): State {
  return events.reduce<State>((before, { kind, body, ...more }) => {
    const folded = fold(before, happened(kind, body, more))
    if (folded === 'fetch again') throw new Error('This event should be folded.')
    return folded
  }, state)
}

describe('answers to a stop', () => {
  const answered = (by: string, answer = 'stopped') => ({
    kind: 'stop_answered',
    personId: ann,
    byPersonId: by,
    body: { stop: stopId, answer, person: ann },
  })
  const stopped = aState({ stops: { [stopId]: stop } })

  test('a lead who sees somebody is told apart from that person’s own phone', () => {
    expect(told(stopped, answered(lead)).stops[stopId]?.seenBy).toEqual({ [ann]: lead })
    expect(told(stopped, answered(ann)).stops[stopId]?.seenBy).toEqual({})
  })

  test('who was seen stays seen by that lead when the phone wakes', () => {
    const state = told(stopped, answered(lead), answered(ann))
    expect(state.stops[stopId]).toMatchObject({
      answers: { [ann]: 'stopped' },
      seenBy: { [ann]: lead },
    })
  })

  test('that work goes on is heard by oneself, whoever saw one come down', () => {
    const state = told(stopped, answered(lead), answered(ann, 'resumed'))
    expect(state.stops[stopId]).toMatchObject({ answers: { [ann]: 'resumed' }, seenBy: {} })
  })
})

describe('who was not found when a shift closed', () => {
  const closed = {
    kind: 'shift_closed',
    personId: lead,
    byPersonId: lead,
    body: { shift },
    leadBody: { notFound: [bo] },
  }

  test.each<[string, Told[], State['notFound']]>([
    ['stays on the list', [], { [bo]: shift }],
    [
      'until a lead says so',
      [
        {
          kind: 'person_found',
          personId: lead,
          byPersonId: lead,
          body: null,
          leadBody: { person: bo },
        },
      ],
      {},
    ],
    ['or they arrive', [{ kind: 'person_arrived', personId: bo, byPersonId: bo, body: {} }], {}],
    [
      'or they are out',
      [{ kind: 'person_removed', personId: lead, byPersonId: lead, body: { person: bo } }],
      {},
    ],
  ])('%s', (_, then, notFound) => {
    expect(told(aState(), closed, ...then).notFound).toEqual(notFound)
  })
})

describe('company', () => {
  const kid = idOf('kid')
  const tree = { no: 1, asksSaw: true } as never
  const ground = { trees: new Map([[1, tree]]), blocks: new Map() }
  const alone = [{ kind: 'alone', person: ann }]
  const onBreak = { ...aState().attendance, [bo]: { state: 'break', since: later } as const }

  test.each<[string, Partial<State>, string, string[]]>([
    ['somebody who is here', {}, bo, []],
    ['oneself', {}, ann, ['buddy_not_here']],
    ['who has gone home', { attendance: {} }, bo, ['buddy_not_here']],
    ['who is on a break', { attendance: onBreak }, bo, ['buddy_not_here']],
    ['a visitor', { people: { [bo]: { role: 'visitor', admitted: true } } }, bo, ['buddy_not_fit']],
    ['who is under age', { minors: { [bo]: { guardianId: lead } } }, bo, ['buddy_not_fit']],
  ])('as a buddy: %s', (_, change, buddy, codes) => {
    expect(buddyLacks(aState(change), ann, buddy).map(({ code }) => code)).toEqual(codes)
  })

  test.each<[string, Partial<State>, object, object[]]>([
    ['a helper is company', {}, { people: { [ann]: 'holder', [bo]: 'helper' } }, []],
    ['a learner looks on', {}, { people: { [ann]: 'holder', [bo]: 'learner' } }, alone],
    ['nobody is left', {}, {}, alone],
    ['a buddy in earshot is company', {}, { buddyId: bo }, []],
    ['a buddy on a break is none', { attendance: onBreak }, { buddyId: bo }, alone],
    ['a buddy who was removed is none', { attendance: {} }, { buddyId: bo }, alone],
    ['carrying brush takes no company', {}, { kind: 'brush' }, []],
  ])('at a saw tree: %s', (_, change, claim, lacks) => {
    const held = { ...aClaim(1, { [ann]: 'holder' }), ...claim }
    expect(claimLacks(aState(change), ground, held)).toEqual(lacks)
  })

  test.each<[string, Partial<State>, object[]]>([
    ['is here', {}, []],
    ['went home', { attendance: {} }, [{ kind: 'minor_alone', person: kid, guardian: bo }]],
  ])('a minor whose adult %s', (_, change, lacks) => {
    const state = aState({ minors: { [kid]: { guardianId: bo } }, ...change })
    const claim = aClaim(2, { [kid]: 'holder' })
    expect(claimLacks(state, { trees: new Map(), blocks: new Map() }, claim)).toEqual(lacks)
  })
})
