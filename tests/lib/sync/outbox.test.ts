import { beforeEach, describe, expect, test } from 'vitest'

import { type ArgsOf, type Command, type CommandName, commandOf } from '@/lib/events/commands'
import { type OutboxParts, openOutbox } from '@/lib/sync/outbox'
import type { Kept, Locks, Storage } from '@/lib/sync/ports'

import { ann, bo, idOf } from '../events/a-state'
import { type FakeClock, fakeClock } from './fakes/clock'
import { memoryBells, memoryLocks, memoryStorage, plainRandom } from './fakes/device'
import { type Line, openReferee, type Referee } from './fakes/referee'

let clock: FakeClock
let referee: Referee
let line: Line
let storage: Storage
let locks: Locks
let bells: ReturnType<typeof memoryBells>
let commands = 0

beforeEach(() => {
  clock = fakeClock()
  referee = openReferee(clock)
  line = referee.line('ann')
  storage = memoryStorage()
  locks = memoryLocks()
  bells = memoryBells()
})

/** A page of Ann's browser. */
function openPage(change: Partial<OutboxParts> = {}) {
  let items: readonly Kept[] = []
  const outbox = openOutbox({
    server: line,
    storage,
    clock,
    random: plainRandom('page'),
    locks,
    bell: bells(),
    owner: 'ann',
    changed: (next) => {
      items = next
    },
    isOut: async () => 'in',
    signedOut: () => {},
    ...change,
  })
  const keep = <Name extends CommandName>(name: Name, args: ArgsOf<Name>) =>
    outbox.add(command(name, args), new Date(clock.now()).toISOString())
  const states = () => items.map((kept) => `${kept.command.name} ${kept.state}`)
  return { ...outbox, keep, states, items: () => items }
}

function command<Name extends CommandName>(name: Name, args: ArgsOf<Name>): Command {
  const whose = { id: idOf(`command ${++commands}`), orchardId: idOf('orchard'), personId: ann }
  return commandOf(name, args, whose) as Command
}

const hazard = { tree: 1, kind: 'arborist', sign: 'hanging', severity: 'danger_now' } as const
const photo = { purpose: 'flag', jpeg: '/9j/' } as const

test('what was done without signal goes out in order, urgent first, photos last', async () => {
  line.online = false
  const page = openPage()
  await page.keep('add_photo', photo)
  await page.keep('start_break', {})
  await page.keep('end_break', {})
  await page.keep('flag_tree', hazard)
  await clock.pass(60_000)
  expect(referee.log).toEqual([])
  expect(page.states()).toHaveLength(4)

  line.online = true
  page.wake()
  await clock.pass(0)

  expect(referee.log).toEqual([
    'flag_tree from ann: n 1',
    'start_break from ann: n 2',
    'end_break from ann: n 3',
    'add_photo from ann: n 4',
  ])
  expect(page.states().every((state) => state.endsWith(' sent'))).toBe(true)
})

test('signal that comes back is noticed without anybody’s doing', async () => {
  line.online = false
  const page = openPage()
  await page.keep('start_break', {})
  await clock.pass(300_000)

  line.online = true
  await clock.pass(31_000)

  expect(referee.log).toEqual(['start_break from ann: n 1'])
})

test.each(['the page that sends', 'another page'])(
  'a hazard does not wait for the next try (%s)',
  async (which) => {
    line.online = false
    const sending = openPage()
    const other = openPage({ random: plainRandom('other') })
    await sending.keep('start_break', {})
    await clock.pass(300_000)

    line.online = true
    await (which === 'another page' ? other : sending).keep('flag_tree', hazard)
    await clock.pass(0)

    expect(referee.log).toEqual(['flag_tree from ann: n 1', 'start_break from ann: n 2'])
  }
)

