import { describe, expect, test } from 'vitest'

import { type ArgsOf, type Command, type CommandName, commandOf } from '@/lib/events/commands'
import { foldPredicted, predict } from '@/lib/events/predict'
import type { State } from '@/lib/events/state'

import { aClaim, aFlag, ann, aState, bo, idOf, later, lead, morning, shift } from './a-state'

const claimId = idOf('claim')
const flagId = idOf('flag')
const stopId = idOf('stop')
const free = { tools: {} }
const onBreak = { attendance: { [ann]: { state: 'break', since: morning } } } as const
const holding = { claims: { [claimId]: aClaim(1, { [ann]: 'holder', [bo]: 'helper' }) } }
const noShift = { shifts: {} }
const justNow = { raisedBy: ann, raisedAt: later }

function command<Name extends CommandName>(name: Name, args: ArgsOf<Name>, personId = ann) {
  const whose = { id: idOf('new'), orchardId: idOf('orchard'), personId }
  return commandOf(name, args, whose) as Command
}

describe('what is refused here is refused by the referee', () => {
  const cases: [string, Partial<State>, Command, string[]][] = [
    ['nobody arrives twice', {}, command('arrive', {}), ['already_here']],
    [
      'nobody arrives when no shift is open',
      noShift,
      command('arrive', {}),
      ['shift_not_open', 'already_here'],
    ],
    ['no break with a tree in hand', holding, command('start_break', {}), ['holds_another']],
    ['no break in a break', onBreak, command('start_break', {}), ['on_break']],
    ['no end of a break that is none', {}, command('end_break', {}), ['not_on_break']],
    [
      'nobody leaves with a tree and a tool',
      holding,
      command('leave', {}),
      ['holds_another', 'tools_out'],
    ],
    ['a tool has one hand', {}, command('take_tool', { tool: 2 }), ['tool_held']],
    ['a tool that nobody knows', {}, command('take_tool', { tool: 9 }), ['no_such_tool']],
    ['somebody else’s tool', {}, command('return_tool', { tool: 2 }), ['not_in_hand']],
    [
      'a briefing that has changed',
      {},
      command('sign_briefing', { version: 0, language: 'en', how: 'heard' }),
      ['briefing_changed'],
    ],
    [
      'holders hand over',
      holding,
      command('leave_tree', { claim: claimId }),
      ['holder_hands_over'],
    ],
    [
      'a minor’s guardian consents',
      { minors: { [ann]: { guardianId: lead } } },
      command('give_consent', { textVersion: 1 }),
      ['guardian_must_consent'],
    ],
    [
      'a flag is the reporter’s to withdraw',
      { flags: { [flagId]: aFlag(1, 'disease') } },
      command('withdraw_flag', { flag: flagId }),
      ['not_yours'],
    ],
    [
      'and only for a short while',
      { flags: { [flagId]: { ...aFlag(1, 'disease'), raisedBy: ann } } },
      command('withdraw_flag', { flag: flagId }),
      ['too_late_to_withdraw'],
    ],
    [
      'nor when a lead has confirmed it',
      { flags: { [flagId]: { ...aFlag(1, 'disease'), ...justNow, state: 'confirmed' } } },
      command('withdraw_flag', { flag: flagId }),
      ['too_late_to_withdraw'],
    ],
    [
      'a hazard is a manager’s to clear, not a lead’s to withdraw',
      { flags: { [flagId]: aFlag(1, 'arborist') }, me: { personId: lead, role: 'lead' } },
      command('withdraw_flag', { flag: flagId }, lead),
      ['only_manager_clears'],
    ],
    ['no stop without a shift', noShift, command('stop_work', {}), ['shift_not_open']],
  ]
  test.each(cases)('%s', (_, before, asked, codes) => {
    const prediction = predict(aState(before), asked, { now: later })

    expect(prediction).toEqual({ refused: codes.map((code) => ({ code })) })
  })
})

describe('what only the referee decides is asked', () => {
  test.each([
    command('claim_tree', { tree: 1 }),
    command('join_tree', { claim: claimId }),
    command('hand_over', { claim: claimId, to: bo }),
    command('deal_trees', { trees: [1], to: [ann] }),
    command('open_shift', { shift }),
    command('close_shift', {}),
    command('resume_work', { stop: stopId }),
    command('undo_tree', { tree: 1 }),
    command('redeem', { code: 'x' }),
    command('finish_tree', { tree: 1, claim: idOf('a claim that is over') }),
    command('finish_tree', { tree: 1, begunAt: morning }),
  ])('$name', (asked) => {
    expect(predict(aState(), asked, { now: later })).toBe('asking')
  })
})

