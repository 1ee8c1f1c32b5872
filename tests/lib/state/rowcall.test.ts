import { beforeEach, describe, expect, test } from 'vitest'

import type { Backend, Membership } from '@/lib/data/backend'
import type { Outcome } from '@/lib/events/answer'
import { newCode } from '@/lib/state/code'
import * as inside from '@/lib/state/inside'
import { openRowcall } from '@/lib/state/rowcall'

import { ann, bo, idOf } from '../events/a-state'
import { type FakeClock, fakeClock } from '../sync/fakes/clock'
import { plainRandom } from '../sync/fakes/device'
import { type Line, openReferee, type Referee } from '../sync/fakes/referee'
import { aDevice, membership } from './a-phone'

let clock: FakeClock
let referee: Referee
let line: Line
let user: string | null
let members: Membership[]
let device: ReturnType<typeof aDevice>

beforeEach(() => {
  clock = fakeClock()
  referee = openReferee(clock)
  line = referee.line('ann')
  user = 'ann'
  members = [membership]
  device = aDevice(clock)
})

const bos: Membership = { ...membership, personId: bo, personName: 'Bo' }

function openPage(name = 'page', fetchInside = async () => inside) {
  const overLine = <Value>(value: Value): Outcome<Value> =>
    line.online ? { ok: true, value } : { ok: false, fault: 'offline' }
  const notHere = async () => ({ ok: false as const, fault: 'offline' as const })
  const backend: Backend = {
    address: 'https://orchard',
    user: async () => overLine(user),
    signIn: async () => {
      user ??= 'newcomer'
      return overLine(user)
    },
    myOrchards: async () => overLine(members),
    lookAtInvite: async () => overLine(null),
    as: (userId) => ({
      ...line,
      send: async (command, limitMs) => {
        if (userId !== user) return { ok: false, fault: 'signed_out' }
        return line.send(command, limitMs)
      },
    }),
    names: async () => overLine({}),
    treeSheet: notHere,
    emergencyCard: notHere,
    briefing: async () => overLine(null),
    photo: notHere,
    treeNotes: notHere,
    privatePeople: notHere,
    cameIn: notHere,
    toolFaults: notHere,
    calls: notHere,
    incidents: notHere,
    toLookOver: notHere,
    notesOfRound: notHere,
    shiftRecord: notHere,
    flagDetails: notHere,
    myFlags: notHere,
    read: notHere,
  }
  return openRowcall({ ...device, random: plainRandom(name), backend, inside: fetchInside })
}

test('a new device is nobody’s', async () => {
  user = null
  const page = openPage()
  await clock.pass(0)

  expect(page.view().phase).toBe('nobody')
})

test('what only those need who are in is not fetched for a newcomer, and again where it did not come', async () => {
  user = null
  let fetched = 0
  const page = openPage('page', async () => {
    fetched++
    if (fetched === 1) throw new Error('No signal.')
    return inside
  })
  await clock.pass(0)
  await page.lookAtInvite(newCode().code)
  expect(fetched).toBe(0)

  page.retry()
  await clock.pass(0)
  expect(page.view()).toMatchObject({ phase: 'starting', signal: 'no_signal' })

  await clock.pass(31_000)
  expect(page.view()).toMatchObject({ phase: 'in', signal: 'reached' })
})

test('a device of one person goes straight in', async () => {
  const page = openPage()
  await clock.pass(0)

  expect(page.view()).toMatchObject({ phase: 'in', me: { personName: 'Ann' } })
})

describe('one device, two people', () => {
  test('asks whose turn it is, and remembers', async () => {
    members = [membership, bos]
    const page = openPage()
    await clock.pass(0)
    expect(page.view()).toMatchObject({ phase: 'choose', state: null })

    page.choose(bos.orchardId, bo)
    await clock.pass(0)
    expect(page.view()).toMatchObject({ phase: 'in', state: { me: { personId: bo } } })
    page.close()

    const next = openPage('next')
    await clock.pass(0)
    expect(next.view().me?.personId).toBe(bo)
    next.chooseAgain()
    expect(next.view().phase).toBe('choose')
  })

  test('what one has not sent goes out while the other is chosen', async () => {
    members = [membership, bos]
    const page = openPage()
    await clock.pass(0)
    page.choose(membership.orchardId, ann)
    await clock.pass(0)
    line.online = false
    await (await page.session())?.send('start_break', {})
    page.choose(bos.orchardId, bo)
    await clock.pass(60_000)
    expect(page.view().unsent).toEqual([])

    line.online = true
    await clock.pass(31_000)

    expect(referee.state().attendance[ann]?.state).toBe('break')
  })
})

test('the next start shows the day before the network answers', async () => {
  const first = openPage()
  await clock.pass(6_000)
  first.close()
  line.online = false

  const page = openPage('next')
  await clock.pass(0)

  expect(page.view()).toMatchObject({ phase: 'in', signal: 'no_signal', me: { personName: 'Ann' } })
  expect(page.view().state?.orchard.name).toBe('Three Wells')
})

test('without signal on the first start it goes on asking', async () => {
  line.online = false
  const page = openPage()
  await clock.pass(0)
  expect(page.view()).toMatchObject({ phase: 'starting', signal: 'no_signal' })

  line.online = true
  await clock.pass(31_000)

  expect(page.view().phase).toBe('in')
})

