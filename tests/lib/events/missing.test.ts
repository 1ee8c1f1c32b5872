import { describe, expect, test } from 'vitest'

import type { Block, Tree } from '@/lib/domain/orchard/types'
import {
  dealRules,
  missingForClaim,
  missingOfPerson,
  missingOfTree,
  treeRules,
} from '@/lib/events/missing'
import type { State } from '@/lib/events/state'

import { aClaim, aFlag, ann, aState, bo, idOf, later, morning, shift } from './a-state'

const block: Block = {
  no: 1,
  code: 'S',
  name: 'South',
  rowSpacingM: 5,
  treeSpacingM: 4,
  bearingDeg: null,
  firstTree: null,
  taggedEnd: 'low',
}

function aTree(no: number, change: Partial<Tree> = {}): Tree {
  return {
    no,
    block: 1,
    row: 1,
    place: no,
    species: 'apple',
    cultivar: null,
    sizeClass: 'small',
    plantedYear: null,
    heightCm: 220,
    trunkCm: null,
    asksSaw: false,
    life: 'standing',
    position: null,
    ...change,
  }
}

function groundOf(...changed: Tree[]) {
  const trees = Array.from({ length: 12 }, (_, at) => aTree(at + 1))
  return {
    trees: new Map([...trees, ...changed].map((tree) => [tree.no, tree])),
    blocks: new Map([[1, block]]),
  }
}

const codes = (missing: { code: string }[]) => missing.map(({ code }) => code)

test('who is ready lacks nothing', () => {
  expect(missingForClaim(aState(), groundOf(), 1, ann)).toEqual([])
})

test('a newcomer is told everything that is missing, not the first', () => {
  const newcomer = aState({
    attendance: {},
    briefed: {},
    equipped: {},
    consents: {},
    tools: {},
  })

  expect(codes(missingOfPerson(newcomer, ann))).toEqual([
    'not_arrived',
    'consent_missing',
    'briefing_not_given',
    'briefing_not_signed',
    'equipment_not_checked',
    'no_tool_in_hand',
  ])
})

describe('of the person', () => {
  const stop = {
    block: null,
    calledBy: bo,
    calledAt: later,
    resumed: false,
    answers: {},
    seenBy: {},
  }
  const stops = (change: object) => ({ stops: { [idOf('stop')]: { ...stop, ...change } } })
  const arrivedAfter = { state: 'here', since: '2027-01-16T10:00:00.000Z' } as const
  const cases: [string, Partial<State>, string[]][] = [
    ['without a shift nothing else is asked', { shifts: {}, equipped: {} }, ['shift_not_open']],
    ['a stop', stops({}), ['stopped']],
    ['the stop of one block is the tree’s matter', stops({ block: 1 }), []],
    ['a stop that I have not answered since', stops({ resumed: true }), ['stop_not_answered']],
    [
      'which somebody who came after it need not',
      { ...stops({ resumed: true }), attendance: { [ann]: arrivedAfter } },
      [],
    ],
    [
      'a minor without their adult',
      { minors: { [ann]: { guardianId: idOf('gone') } } },
      ['adult_missing'],
    ],
    [
      'the tool in hand is out of use and not clean',
      {
        tools: {
          1: { label: '', kind: 'saw', fit: false, clean: false, heldBy: ann, ownedBy: null },
        },
      },
      ['tool_failed', 'tool_not_clean'],
    ],
    [
      'a tree in hand',
      { claims: { [idOf('claim')]: aClaim(9, { [ann]: 'helper' }) } },
      ['holds_another'],
    ],
    [
      'visitors',
      { people: { [ann]: { role: 'visitor', admitted: true } } },
      ['visitors_do_not_prune'],
    ],
  ]
  test.each(cases)('%s', (_, change, expected) => {
    expect(codes(missingOfPerson(aState(change), ann))).toEqual(expected)
  })

  test('what a volunteer cannot know of others is not missing', () => {
    const state = aState({ consents: {}, minors: {} })

    expect(codes(missingOfPerson(state, bo))).toEqual([])
    expect(codes(missingOfPerson(state, ann))).toEqual(['consent_missing'])
  })
})

