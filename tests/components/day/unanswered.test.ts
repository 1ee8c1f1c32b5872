import { expect, test } from 'vitest'

import { unanswered } from '@/components/day/unanswered'
import type { Claim, State } from '@/lib/events/state'
import { stopToAnswerBy, type View } from '@/lib/hooks'

const calledAt = '2027-02-27T10:00:00.000Z'
const before = '2027-02-27T08:00:00.000Z'
const stop = { block: null, calledBy: 'ann', calledAt, resumed: false, answers: {}, seenBy: {} }

function viewWith(some: Partial<State>): View {
  const attendance = Object.fromEntries(
    ['ann', 'bo', 'di'].map((id) => [id, { state: 'here', since: before }])
  )
  const state = { attendance, claims: {}, stops: { s: stop }, ...some }
  return { state, names: { ann: 'Ann', bo: 'Bo', di: 'Di' }, unsent: [] } as unknown as View
}

test('who has not answered a stop is listed, those at a tree first', () => {
  const claim = {
    tree: 7,
    row: null,
    openedAt: before,
    people: { di: 'holder' },
  } as unknown as Claim
  const view = viewWith({ claims: { c: claim } })

  expect(unanswered(view, { answers: { ann: 'stopped' } })).toEqual([
    { id: 'di', name: 'Di', tree: 7 },
    { id: 'bo', name: 'Bo', tree: null },
  ])
})

test('a lead answers for somebody without a phone: first that they stopped, then that work goes on', () => {
  const answered = { ...stop, answers: { di: 'stopped' as const } }

  expect(stopToAnswerBy(viewWith({}), 'di')?.answer).toBe('stopped')
  expect(stopToAnswerBy(viewWith({ stops: { s: answered } }), 'di')).toBeNull()
  const goesOn = viewWith({ stops: { s: { ...answered, resumed: true } } })
  expect(stopToAnswerBy(goesOn, 'di')?.answer).toBe('resumed')
  expect(stopToAnswerBy(goesOn, 'nobody')).toBeNull()
})