describe('what is expected', () => {
  test('finishing a diseased tree ends the claim and soils the tools of both', () => {
    const flags = { [flagId]: aFlag(1, 'disease') }
    const before = aState({ ...holding, flags })

    const after = foldPredicted(before, command('finish_tree', { tree: 1, claim: claimId }), later)

    expect(after.claims).toEqual({})
    expect(after.work).toEqual({ 1: { state: 'done', share: null } })
    expect(after.tools).toMatchObject({
      1: { clean: false },
      2: { clean: false },
      3: { clean: true },
    })
  })

  test.each([
    ['leaving it', command('leave_tree', { claim: claimId }, bo), { 2: { clean: false } }],
    [
      'giving a tool back',
      command('return_tool', { tool: 1 }),
      { 1: { clean: false, heldBy: null } },
    ],
    [
      'a hazard',
      command('flag_tree', { tree: 1, kind: 'arborist', sign: 'crack', severity: 'high' }),
      { 1: { clean: false }, 2: { clean: false } },
    ],
  ])('after a diseased tree %s soils what was in hand', (_, asked, tools) => {
    const before = aState({ ...holding, flags: { [flagId]: aFlag(1, 'disease') } })

    expect(foldPredicted(before, asked, later).tools).toMatchObject(tools)
  })

  test('a helper may finish, too', () => {
    const asked = command('finish_tree', { tree: 1, claim: claimId }, bo)

    expect(foldPredicted(aState(holding), asked, later).work).toMatchObject({
      1: { state: 'done' },
    })
  })

  test('half done keeps the share', () => {
    const asked = command('release_tree', { tree: 1, claim: claimId, share: 40 })

    expect(foldPredicted(aState(holding), asked, later)).toMatchObject({
      claims: {},
      work: { 1: { state: 'begun', share: 40 } },
    })
  })

  test('not begun leaves the tree as it was', () => {
    const asked = command('release_tree', { tree: 1, claim: claimId })

    expect(foldPredicted(aState(holding), asked, later)).toMatchObject({
      claims: {},
      work: {},
    })
  })

  test('a dealt tree that was begun without signal is finished', () => {
    const before = aState({ deals: { 2: [ann] } })
    const asked = command('finish_tree', { tree: 2, begunAt: morning, at: later })

    expect(foldPredicted(before, asked, later)).toMatchObject({
      deals: {},
      work: { 2: { state: 'done', share: null } },
    })
  })

  test('a hazard ends whoever’s claim it is, with the orchard’s keep-out', () => {
    const asked = command(
      'flag_tree',
      { tree: 1, kind: 'arborist', sign: 'hanging', severity: 'high' },
      bo
    )

    const after = foldPredicted(aState(holding), asked, later)

    expect(after.claims).toEqual({})
    expect(after.flags).toMatchObject({
      [idOf('new')]: { keepOutM: 10, raisedBy: bo, state: 'open' },
    })
  })

  test('signs of disease leave the claim', () => {
    const asked = command('flag_tree', { tree: 1, kind: 'disease', sign: 'gum', severity: 'low' })

    expect(foldPredicted(aState(holding), asked, later).claims).toEqual(holding.claims)
  })

  test('a tool that fails its check is not taken', () => {
    const asked = command('take_tool', { tool: 3, failedItems: ['loose'] })

    expect(foldPredicted(aState(), asked, later).tools[3]).toMatchObject({
      fit: false,
      heldBy: null,
    })
  })

  test('who leaves takes no deal along, but a pair keeps its trees', () => {
    const before = aState({ ...free, deals: { 1: [ann], 2: [ann, bo] } })

    expect(foldPredicted(before, command('leave', {}), later).deals).toEqual({
      2: [ann, bo],
    })
  })

  test('an answer says what the stop asks for', () => {
    const stop = {
      block: null,
      calledBy: bo,
      calledAt: later,
      resumed: false,
      answers: {},
      seenBy: {},
    }
    const asked = command('answer_stop', { stop: stopId })
    const answers = (resumed: boolean) =>
      foldPredicted(aState({ stops: { [stopId]: { ...stop, resumed } } }), asked, later).stops[
        stopId
      ]?.answers

    expect(answers(false)).toEqual({ [ann]: 'stopped' })
    expect(answers(true)).toEqual({ [ann]: 'resumed' })
  })
})