test('what was finished at a tree before a hazard was flagged there goes first, and nothing else does', async () => {
  line.online = false
  const page = openPage()
  await page.keep('release_tree', { tree: 2 })
  await page.keep('finish_tree', { tree: 1 })
  await page.keep('flag_tree', hazard)
  await page.keep('start_break', {})

  line.online = true
  page.wake()
  await clock.pass(0)

  expect(referee.log.map((line) => line.split(' ')[0])).toEqual([
    'finish_tree',
    'flag_tree',
    'release_tree',
    'start_break',
  ])
})

test('tries come further and further apart, but never half a minute', async () => {
  line.online = false
  const page = openPage()
  await page.keep('start_break', {})
  await clock.pass(10_000)
  const early = line.asked.length
  await clock.pass(10 * 60_000)
  const perMinute = (line.asked.length - early) / 10

  expect(early).toBeGreaterThanOrEqual(4)
  expect(perMinute).toBeGreaterThan(2)
  expect(perMinute).toBeLessThan(4)
})

test('a lost answer is fetched with the same id, and the thing is done once', async () => {
  line.answersToLose = 2
  const page = openPage()
  await page.keep('start_break', {})
  await clock.pass(60_000)

  expect(line.asked).toEqual(['send start_break', 'send start_break', 'send start_break'])
  expect(referee.log).toEqual(['start_break from ann: n 1'])
  expect(page.states()).toEqual(['start_break sent'])
})

test('a stop does not wait for a photo that is under way', async () => {
  const page = openPage()
  await clock.pass(0)
  line.silent = true
  await page.keep('add_photo', photo)
  await clock.pass(100)
  line.silent = false
  await page.keep('stop_work', {})
  await clock.pass(100)

  expect(referee.log).toEqual(['stop_work from ann: n 1'])
})

test('a refusal stays on the list with its words until it is put away, and does not hold up the rest', async () => {
  const page = openPage()
  await page.keep('fail_tool', { tool: 77, note: 'Spring is gone' })
  await page.keep('start_break', {})
  await clock.pass(0)

  expect(page.states()).toEqual(['fail_tool refused', 'start_break sent'])
  const [refused] = page.items()
  expect(refused).toMatchObject({
    command: { args: { note: 'Spring is gone' } },
    answer: { refused: [{ code: 'no_such_tool' }] },
  })

  await page.dismiss(refused?.seq ?? 0)

  expect(page.states()).toEqual(['start_break sent'])
})

test('a refused wish is made anew under a new id, since the old answer is stored', async () => {
  const page = openPage()
  await page.keep('return_tool', { tool: 3 })
  await clock.pass(0)
  const [refused] = page.items()
  expect(refused?.state).toBe('refused')
  referee.happen('tool_taken', { tool: 3 }, { personId: ann })

  await page.sendAgain(refused?.seq ?? 0)
  await clock.pass(0)

  expect(page.states()).toEqual(['return_tool sent'])
  expect(page.items()[0]?.command.id).not.toBe(refused?.command.id)
})

describe('a page that was killed', () => {
  test('between keeping and sending loses nothing', async () => {
    line.online = false
    const killed = openPage()
    await killed.keep('start_break', {})
    await killed.keep('end_break', {})
    killed.close()
    line.online = true

    const page = openPage()
    await clock.pass(0)

    expect(referee.log).toEqual(['start_break from ann: n 1', 'end_break from ann: n 2'])
    expect(page.states()).toEqual(['start_break sent', 'end_break sent'])
  })

  test('after sending and before the answer does nothing twice', async () => {
    line.answersToLose = 1
    const killed = openPage()
    await killed.keep('start_break', {})
    await clock.pass(0)
    killed.close()

    const page = openPage()
    await clock.pass(10_000)

    expect(referee.log).toEqual(['start_break from ann: n 1'])
    expect(page.states()).toEqual(['start_break sent'])
  })
})

