import { beforeEach, describe, expect, test } from 'vitest'

import type { State } from '@/lib/events/state'
import { type Follow, type FollowParts, follow, type Standing } from '@/lib/sync/follow'
import type { Live } from '@/lib/sync/ports'

import { ann, aState, bo, idOf } from '../events/a-state'
import { type FakeClock, fakeClock } from './fakes/clock'
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

function startFollowing(change: Partial<FollowParts> = {}) {
  let state: State | null = null
  const standings: Standing[] = []
  const skews: number[] = []
  const following: Follow = follow({
    server: line,
    clock,
    random: plainRandom('phone'),
    orchardId: idOf('orchard'),
    personId: ann,
    isMine: (id) => id === ann,
    start: null,
    changed: (next) => {
      state = next
    },
    stood: (standing) => {
      if (standings.at(-1) !== standing) standings.push(standing)
    },
    heartbeat: (_, skewMs) => skews.push(skewMs),
    ...change,
  })
  return { ...following, head: () => state?.head, state: () => state, standings, skews }
}

/** Something that everybody hears of. */
const happen = () => referee.happen('person_arrived', {}, { personId: bo })

test('a phone starts with the snapshot, joins the channel, and asks for what came meanwhile', async () => {
  const phone = startFollowing()
  await clock.pass(0)

  expect(line.asked).toEqual(['snapshot', 'listen 1', 'events after 0'])
  expect(phone.standings).toEqual(['asking', 'reached'])
})

test('what comes in turn is folded without asking', async () => {
  const phone = startFollowing()
  await clock.pass(0)
  line.asked = []

  happen()
  happen()
  await clock.pass(0)

  expect(phone.head()).toBe(2)
  expect(line.asked).toEqual([])
})

describe('broadcasts are a courtesy', () => {
  test('a lost one is asked for when the next comes', async () => {
    const phone = startFollowing()
    await clock.pass(0)
    line.broadcasts = 'are lost'
    happen()
    line.broadcasts = 'come'
    happen()
    await clock.pass(0)

    expect(phone.head()).toBe(2)
    expect(line.asked.at(-1)).toBe('events after 0')
  })

  test('twice is as good as once', async () => {
    const phone = startFollowing()
    await clock.pass(0)
    line.broadcasts = 'come twice'
    happen()
    happen()
    await clock.pass(0)

    expect(phone.head()).toBe(2)
    expect(phone.state()).toMatchObject({ attendance: { [bo]: { state: 'here' } } })
  })

  test('out of order ends the same', async () => {
    const phone = startFollowing()
    await clock.pass(0)
    line.broadcasts = 'come in reverse'
    happen()
    happen()
    happen()
    line.deliver()
    await clock.pass(0)

    expect(phone.head()).toBe(3)
  })

  test('a long gap is asked for piece by piece', async () => {
    const phone = startFollowing()
    await clock.pass(0)
    line.broadcasts = 'are lost'
    for (let count = 0; count < 12; count++) happen()
    phone.ask()
    await clock.pass(0)

    expect(phone.head()).toBe(12)
    expect(line.asked.slice(-3)).toEqual(['events after 0', 'events after 5', 'events after 10'])
  })
})

describe('silence', () => {
  test('of half a minute in a shift makes the phone ask, and twice makes a new channel', async () => {
    const phone = startFollowing()
    await clock.pass(1_000)
    line.broadcasts = 'are lost'
    happen()
    line.asked = []

    await clock.pass(30_000)
    expect(phone.head()).toBe(1)
    expect(line.asked).toEqual(['events after 0'])

    await clock.pass(30_000)
    expect(line.asked.filter((asked) => asked === 'listen 1')).toEqual(['listen 1'])
  })

  test('is none while the socket shows signs of life', async () => {
    startFollowing()
    await clock.pass(1_000)
    line.asked = []
    for (let seconds = 0; seconds < 50; seconds += 10) {
      await clock.pass(10_000)
      line.frame()
    }

    expect(line.asked).toEqual([])
  })

  test('without an open shift costs nothing', async () => {
    const closed = referee.line('ann')
    const state = aState({ shifts: {}, head: 0 })
    startFollowing({ server: { ...closed, snapshot: async () => ({ ok: true, value: state }) } })
    await clock.pass(1_000)
    closed.asked = []
    await clock.pass(59_000)

    expect(closed.asked).toEqual([])
  })
})

test('soon after the start a device knows how far off its clock is', async () => {
  const phone = startFollowing()
  await clock.pass(1_000)

  expect(phone.skews).toEqual([90_000])
})

test('a heartbeat every minute says that one lives, measures the clocks, and finds what was missed', async () => {
  const phone = startFollowing()
  await clock.pass(1_000)
  line.broadcasts = 'are lost'
  happen()
  line.asked = []
  await clock.pass(60_000)

  expect(line.asked).toContain('heartbeat')
  expect(phone.skews).toEqual([90_000, 90_000])
  expect(phone.head()).toBe(1)
})