test('another login on the same device sees nothing of the first', async () => {
  const first = openPage()
  await clock.pass(0)
  line.online = false
  await (await first.session())?.send('start_break', {})
  first.close()
  line.online = true
  user = 'somebody else'
  members = [bos]

  const page = openPage('next')
  await clock.pass(60_000)

  expect(page.view()).toMatchObject({ me: { personName: 'Bo' }, unsent: [] })
  expect(referee.log).toEqual([])
})

test('a link makes a newcomer somebody', async () => {
  user = null
  members = []
  const page = openPage()
  await clock.pass(0)
  expect(page.view().phase).toBe('nobody')
  const joined = { ...membership, personId: idOf('cy'), personName: 'Cy' }
  line.send = async (command) => {
    members = [joined]
    expect(command).toMatchObject({ name: 'redeem', args: { code: 'secret', name: 'Cy' } })
    return { ok: true, value: { n: 3, orchard: joined.orchardId, person: joined.personId } }
  }

  const sent = await page.redeem({ code: 'secret', name: 'Cy' })
  await clock.pass(0)

  expect(sent.state).toBe('accepted')
  expect(page.view()).toMatchObject({ phase: 'in', me: { personName: 'Cy' } })
})

test('a link that is over says so, and nobody is somebody else', async () => {
  user = null
  members = []
  const page = openPage()
  await clock.pass(0)
  line.send = async () => ({ ok: true, value: { refused: [{ code: 'code_expired' }] } })

  const sent = await page.redeem({ code: 'old', name: 'Cy' })

  expect(sent).toMatchObject({ state: 'refused', refused: [{ code: 'code_expired' }] })
  expect(page.view().phase).toBe('nobody')
})

test('who made an orchard and lost the answer gets in by trying again', async () => {
  user = null
  members = []
  const page = openPage()
  await clock.pass(0)
  line.send = async () => {
    const isUsed = members.length > 0
    members = [membership]
    return isUsed
      ? { ok: true, value: { refused: [{ code: 'code_used' }] } }
      : { ok: false, fault: 'unknown' }
  }
  const orchard = {
    name: 'W',
    personName: 'Mo',
    timeZone: 'UTC',
    language: 'en',
    units: 'us',
  } as const
  await page.createOrchard({ code: 'secret', ...orchard })

  await page.createOrchard({ code: 'secret', ...orchard })
  await clock.pass(0)

  expect(page.view()).toMatchObject({ phase: 'in', me: { personName: 'Ann' } })
})

test('somebody who was put out still has what is not sent after the page was opened anew twice', async () => {
  const page = openPage()
  await clock.pass(0)
  line.online = false
  await (await page.session())?.send('start_break', {})
  page.close()
  line.online = true
  referee.putOut('ann')
  members = []

  for (const name of ['second', 'third']) {
    const next = openPage(name)
    await clock.pass(61_000)
    expect(next.view()).toMatchObject({ phase: 'out' })
    expect(next.view().unsent).toHaveLength(1)
    next.close()
  }
})

test('somebody who was put out and has nothing left is nobody when the page is opened anew', async () => {
  const page = openPage()
  await clock.pass(6_000)
  referee.putOut('ann')
  members = []
  page.retry()
  await clock.pass(61_000)
  page.retry()
  await clock.pass(0)
  page.close()

  const next = openPage('next')
  await clock.pass(0)

  expect(next.view().phase).toBe('nobody')
})

test('what somebody waiting to be let in has not sent goes out once they are, whoever is chosen', async () => {
  members = [membership, bos]
  const page = openPage()
  await clock.pass(0)
  page.choose(membership.orchardId, ann)
  await clock.pass(0)
  line.online = false
  await (await page.session())?.send('start_break', {})
  page.choose(bos.orchardId, bo)
  line.online = true
  const { send, heartbeat } = line
  const waits = { ok: false, fault: 'not_allowed', code: 'not_admitted' } as const
  line.send = async () => waits
  line.heartbeat = async () => waits
  await clock.pass(61_000)

  Object.assign(line, { send, heartbeat })
  await clock.pass(61_000)

  expect(referee.state().attendance[ann]?.state).toBe('break')
})

test('somebody who was put out keeps what is not sent in sight', async () => {
  const page = openPage()
  await clock.pass(0)
  line.online = false
  await (await page.session())?.send('start_break', {})
  line.online = true
  referee.putOut('ann')
  members = []
  page.retry()
  await clock.pass(61_000)

  expect(page.view()).toMatchObject({ phase: 'out' })
  expect(page.view().unsent).toHaveLength(1)
})

test('a login that is gone is told from a device that never had one', async () => {
  const page = openPage()
  await clock.pass(0)
  user = null
  page.retry()
  await clock.pass(0)

  expect(page.view().phase).toBe('signed_out')
})

test('a draft is somebody’s own', async () => {
  members = [membership, bos]
  const page = openPage()
  await clock.pass(0)
  page.choose(membership.orchardId, ann)
  await page.drafts().write('flag 12', { note: 'Crack' })
  page.choose(bos.orchardId, bo)

  expect(await page.drafts().read('flag 12')).toBeUndefined()
  page.choose(membership.orchardId, ann)
  expect(await page.drafts().read('flag 12')).toEqual({ note: 'Crack' })
})

test('codes are made of 128 random bits, and only their hash is sent', () => {
  const [one, other] = [newCode(), newCode()]

  expect(one.code).toMatch(/^[A-Za-z0-9_-]{22}$/)
  expect(one.codeHash).toMatch(/^[0-9a-f]{64}$/)
  expect(one.code).not.toBe(other.code)
})
