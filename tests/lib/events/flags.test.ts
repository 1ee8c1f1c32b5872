import { describe, expect, test } from 'vitest'

import type { Block, Tree } from '@/lib/domain/orchard/types'
import { type ArgsOf, type Command, commandOf } from '@/lib/events/commands'
import type { Ground } from '@/lib/events/ground'
import { foldPredicted } from '@/lib/events/predict'
import { fold } from '@/lib/events/reduce'
import type { State } from '@/lib/events/state'

import { aClaim, aFlag, ann, aState, bo, happened, idOf, later, lead } from './a-state'

const claimId = idOf('claim')
const flagId = idOf('flag')
const here = { tree: 2, out: false }

type Case = {
  name: string
  before?: Partial<State>
  kind: string
  body: unknown
  after: Partial<State>
}

const cases: Case[] = [
  {
    name: 'a hazard ends the claim and leaves the tree begun',
    before: { claims: { [claimId]: aClaim(1, { [ann]: 'holder' }) } },
    kind: 'flag_raised',
    body: {
      flag: flagId,
      ...aFlag(1, 'arborist'),
      claimsEnded: [claimId],
      work: [[1, 'begun', 30]],
    },
    after: {
      flags: { [flagId]: aFlag(1, 'arborist') },
      claims: {},
      work: { 1: { state: 'begun', share: 30 } },
    },
  },
  {
    name: 'a flag is withdrawn',
    before: { flags: { [flagId]: aFlag(1, 'disease') } },
    kind: 'flag_withdrawn',
    body: { flag: flagId },
    after: { flags: {} },
  },
  {
    name: 'who is inside a keep-out is told, and those told before stay',
    before: { flags: { [flagId]: { ...aFlag(1, 'arborist'), inside: { [ann]: here } } } },
    kind: 'keep_out_changed',
    body: { flag: flagId, keepOutM: 20, inside: { [bo]: here } },
    after: {
      flags: {
        [flagId]: { ...aFlag(1, 'arborist'), keepOutM: 20, inside: { [ann]: here, [bo]: here } },
      },
    },
  },
  {
    name: 'somebody came out',
    before: { flags: { [flagId]: { ...aFlag(1, 'arborist'), inside: { [ann]: here } } } },
    kind: 'keep_out_answered',
    body: { flag: flagId, person: ann },
    after: {
      flags: {
        [flagId]: { ...aFlag(1, 'arborist'), inside: { [ann]: { tree: 2, out: true } } },
      },
    },
  },
  {
    name: 'somebody who was not inside came out of nothing',
    before: { flags: { [flagId]: aFlag(1, 'arborist') } },
    kind: 'keep_out_answered',
    body: { flag: flagId, person: ann },
    after: {},
  },
  {
    name: 'a disease is confirmed as the lead saw it',
    before: { flags: { [flagId]: aFlag(1, 'disease') } },
    kind: 'flag_confirmed',
    body: { flag: flagId, sign: 'gum', severity: 'low' },
    after: {
      flags: {
        [flagId]: { ...aFlag(1, 'disease'), state: 'confirmed', sign: 'gum', severity: 'low' },
      },
    },
  },
  {
    name: 'leads hear how many notes there are',
    before: { flags: { [flagId]: aFlag(1, 'disease') } },
    kind: 'flag_followed_up',
    body: { flag: flagId, notes: 2 },
    after: { flags: { [flagId]: { ...aFlag(1, 'disease'), notes: 2 } } },
  },
  {
    name: 'a photo of a flag is known by its id',
    before: { flags: { [flagId]: aFlag(1, 'disease') } },
    kind: 'photo_added',
    body: { photo: claimId, tree: 1, flag: flagId, purpose: 'flag' },
    after: { flags: { [flagId]: { ...aFlag(1, 'disease'), photos: [claimId] } } },
  },
  {
    name: 'a hazard is cleared',
    before: { flags: { [flagId]: aFlag(1, 'arborist') } },
    kind: 'flag_cleared',
    body: { flag: flagId },
    after: { flags: {} },
  },
]

describe('what happens to a flag', () => {
  test.each(cases)('$name', ({ before, kind, body, after }) => {
    const state = aState(before)

    expect(fold(state, happened(kind, body))).toEqual({ ...state, ...after })
  })
})

describe('a hazard', () => {
  const block = { no: 1, code: 'A', name: 'A', rowSpacingM: 5, treeSpacingM: 4 } as Block
  const trees = [1, 2, 3, 4].map((no) => ({ no, block: 1, row: 1, place: no }) as Tree)
  const row: Ground = {
    blocks: new Map([[1, block]]),
    trees: new Map(trees.map((tree) => [tree.no, tree])),
  }
  const hazard = (keepOutM: number, share: number | null, personId = ann) =>
    flagging(
      { tree: 1, kind: 'arborist', sign: 'crack', severity: 'high', keepOutM, share },
      personId
    )
  const held = {
    claims: {
      [claimId]: aClaim(1, { [ann]: 'holder', [lead]: 'helper' }),
      [idOf('near')]: aClaim(3, { [bo]: 'holder' }),
    },
  }

  test('ends the claims inside its keep-out, and tells everybody but who saw it', () => {
    const after = foldPredicted(aState(held), hazard(8, 30), later, row)

    expect(after.claims).toEqual({})
    expect(after.work).toEqual({
      1: { state: 'begun', share: 30 },
      3: { state: 'begun', share: null },
    })
    expect(after.flags[idOf('new')]?.inside).toEqual({
      [lead]: { tree: 1, out: false },
      [bo]: { tree: 3, out: false },
    })
  })

  test('leaves who is outside at work', () => {
    const after = foldPredicted(aState(held), hazard(7.9, null), later, row)

    expect(Object.keys(after.claims)).toEqual([idOf('near')])
    expect(after.work).toEqual({})
  })

  test('seen by a bystander says nothing about how far the tree is', () => {
    const after = foldPredicted(aState(held), hazard(0, 90, bo), later, row)

    expect(after.work).toEqual({ 1: { state: 'begun', share: null } })
  })

  test('ends the claim of a row of brush as soon as one of its trees is inside', () => {
    const brush = { ...aClaim(1, { [bo]: 'holder' }), tree: null, row: { block: 1, row: 1 } }
    const claims = { [claimId]: { ...brush, kind: 'brush' as const } }

    const after = foldPredicted(aState({ claims }), hazard(4, null), later, row)

    expect(after.claims).toEqual({})
    expect(after.work).toEqual({})
  })
})

function flagging(args: ArgsOf<'flag_tree'>, personId: string): Command {
  return commandOf('flag_tree', args, {
    id: idOf('new'),
    orchardId: idOf('orchard'),
    personId,
  }) as Command
}
