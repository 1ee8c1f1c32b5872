import { expect, test } from 'vitest'

import { commandOf } from '@/lib/events/commands'
import { fold } from '@/lib/events/reduce'
import type { State } from '@/lib/events/state'
import { seen } from '@/lib/state/seen'
import { emptyGround } from '@/lib/state/view'
import type { Kept } from '@/lib/sync/ports'

import { aClaim, ann, aState, bo, happened, idOf, later } from '../events/a-state'

const claimId = idOf('claim')
const commandId = idOf('finish')

const finish: Kept = {
  seq: 1,
  owner: 'ann',
  // One of the commands.
  command: commandOf(
    'finish_tree',
    { tree: 1, claim: claimId },
    { id: commandId, orchardId: idOf('orchard'), personId: ann }
  ) as Kept['command'],
  at: later,
  state: 'unsent',
  answer: null,
  fault: null,
  answeredAt: null,
}

const ground = emptyGround
const nobodyKnows = { known: new Set<string>(), ground }
const holding = aState({ claims: { [claimId]: aClaim(1, { [ann]: 'holder' }) } })
const finished = happened(
  'tree_finished',
  { tree: 1, claimsEnded: [claimId], work: [[1, 'done', null]] },
  { commandId }
)

test('what is not sent yet is seen at once', () => {
  expect(seen(holding, [finish], nobodyKnows).work).toEqual({ 1: { state: 'done', share: null } })
})

test('its confirmation changes nothing that is seen, before or after it leaves the outbox', () => {
  const confirmed = { ...(fold(holding, finished) as State), head: 11 }
  const before = seen(holding, [finish], nobodyKnows)
  const known = new Set([commandId])
  const sent: Kept = { ...finish, state: 'sent', answer: { n: 11 } }

  expect({ ...seen(confirmed, [finish], { known, ground }), head: 0 }).toEqual({
    ...before,
    head: 0,
  })
  expect({ ...seen(confirmed, [sent], { known, ground }), head: 0 }).toEqual({ ...before, head: 0 })
})

test('between the answer and its event nothing jumps back', () => {
  const answered: Kept = { ...finish, state: 'sent', answer: { n: 11 } }

  expect(seen(holding, [answered], nobodyKnows).work).toMatchObject({ 1: { state: 'done' } })
})

test('what somebody did since is not undone by my own command that lingers', () => {
  const onBreak = {
    ...finish,
    command: { ...finish.command, name: 'start_break', args: { at: later } },
  }
  // A command of another name with its own arguments.
  const kept = onBreak as Kept
  const confirmed = aState()
  const ended = fold(
    fold(confirmed, happened('break_started', {}, { commandId })) as State,
    happened('break_ended', {})
  ) as State

  const view = seen(ended, [kept], { known: new Set([commandId]), ground })

  expect(view.attendance[ann]?.state).toBe('here')
})

test('what was refused is not seen any more', () => {
  const refused: Kept = { ...finish, state: 'refused', answer: { refused: [{ code: 'x' }] } }

  expect(seen(holding, [refused], nobodyKnows)).toBe(holding)
})

test('commands build on each other, in order', () => {
  const command = (name: 'take_tool' | 'return_tool', tool: number, seq: number): Kept => ({
    ...finish,
    seq,
    // One of the commands.
    command: commandOf(
      name,
      { tool },
      {
        id: idOf(`${name} ${seq}`),
        orchardId: idOf('orchard'),
        personId: bo,
      }
    ) as Kept['command'],
  })

  const view = seen(
    aState(),
    [command('return_tool', 2, 1), command('take_tool', 3, 2), command('return_tool', 3, 3)],
    nobodyKnows
  )

  expect(Object.values(view.tools).map((tool) => tool.heldBy)).toEqual([ann, null, null])
})