describe('two pages of one browser', () => {
  test('one sends for both, and both see it', async () => {
    const first = openPage()
    const second = openPage()
    await clock.pass(0)
    await second.keep('start_break', {})
    await clock.pass(0)

    expect(line.asked).toEqual(['send start_break'])
    expect(first.states()).toEqual(['start_break sent'])
    expect(second.states()).toEqual(['start_break sent'])
  })

  test('the other goes on when the first is closed', async () => {
    const first = openPage()
    const second = openPage()
    await clock.pass(0)
    first.close()
    await second.keep('start_break', {})
    await clock.pass(0)

    expect(referee.log).toEqual(['start_break from ann: n 1'])
  })
})

test('nothing of another login is sent or shown', async () => {
  line.online = false
  const anns = openPage()
  await anns.keep('start_break', {})
  anns.close()
  const bosLine = referee.line('bo')

  const bos = openPage({ owner: 'bo', server: bosLine })
  await clock.pass(60_000)

  expect(bos.states()).toEqual([])
  expect(bosLine.asked).toEqual([])
  expect(bo).not.toBe(ann)
})

describe('a restored backend', () => {
  test('is told again what was sent lately, in order, under the same ids', async () => {
    const page = openPage()
    await page.onEpoch('first')
    await page.keep('start_break', {})
    await page.keep('end_break', {})
    await clock.pass(0)
    referee.restore(0)

    await page.onEpoch('second')
    await clock.pass(0)

    expect(referee.log).toEqual([
      'start_break from ann: n 1',
      'end_break from ann: n 2',
      'start_break from ann: n 1',
      'end_break from ann: n 2',
    ])
  })

  test('but not what is older than two days, which is forgotten', async () => {
    const page = openPage()
    await page.onEpoch('first')
    await page.keep('start_break', {})
    await clock.pass(0)
    page.close()
    await clock.pass(49 * 3600_000)

    const next = openPage()
    await clock.pass(0)
    await next.onEpoch('second')
    await clock.pass(0)

    expect(referee.log).toHaveLength(1)
    expect(next.states()).toEqual([])
  })
})

describe('what cannot be sent', () => {
  const faulty = (fault: 'malformed' | 'unknown' | 'not_allowed' | 'signed_out', code: string) => ({
    ...line,
    send: async () => ({ ok: false as const, fault, code }),
  })

  test('for its shape is given back with the code', async () => {
    const page = openPage({ server: faulty('malformed', 'no_such_tree') })
    await page.keep('start_break', {})
    await clock.pass(0)

    expect(page.items()[0]).toMatchObject({ state: 'refused', answer: null, fault: 'no_such_tree' })
  })

  test('for a fault of the server is tried for a while, and does not hold up the rest for ever', async () => {
    const page = openPage({ server: faulty('unknown', 'XX000') })
    await page.keep('start_break', {})
    await clock.pass(5_000)
    expect(page.states()).toEqual(['start_break unsent'])
    await clock.pass(120_000)

    expect(page.states()).toEqual(['start_break refused'])
  })

  test('because it is not one’s right is given back; because one is out it is kept to hand in', async () => {
    const member = openPage({ server: faulty('not_allowed', 'not_allowed') })
    await member.keep('start_break', {})
    await clock.pass(0)
    expect(member.states()).toEqual(['start_break refused'])
    member.close()

    const out = openPage({
      server: faulty('not_allowed', 'not_allowed'),
      owner: 'somebody put out',
      isOut: async () => 'out',
    })
    await out.keep('start_break', {})
    await clock.pass(120_000)
    expect(out.states()).toEqual(['start_break unsent'])
  })

  test('signed out, everything waits', async () => {
    let told = 0
    const page = openPage({
      server: faulty('signed_out', 'signed_out'),
      signedOut: () => {
        told++
      },
    })
    await page.keep('start_break', {})
    await clock.pass(120_000)

    expect(page.states()).toEqual(['start_break unsent'])
    expect(told).toBe(1)
  })
})