test('signal that is lost and found: nothing is missed', async () => {
  const phone = startFollowing()
  await clock.pass(0)
  line.online = false
  line.dropChannels()
  happen()
  await clock.pass(10 * 60_000)
  expect(phone.standings.at(-1)).toBe('no_signal')
  expect(phone.head()).toBe(0)

  line.online = true
  await clock.pass(31_000)

  expect(phone.standings.at(-1)).toBe('reached')
  expect(phone.head()).toBe(1)
  happen()
  await clock.pass(0)
  expect(phone.head()).toBe(2)
})

test('somebody is put out: the channel moves, and the others move along', async () => {
  const phone = startFollowing()
  await clock.pass(0)
  referee.happen('person_removed', { person: bo, channel: 2 })
  await clock.pass(0)
  happen()
  await clock.pass(0)

  expect(line.asked).toContain('listen 2')
  expect(phone.head()).toBe(2)
})

test('after a restore everything is fetched whole, from the new channel on', async () => {
  const phone = startFollowing()
  await clock.pass(0)
  happen()
  happen()
  await clock.pass(0)
  referee.restore(1)
  await clock.pass(60_000)

  expect(phone.state()).toMatchObject({ head: 1, epoch: referee.state().epoch })
  expect(line.asked).toContain('listen 9')
  happen()
  await clock.pass(0)
  expect(phone.head()).toBe(2)
})

test('an event of a newer app makes the phone fetch everything once', async () => {
  const phone = startFollowing()
  await clock.pass(0)
  line.asked = []
  referee.happen('tree_sang', { tree: 1 })
  await clock.pass(0)

  expect(phone.head()).toBe(1)
  expect(line.asked).toEqual(['snapshot'])
})

describe('whoever is put out', () => {
  test('is told so, and asks no more', async () => {
    const phone = startFollowing()
    await clock.pass(0)
    referee.putOut('ann')
    await clock.pass(61_000)
    expect(phone.standings.at(-1)).toBe('out')
    line.asked = []

    await clock.pass(10 * 60_000)

    expect(line.asked).toEqual([])
  })

  test('and who only waits to be let in asks again', async () => {
    const answers = [{ ok: false as const, fault: 'not_allowed' as const, code: 'not_admitted' }]
    const phone = startFollowing({
      server: {
        ...line,
        snapshot: async (orchardId, personId) =>
          answers.pop() ?? line.snapshot(orchardId, personId),
      },
    })
    await clock.pass(0)
    expect(phone.standings).toEqual(['asking', 'not_admitted'])
    await clock.pass(5_000)

    expect(phone.standings.at(-1)).toBe('reached')
  })
})

describe('more than the broadcast says', () => {
  const heardBy = async (
    event: Live,
    role: 'lead' | 'volunteer',
    mine: readonly string[] = [ann]
  ) => {
    let tell: (event: Live) => void = () => {}
    const state = aState({ head: 0, me: { personId: ann, role } })
    const asked: string[] = []
    startFollowing({
      isMine: (id) => mine.includes(id),
      server: {
        ...line,
        snapshot: async () => ({ ok: true, value: state }),
        eventsAfter: async (_, __, ___, n) => {
          asked.push(`events after ${n}`)
          return { ok: true, value: { events: [], head: 0 } }
        },
        listen: (_, ear) => {
          tell = ear.heard
          return () => {}
        },
      },
    })
    await clock.pass(0)
    tell(event)
    await clock.pass(0)
    const atOnce = asked.length
    await clock.pass(2_000)
    return { atOnce, later: asked.length - atOnce }
  }
  const finished = (personId: string): Live => ({
    n: 1,
    at: '2027-01-16T09:00:00.000Z',
    commandId: idOf('c'),
    personId,
    byPersonId: personId,
    kind: 'tree_finished',
    body: { tree: 1 },
    more: true,
  })

  test('leads ask at once', async () => {
    expect(await heardBy(finished(bo), 'lead')).toEqual({ atOnce: 1, later: 0 })
  })

  test('the person concerned asks at once', async () => {
    expect(await heardBy(finished(ann), 'volunteer')).toEqual({ atOnce: 1, later: 0 })
  })

  test('whom it concerns besides asks at once too', async () => {
    const reopened = { ...finished(bo), concerns: [ann] }
    expect(await heardBy(reopened, 'volunteer')).toEqual({ atOnce: 1, later: 0 })
  })

  test('of the other person of this device is asked at once', async () => {
    const answer = await heardBy(finished(bo), 'volunteer', [ann, bo])
    expect(answer).toEqual({ atOnce: 1, later: 0 })
  })

  test('others fold what they heard', async () => {
    expect(await heardBy(finished(bo), 'volunteer')).toEqual({ atOnce: 0, later: 0 })
  })

  test('of something quiet nobody knows whom it concerns: all ask, but not in one moment', async () => {
    expect(await heardBy({ n: 1, more: true }, 'volunteer')).toEqual({ atOnce: 0, later: 1 })
  })
})

test('a phone goes on from where it was last time', async () => {
  happen()
  happen()
  const start = aState({ head: 1, me: { personId: ann, role: 'volunteer' } })

  const phone = startFollowing({ start })
  await clock.pass(0)

  expect(line.asked.filter((asked) => asked === 'snapshot')).toEqual([])
  expect(phone.head()).toBe(2)
})
