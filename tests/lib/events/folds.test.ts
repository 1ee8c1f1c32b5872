import { describe, expect, test } from 'vitest'

import { fold } from '@/lib/events/reduce'
import type { State } from '@/lib/events/state'

import { aClaim, ann, aState, bo, happened, idOf, later, lead, round, shift } from './a-state'

const earlier = '2027-01-16T08:00:00.000Z'

type Case = {
  name: string
  before?: Partial<State>
  kind: string
  body: unknown
  leadBody?: unknown
  /** What is different afterwards; everything else stays. */
  after: Partial<State>
}

const start = aState()
const claimId = idOf('claim')
const stopId = idOf('stop')
const cy = idOf('cy')

const families: Record<string, Case[]> = {
  orchard: [
    {
      name: 'another name and other rules, the rest as it was',
      kind: 'orchard_changed',
      body: { name: 'Four Wells', houseRules: { ...start.orchard.houseRules, keep_out_m: 15 } },
      after: {
        orchard: {
          ...start.orchard,
          name: 'Four Wells',
          houseRules: { ...start.orchard.houseRules, keep_out_m: 15 },
        },
      },
    },
  ],
  people: [
    {
      name: 'somebody is added; that they are a minor only leads hear',
      kind: 'person_added',
      body: { person: cy, role: 'volunteer' },
      leadBody: { minor: true, guardianId: ann },
      after: {
        people: { ...start.people, [cy]: { role: 'volunteer', admitted: true } },
        minors: { [cy]: { guardianId: ann } },
      },
    },
    {
      name: 'somebody joins outside a shift and waits',
      kind: 'person_joined',
      body: { person: cy, role: 'volunteer', admitted: false },
      after: { people: { ...start.people, [cy]: { role: 'volunteer', admitted: false } } },
    },
    {
      name: 'another role, and another guardian',
      before: { minors: { [bo]: { guardianId: ann } } },
      kind: 'person_changed',
      body: { person: bo, role: 'visitor' },
      leadBody: { minor: true, guardianId: lead },
      after: {
        people: { ...start.people, [bo]: { role: 'visitor', admitted: true } },
        minors: { [bo]: { guardianId: lead } },
      },
    },
    {
      name: 'somebody is put out with all that hangs on them',
      before: {
        claims: { [claimId]: aClaim(1, { [bo]: 'holder' }) },
        deals: { 3: [bo] },
        skills: { [bo]: { ladder: null } },
        minors: { [bo]: { guardianId: null } },
      },
      kind: 'person_removed',
      body: {
        person: bo,
        channel: 2,
        claimsEnded: [claimId],
        work: [[1, 'begun', null]],
        dealsEnded: [3],
        left: [bo],
        returned: [2],
      },
      after: {
        channelEpoch: 2,
        people: without(start.people, bo),
        attendance: without(start.attendance, bo),
        briefed: without(start.briefed, bo),
        equipped: without(start.equipped, bo),
        consents: without(start.consents, bo),
        skills: {},
        minors: {},
        claims: {},
        deals: {},
        work: { 1: { state: 'begun', share: null } },
        tools: { ...start.tools, 2: { ...tool(2), heldBy: null } },
      },
    },
    {
      name: 'consent of an earlier season does not take back a later one',
      kind: 'consent_given',
      body: null,
      leadBody: { person: ann, season: 2026 },
      after: {},
    },
    {
      name: 'a skill is granted until a day',
      before: { skills: { [ann]: { ladder: null } } },
      kind: 'skill_granted',
      body: null,
      leadBody: { person: ann, skill: 'hand_saw', until: '2027-12-31' },
      after: { skills: { [ann]: { ladder: null, hand_saw: '2027-12-31' } } },
    },
    {
      name: 'the last skill ends, and nothing is left of it',
      before: { skills: { [ann]: { ladder: null } } },
      kind: 'skill_ended',
      body: null,
      leadBody: { person: ann, skill: 'ladder' },
      after: { skills: {} },
    },
  ],
  shift: [
    {
      name: 'a shift is planned',
      kind: 'shift_scheduled',
      body: {
        shift: idOf('next'),
        roundId: round,
        date: '2027-01-23',
        startsAt: later,
        endsAt: later,
        state: 'scheduled',
        signal: 'voice',
      },
      after: {
        shifts: {
          ...start.shifts,
          [idOf('next')]: {
            roundId: round,
            date: '2027-01-23',
            startsAt: later,
            endsAt: later,
            state: 'scheduled',
            signal: 'voice',
            briefingVersion: 0,
            briefingChange: null,
            comeDownVersion: 0,
            off: {},
          },
        },
      },
    },
    {
      name: 'the shift closes, and its crew goes with it',
      before: { claims: { [claimId]: aClaim(1, { [bo]: 'holder' }) } },
      kind: 'shift_closed',
      body: { shift, claimsEnded: [claimId], work: [[1, 'begun', null]], returned: [1, 2] },
      after: {
        shifts: {},
        attendance: {},
        briefed: {},
        equipped: {},
        claims: {},
        work: { 1: { state: 'begun', share: null } },
        tools: {
          ...start.tools,
          1: { ...tool(1), heldBy: null },
          2: { ...tool(2), heldBy: null },
        },
      },
    },
    {
      name: 'ladders are off for wind',
      kind: 'off_changed',
      body: { shift, what: 'ladder', reason: 'wind' },
      after: { shifts: { [shift]: { ...theShift(), off: { ladder: 'wind' } } } },
    },
    {
      name: 'and on again',
      before: { shifts: { [shift]: { ...theShift(), off: { ladder: 'wind' } } } },
      kind: 'off_changed',
      body: { shift, what: 'ladder' },
      after: { shifts: { [shift]: { ...theShift(), off: {} } } },
    },
  ],
  briefing: [
    {
      name: 'a new version is written',
      kind: 'briefing_written',
      body: { shift, version: 2, change: 'come_down' },
      after: {
        shifts: {
          [shift]: {
            ...theShift(),
            briefingVersion: 2,
            briefingChange: 'come_down',
            comeDownVersion: 2,
          },
        },
      },
    },
    {
      name: 'it is given to somebody who came late',
      before: { briefed: {} },
      kind: 'briefing_given',
      body: { version: 1, people: [bo] },
      after: { briefed: { [bo]: { givenVersion: 1, signedVersion: 0 } } },
    },
    {
      name: 'it is signed',
      before: { briefed: {} },
      kind: 'briefing_signed',
      body: { version: 1 },
      after: { briefed: { [ann]: { givenVersion: 0, signedVersion: 1 } } },
    },
  ],
  attendance: [
    {
      name: 'somebody arrives',
      before: { attendance: {} },
      kind: 'person_arrived',
      body: {},
      after: { attendance: { [ann]: { state: 'here', since: later, restedAt: later } } },
    },
    {
      name: 'a break begins when the person said',
      kind: 'break_started',
      body: { at: '2027-01-16T08:50:00.000Z' },
      after: {
        attendance: {
          ...start.attendance,
          [ann]: { state: 'break', since: '2027-01-16T08:50:00.000Z' },
        },
      },
    },
    // Cal. Code Regs. Title 8 §3395 (e)(6): ten minutes net.
    ...(['2027-01-16T08:59:59.000Z', '2027-01-16T09:00:00.000Z'] as const).map((at, rests) => ({
      name: `a break of ${rests ? 'ten minutes is a rest' : 'less than ten minutes is none'}`,
      before: {
        attendance: {
          [ann]: { state: 'break', since: '2027-01-16T08:50:00.000Z', restedAt: earlier } as const,
        },
      },
      kind: 'break_ended',
      body: { at },
      after: {
        attendance: {
          [ann]: { state: 'here', since: at, restedAt: rests ? at : earlier } as const,
        },
      },
    })),
    {
      name: 'a break of somebody who is not here changes nothing',
      before: { attendance: {} },
      kind: 'break_started',
      body: {},
      after: { attendance: {} },
    },
    {
      name: 'somebody leaves, and what was dealt to them is free',
      before: { deals: { 2: [ann], 3: [bo] } },
      kind: 'person_left',
      body: { left: [ann], dealsEnded: [2] },
      after: { attendance: without(start.attendance, ann), deals: { 3: [bo] } },
    },
  ],
  equipment: [
    {
      name: 'a check that failed is heard by leads and the person',
      kind: 'equipment_checked',
      body: null,
      leadBody: { person: ann, failed: ['helmet'] },
      after: {
        equipped: { ...start.equipped, [ann]: false },
        failedEquipment: { [ann]: ['helmet'] },
      },
    },
    {
      name: 'a later one that passed clears it',
      before: { equipped: { [ann]: false }, failedEquipment: { [ann]: ['helmet'] } },
      kind: 'equipment_checked',
      body: { passed: true },
      after: { equipped: { [ann]: true }, failedEquipment: {} },
    },
  ],
  tools: [
    {
      name: 'a tool is taken',
      kind: 'tool_taken',
      body: { tool: 3 },
      after: { tools: { ...start.tools, 3: { ...tool(3), heldBy: ann } } },
    },
    {
      name: 'a tool that nobody knows changes nothing',
      kind: 'tool_returned',
      body: { tool: 99 },
      after: {},
    },
    {
      name: 'a tool fails in the hand and stays there',
      kind: 'tool_failed',
      body: { tool: 1 },
      after: { tools: { ...start.tools, 1: { ...tool(1), fit: false } } },
    },
    {
      name: 'tools are cleaned',
      before: { tools: { 1: { ...tool(1), clean: false } } },
      kind: 'tools_cleaned',
      body: { tools: [1] },
      after: { tools: { 1: tool(1) } },
    },
    {
      name: 'a tool is added',
      kind: 'tool_added',
      body: { tool: 4, label: 'L1', kind: 'ladder' },
      after: {
        tools: {
          ...start.tools,
          4: { label: 'L1', kind: 'ladder', fit: true, clean: true, heldBy: null, ownedBy: null },
        },
      },
    },
  ],
  deals: [
    {
      name: 'trees are dealt, also those that were dealt to others',
      before: { deals: { 1: [ann] }, dealtBy: { 1: bo } },
      kind: 'trees_dealt',
      body: { trees: [1, 2], to: [ann, bo] },
      after: { deals: { 1: [ann, bo], 2: [ann, bo] }, dealtBy: { 1: ann, 2: ann } },
    },
    {
      name: 'and taken back',
      before: { deals: { 1: [ann], 2: [ann] }, dealtBy: { 1: lead, 2: lead } },
      kind: 'trees_taken_back',
      body: { dealsEnded: [1] },
      after: { deals: { 2: [ann] }, dealtBy: { 2: lead } },
    },
  ],
  claims: [
    {
      name: 'a tree is claimed, and is not kept for anybody any more',
      before: { deals: { 1: [ann] } },
      kind: 'tree_claimed',
      body: { claim: claimId, ...aClaim(1, { [ann]: 'holder' }), row: undefined, dealsEnded: [1] },
      after: { claims: { [claimId]: aClaim(1, { [ann]: 'holder' }) }, deals: {} },
    },
    {
      name: 'a helper joins',
      before: { claims: { [claimId]: aClaim(1, { [ann]: 'holder' }) } },
      kind: 'tree_joined',
      body: { claim: claimId, person: bo, part: 'helper' },
      after: { claims: { [claimId]: aClaim(1, { [ann]: 'holder', [bo]: 'helper' }) } },
    },
    {
      name: 'the helper goes',
      before: { claims: { [claimId]: aClaim(1, { [ann]: 'holder', [bo]: 'helper' }) } },
      kind: 'tree_left',
      body: { claimsLeft: [[claimId, bo]] },
      after: { claims: { [claimId]: aClaim(1, { [ann]: 'holder' }) } },
    },
    {
      name: 'the tree is handed over, and who had it is out of it',
      before: { claims: { [claimId]: aClaim(1, { [ann]: 'holder', [bo]: 'helper' }) } },
      kind: 'tree_handed_over',
      body: { claim: claimId, to: bo, from: ann },
      after: { claims: { [claimId]: aClaim(1, { [bo]: 'holder' }) } },
    },
    {
      name: 'a diseased tree is finished, and the tools are not clean',
      before: { claims: { [claimId]: aClaim(1, { [ann]: 'holder' }) } },
      kind: 'tree_finished',
      body: { tree: 1, claimsEnded: [claimId], work: [[1, 'done', null]], dirty: [1] },
      leadBody: { seconds: 700 },
      after: {
        claims: {},
        work: { 1: { state: 'done', share: null } },
        tools: { ...start.tools, 1: { ...tool(1), clean: false } },
      },
    },
    {
      name: 'finishing is undone: the claim is back and the tree unpruned',
      before: { work: { 1: { state: 'done', share: null } } },
      kind: 'tree_undone',
      body: {
        claim: claimId,
        ...aClaim(1, { [ann]: 'holder' }),
        work: [[1, 'unpruned', null]],
      },
      after: { claims: { [claimId]: aClaim(1, { [ann]: 'holder' }) }, work: {} },
    },
    {
      name: 'a helper of a claim that is over changes nothing',
      kind: 'tree_joined',
      body: { claim: claimId, person: bo, part: 'helper' },
      after: {},
    },
  ],
  stops: [
    {
      name: 'a stop is called for the whole orchard',
      kind: 'stop_called',
      body: { stop: stopId },
      after: {
        stops: {
          [stopId]: {
            block: null,
            calledBy: ann,
            calledAt: later,
            resumed: false,
            answers: {},
            seenBy: {},
          },
        },
      },
    },
    {
      name: 'a late "I came down" does not take back that one knows work goes on',
      before: { stops: { [stopId]: { ...theStop(), answers: { [ann]: 'resumed' } } } },
      kind: 'stop_answered',
      body: { stop: stopId, answer: 'stopped', person: ann },
      after: { stops: { [stopId]: { ...theStop(), answers: { [ann]: 'resumed' } } } },
    },
    {
      name: 'work goes on',
      before: { stops: { [stopId]: theStop() } },
      kind: 'work_resumed',
      body: { stop: stopId },
      after: { stops: { [stopId]: { ...theStop(), resumed: true } } },
    },
  ],
}

