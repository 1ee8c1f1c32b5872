import { expect, test } from 'vitest'

import { historyByRound } from '../../../components/history/history-by-round'
import type { ThingOfTree, TreeHistory } from '../../../lib/hooks'

const round = (
  id: string,
  openedAt: string,
  closedAt: string | null
): TreeHistory['rounds'][number] => ({
  round: id,
  kind: 'winter',
  season: 2026,
  openedAt,
  closedAt,
  state: 'done',
  share: null,
})
const thing = (id: string, at: string, of: string | null): ThingOfTree => ({
  what: 'photo',
  id,
  at,
  person: 'ann',
  round: of,
  note: null,
  purpose: 'after',
})

test('flags and photos stand in the round that was open then, visits in their own, the rest between', () => {
  const first = round('first', '2026-01-01', '2026-03-01')
  const second = round('second', '2026-06-01', null)
  const things = [
    thing('now', '2026-06-02', null),
    thing('late work of the first', '2026-06-01T12', 'first'),
    thing('in spring', '2026-04-01', null),
    thing('in winter', '2026-02-01', null),
  ]

  const parts = historyByRound({ rounds: [first, second], things })

  expect(parts.map(({ round, things }) => [round?.round, things.map(({ id }) => id)])).toEqual([
    ['second', ['now']],
    ['first', ['late work of the first', 'in winter']],
    [undefined, ['in spring']],
  ])
})

test('a round in which nothing happened is there, too', () => {
  const parts = historyByRound({ rounds: [round('only', '2026-01-01', null)], things: [] })
  expect(parts).toEqual([{ round: expect.objectContaining({ round: 'only' }), things: [] }])
})