describe('of the tree', () => {
  const claims = { [idOf('claim')]: aClaim(2, { [bo]: 'holder' }) }
  const ladderClaims = { [idOf('claim')]: { ...aClaim(2, { [bo]: 'holder' }), ladder: true } }
  const theShift = aState().shifts[shift]
  const cases: [string, Partial<State>, Tree[], number, string[]][] = [
    ['dead', {}, [aTree(1, { life: 'dead' })], 1, ['tree_not_standing']],
    ['of another round', {}, [aTree(1, { species: 'cherry' })], 1, ['tree_not_in_round']],
    ['done', { work: { 1: { state: 'done', share: null } } }, [], 1, ['tree_done']],
    ['left out', { work: { 1: { state: 'left_out', share: null } } }, [], 1, ['tree_left_out']],
    ['held', { claims }, [], 2, ['tree_held']],
    ['dealt to others', { deals: { 1: [bo] } }, [], 1, ['dealt_to_another']],
    ['dealt to me and another', { deals: { 1: [bo, ann] } }, [], 1, []],
    [
      'flagged for an arborist',
      { flags: { [idOf('f')]: aFlag(1, 'arborist') } },
      [],
      1,
      ['arborist_flag'],
    ],
    // 4 m from tree to tree: the third stands 8 m away, the fourth 12 m; keep out 10 m.
    [
      'inside a keep-out',
      { flags: { [idOf('f')]: aFlag(1, 'arborist') } },
      [],
      3,
      ['inside_keep_out'],
    ],
    ['outside it', { flags: { [idOf('f')]: aFlag(1, 'arborist') } }, [], 4, []],
    [
      'diseased, and not dealt to me',
      { flags: { [idOf('f')]: aFlag(1, 'disease') } },
      [],
      1,
      ['disease_not_dealt'],
    ],
    [
      'diseased, and dealt to me',
      { flags: { [idOf('f')]: aFlag(1, 'disease') }, deals: { 1: [ann] } },
      [],
      1,
      [],
    ],
    ['beside work from the ground', { claims }, [], 1, []],
    ['beside somebody on a ladder', { claims: ladderClaims }, [], 1, ['works_next_to_it']],
    ['further away from them', { claims: ladderClaims }, [], 4, []],
    ['unmarked', { marked: {} }, [], 1, ['not_marked']],
    [
      'one that asks for a saw, alone and without skill and saw',
      {},
      [aTree(1, { asksSaw: true })],
      1,
      ['skill_missing', 'no_saw_in_hand', 'two_people_needed'],
    ],
    [
      'of a species that is off, in a block that is stopped',
      {
        shifts: theShift ? { [shift]: { ...theShift, off: { apple: 'wet_wood' } } } : {},
        stops: {
          [idOf('s')]: {
            block: 1,
            calledBy: bo,
            calledAt: later,
            resumed: false,
            answers: {},
            seenBy: {},
          },
        },
      },
      [],
      1,
      ['stopped', 'species_off'],
    ],
  ]
  test.each(cases)('%s', (_, change, trees, no, expected) => {
    expect(codes(missingOfTree(aState(change), groundOf(...trees), no, ann))).toEqual(expected)
  })

  test('a skill that ran out before today is none, and where the day is not known it is held', () => {
    const tall = groundOf(aTree(1, { heightCm: 400 }))
    const ladder = {
      label: 'L',
      kind: 'ladder',
      fit: true,
      clean: true,
      heldBy: bo,
      ownedBy: null,
    } as const
    const withSkill = (until: string | null, today?: string) =>
      codes(
        missingOfTree(
          aState({ skills: { [ann]: { ladder: until } }, tools: { 4: ladder } }),
          tall,
          1,
          ann,
          { ladder: true, helpers: [bo], ...(today && { today }) }
        )
      )

    expect(withSkill('2027-01-15', '2027-01-16')).toEqual(['skill_missing'])
    expect(withSkill('2027-01-16', '2027-01-16')).toEqual([])
    expect(withSkill(null, '2027-01-16')).toEqual([])
    expect(withSkill('2027-01-15')).toEqual([])
  })

  test('brush is carried away from a tree that is done', () => {
    const state = aState({ work: { 1: { state: 'done', share: null } } })

    expect(missingOfTree(state, groundOf(), 1, ann, { kind: 'brush' })).toEqual([])
  })

  test('without a shift there is nothing to say about trees', () => {
    expect(treeRules(aState({ shifts: {} }), groundOf(), ann)(1)).toEqual([])
    expect(morning < later).toBe(true)
  })
})

describe('before a lead deals', () => {
  const flagId = idOf('flag')
  test.each<[string, Partial<State>, Tree[], string[]]>([
    ['nothing is against it', {}, [], []],
    ['nor a deal to somebody else', { deals: { 5: [bo] } }, [], []],
    [
      'nor a species that is off, or a disease',
      { flags: { [flagId]: aFlag(5, 'disease') } },
      [],
      [],
    ],
    [
      'somebody is at it',
      { claims: { c: aClaim(5, { [bo]: 'holder' }) } },
      [],
      ['tree_in_progress'],
    ],
    ['it is done', { work: { 5: { state: 'done', share: null } } }, [], ['tree_done']],
    ['it is left out', { work: { 5: { state: 'left_out', share: null } } }, [], ['tree_left_out']],
    ['it is dead', {}, [aTree(5, { life: 'dead' })], ['tree_not_standing']],
    ['it is of another round', {}, [aTree(5, { species: 'fig' })], ['tree_not_in_round']],
    ['it is the arborist’s', { flags: { [flagId]: aFlag(5, 'arborist') } }, [], ['arborist_flag']],
    [
      'it is too near to one',
      { flags: { [flagId]: aFlag(6, 'arborist') } },
      [],
      ['inside_keep_out'],
    ],
    ['no round is open', { workRoundId: null }, [], ['no_round']],
  ])('%s', (_, change, trees, expected) => {
    const { refusalsOf } = dealRules(aState(change), groundOf(...trees))
    expect(codes(refusalsOf(5))).toEqual(expected)
  })

  test('trees can be dealt before the shift opens', () => {
    expect(dealRules(aState({ shifts: {} }), groundOf()).refusalsOf(5)).toEqual([])
  })

  test.each<[string, Partial<State['claims'][string]>, Tree[], string[], number | null]>([
    ['a ladder next to it', { ladder: true }, [], [ann], 6],
    ['a saw next to it', {}, [aTree(6, { asksSaw: true })], [ann], 6],
    ['it asks for a saw itself', {}, [aTree(5, { asksSaw: true })], [ann], 6],
    ['work from the ground', {}, [], [ann], null],
    ['a ladder of who gets it', { ladder: true }, [], [bo], null],
  ])('work overhead: %s', (_, change, trees, to, near) => {
    const claims = { c: { ...aClaim(6, { [bo]: 'holder' }), ...change } }
    const { worksNextTo } = dealRules(aState({ claims }), groundOf(...trees))

    const expected = near === null ? null : { code: 'works_next_to_it', detail: { tree: near } }
    expect(worksNextTo(5, to)).toEqual(expected)
  })
})
