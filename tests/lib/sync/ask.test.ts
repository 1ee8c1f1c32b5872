import { beforeEach, expect, test } from 'vitest'

import { type Command, commandOf } from '@/lib/events/commands'
import { ask } from '@/lib/sync/ask'

import { ann, idOf } from '../events/a-state'
import { type FakeClock, fakeClock, settled } from './fakes/clock'
import { plainRandom } from './fakes/device'
import { type Line, openReferee, type Referee } from './fakes/referee'

let clock: FakeClock
let referee: Referee
let line: Line

beforeEach(() => {
  clock = fakeClock()
  referee = openReferee(clock)
  line = referee.line('ann')
})

const claim = commandOf(
  'claim_tree',
  { tree: 1 },
  { id: idOf('claim'), orchardId: idOf('orchard'), personId: ann }
) as Command

function askFor() {
  const outcome: { value: unknown } = { value: 'asking' }
  void ask({ server: line, clock, random: plainRandom('phone') }, claim).then((value) => {
    outcome.value = value
  })
  return outcome
}

test('an answer comes back', async () => {
  const outcome = askFor()
  await settled()

  expect(outcome.value).toEqual({ ok: true, value: { n: 1 } })
})

test('a claim without signal is dropped after eight seconds, and not kept', async () => {
  line.online = false
  const outcome = askFor()
  await clock.pass(7_000)
  const tries = line.asked.length
  await clock.pass(1_100)
  expect(outcome.value).toEqual({ ok: false, fault: 'offline' })

  line.online = true
  await clock.pass(60_000)

  expect(tries).toBeGreaterThan(2)
  expect(referee.log).toEqual([])
})

test('a silent line is waited for eight seconds', async () => {
  line.silent = true
  const outcome = askFor()
  await clock.pass(7_900)
  expect(outcome.value).toBe('asking')
  await clock.pass(200)

  expect(outcome.value).toEqual({ ok: false, fault: 'offline' })
})

test('signal that comes back in time is enough', async () => {
  line.online = false
  const outcome = askFor()
  await clock.pass(3_000)
  line.online = true
  await clock.pass(4_000)

  expect(outcome.value).toEqual({ ok: true, value: { n: 1 } })
  expect(referee.log).toEqual(['claim_tree from ann: n 1'])
})