describe.each(Object.entries(families))('%s', (_, cases) => {
  test.each(cases)('$name', ({ before, kind, body, leadBody, after }) => {
    const state = aState(before)

    const next = fold(state, happened(kind, body, leadBody === undefined ? {} : { leadBody }))

    expect(next).toEqual({ ...state, ...after })
  })
})

describe('what cannot be folded here is fetched', () => {
  test.each([
    { name: 'a kind from the future', kind: 'tree_sang', body: {} },
    { name: 'a body of another shape', kind: 'tool_taken', body: { tool: 'three' } },
    { name: 'changes of another shape', kind: 'trees_taken_back', body: { dealsEnded: 'all' } },
    { name: 'my own new role', kind: 'person_changed', body: { person: ann, role: 'lead' } },
    {
      name: 'that somebody is a minor after all: their own consent counts no more',
      kind: 'person_changed',
      body: { person: bo, minor: true },
    },
    { name: 'that I am put out', kind: 'person_removed', body: { person: ann } },
    { name: 'another text to consent to', kind: 'orchard_changed', body: { houseRules: {} } },
    { name: 'the round that is worked in closes', kind: 'round_closed', body: { round } },
  ])('$name', ({ kind, body }) => {
    expect(fold(start, happened(kind, body))).toBe('fetch again')
  })

  test('a shift of another round opens', () => {
    const other = { ...theShift(), state: 'scheduled', roundId: idOf('summer') } as const
    const state = aState({ shifts: { [shift]: other } })

    expect(fold(state, happened('shift_opened', { shift, off: {} }))).toBe('fetch again')
  })
})

test('somebody who is no lead does not hear that an added person is a minor', () => {
  const next = fold(start, happened('person_added', { person: cy, role: 'volunteer' }))

  expect(next).toMatchObject({ people: { [cy]: { role: 'volunteer' } }, minors: {} })
  expect(lead).not.toBe(cy)
})

function without<Value>(record: Record<string, Value>, key: string): Record<string, Value> {
  const { [key]: _, ...rest } = record
  return rest
}

function tool(no: number) {
  const known = start.tools[no]
  if (!known) throw new Error(`no tool ${no}`)
  return known
}

function theShift() {
  const known = aState().shifts[shift]
  if (!known) throw new Error('no shift')
  return known
}

function theStop() {
  return { block: null, calledBy: bo, calledAt: later, resumed: false, answers: {}, seenBy: {} }
}
