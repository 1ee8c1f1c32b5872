import { expect, test } from 'vitest'

import { daySoFar } from '@/components/board/day-so-far'
import type { Claim, Flag, State } from '@/lib/events/state'
import { startingView } from '@/lib/state/view'
import { ann, aState, bo, idOf, later, lead, morning } from '../../lib/events/a-state'

const now = new Date('2027-01-16T09:10:00.000Z')

function factsOf(change: Partial<State> = {}, heard: Record<string, string> = {}) {
  const names = { [ann]: 'Ann', [bo]: 'Bo', [lead]: 'Lee' }
  return daySoFar(
    { ...startingView, phase: 'in', state: aState(change), names },
    { now, heardAt: new Map(Object.entries(heard)), quietMinutes: 15 }
  )
}

const codes = (facts: ReturnType<typeof factsOf>) => facts.map(({ code }) => code)

const claim: Claim = {
  tree: 1,
  row: null,
  purpose: 'work',
  kind: 'prune',
  ladder: false,
  buddyId: null,
  openedAt: later,
  people: { [ann]: 'holder' },
}
const flag: Flag = {
  tree: 2,
  kind: 'arborist',
  state: 'open',
  sign: 'hanging_limb',
  severity: 'danger_now',
  keepOutM: 10,
  reasons: null,
  limb: null,
  raisedBy: bo,
  raisedAt: later,
  inside: {},
  photos: [],
  notes: 0,
}
const busy = { deals: { 3: [ann], 4: [bo] } }

test('a crew at work with its trees needs nobody', () => {
  expect(factsOf(busy)).toEqual([])
})

test('danger stands first, then people, then trees', () => {
  const facts = factsOf(
    {
      claims: { [idOf('one')]: { ...claim, ladder: true, openedAt: morning } },
      flags: {
        [idOf('hazard')]: flag,
        [idOf('gum')]: { ...flag, kind: 'disease', state: 'suspected', severity: 'low', tree: 5 },
      },
      stops: {
        [idOf('stop')]: {
          block: null,
          calledBy: bo,
          calledAt: later,
          resumed: false,
          answers: { [bo]: 'stopped', [lead]: 'stopped' },
          seenBy: {},
        },
      },
      work: { 6: { state: 'begun', share: 50 }, 7: { state: 'done', share: null } },
    },
    { [bo]: morning }
  )

  expect(codes(facts)).toEqual([
    'stopped',
    'hazard',
    'alone_with_ladder',
    'waits_for_lead',
    'long_at_tree',
    'disease_to_judge',
    'half_done',
    'to_look_over',
  ])
  expect(facts[0]).toMatchObject({ notAnswered: [ann] })
  expect(facts.at(-2)).toEqual({ code: 'half_done', trees: [6] })
})

test('calls stand before all but a stop, the gravest and unanswered first; so do people inside a keep-out', () => {
  const call = { kind: 'tool', tree: 3, subject: null, calledBy: ann, calledAt: later } as const
  const nobody = { answeredBy: null, answeredAt: null }
  const facts = factsOf({
    ...busy,
    calls: {
      [idOf('tool')]: { ...call, ...nobody },
      [idOf('hurt')]: { ...call, kind: 'injury', answeredBy: lead, answeredAt: later },
      [idOf('question')]: { ...call, kind: 'question', answeredBy: lead, answeredAt: later },
    },
    flags: {
      [idOf('hazard')]: {
        ...flag,
        raisedBy: lead,
        inside: { [ann]: { tree: 3, out: false }, [bo]: { tree: 4, out: true } },
      },
    },
  })

  const kinds = facts.flatMap((fact) => (fact.code === 'called' ? [fact.call.kind] : []))
  expect(kinds).toEqual(['injury', 'tool', 'question'])
  expect(codes(facts)).toEqual(['called', 'called', 'called', 'still_inside', 'hazard'])
  expect(facts[3]).toEqual({ code: 'still_inside', people: [ann] })
})

test('what is done and was not passed waits to be looked over', () => {
  const work = { 6: { state: 'done', share: null }, 7: { state: 'done', share: null } } as const
  const passed = { result: 'passed' } as State['lookedOver'][string]

  expect(factsOf({ ...busy, work, lookedOver: { 7: passed } })).toEqual([
    { code: 'to_look_over', trees: [6] },
  ])
})

test('with a helper, or a buddy who is there, nobody is alone; a buddy on a break does not count', () => {
  const at = (some: Partial<Claim>, attendance = aState().attendance) =>
    codes(factsOf({ claims: { [idOf('one')]: { ...claim, ladder: true, ...some } }, attendance }))
  const boRests = { ...aState().attendance, [bo]: { state: 'break', since: later } as const }

  expect(at({ people: { [ann]: 'holder', [bo]: 'helper' } })).not.toContain('alone_with_ladder')
  expect(at({ buddyId: bo })).not.toContain('alone_with_ladder')
  expect(at({ buddyId: bo }, boRests)).toContain('alone_with_ladder')
})

test('everybody stands under the first thing that they lack', () => {
  const facts = factsOf({
    ...busy,
    briefed: { [lead]: { givenVersion: 1, signedVersion: 1 } },
    equipped: { [lead]: true, [bo]: true },
  })

  expect(facts).toEqual([{ code: 'not_briefed', people: [ann, bo] }])
})

test('who is ready and has no tree is told to the lead, who rests is not', () => {
  const boRests = { ...aState().attendance, [bo]: { state: 'break', since: later } as const }

  expect(factsOf({ attendance: boRests })).toEqual([{ code: 'without_tree', people: [ann] }])
})

test('a phone that was not heard is missed, somebody without a phone is not', () => {
  expect(factsOf(busy, { [ann]: morning })).toEqual([
    { code: 'not_heard', person: ann, minutes: 70, tree: null },
  ])
})

test('where nearly all phones are silent it is said once, and hides no danger below it', () => {
  const names = ['cy', 'dee', 'eli', 'fay'].map((name) => idOf(name))
  const there = Object.fromEntries(
    names.map((id) => [id, { state: 'here', since: morning } as const])
  )
  const silent = Object.fromEntries([ann, ...names].map((id) => [id, morning]))
  const facts = factsOf({ ...busy, attendance: { ...aState().attendance, ...there } }, silent)

  expect(facts.filter(({ code }) => code === 'not_heard')).toEqual([])
  const said = facts.find((fact) => fact.code === 'many_not_heard')
  expect(said?.people.toSorted()).toEqual([ann, ...names].toSorted())
})

test('who waits to be let in is counted, and hauling brush is work', () => {
  const facts = factsOf({
    ...busy,
    people: { ...aState().people, [idOf('nia')]: { role: 'volunteer', admitted: false } },
    claims: {
      [idOf('row')]: { ...claim, tree: null, row: { block: 1, row: 2 }, kind: 'brush' },
    },
  })

  expect(facts).toEqual([
    { code: 'not_let_in', people: [idOf('nia')] },
    { code: 'on_brush', people: [ann] },
  ])
})
