import { beforeEach, describe, expect, test } from 'vitest'

import { myDealtTrees, myTree } from '@/lib/state/me'
import { nameOf } from '@/lib/state/people'

import { ann, bo, idOf } from '../events/a-state'
import { type FakeClock, fakeClock } from '../sync/fakes/clock'
import { type Line, openReferee, type Referee } from '../sync/fakes/referee'
import { aDevice, dealTo, openPhone } from './a-phone'

let clock: FakeClock
let referee: Referee
let line: Line

beforeEach(() => {
  clock = fakeClock()
  referee = openReferee(clock)
  line = referee.line('ann')
})

test('a phone shows the day, the trees and the names', async () => {
  const phone = openPhone(clock, line)
  await clock.pass(0)

  const view = phone.view()
  expect(view).toMatchObject({ phase: 'in', signal: 'reached', outOfTouchSince: null })
  expect(view.state?.me.personId).toBe(ann)
  expect(view.ground.trees.get(1)).toMatchObject({ species: 'apple', plantedYear: 1999 })
  expect(nameOf(view, ann)).toBe('Ann')
})

test('a name that is forgotten is dropped at once', async () => {
  const everybody: Record<string, string> = { [ann]: 'Ann', [bo]: 'Bo' }
  const phone = openPhone(clock, line, aDevice(clock), 'phone', undefined, everybody)
  await clock.pass(0)
  expect(nameOf(phone.view(), bo)).toBe('Bo')

  delete everybody[bo]
  referee.happen('person_forgotten', { person: bo })
  await clock.pass(0)
  expect(nameOf(phone.view(), bo)).toBeNull()
})

test('a phone that begins anew after a restore drops a name that it did not hear to be forgotten', async () => {
  const device = aDevice(clock)
  const everybody: Record<string, string> = { [ann]: 'Ann', [bo]: 'Bo' }
  const before = openPhone(clock, line, device, 'before', undefined, everybody)
  await clock.pass(0)
  expect(nameOf(before.view(), bo)).toBe('Bo')
  before.close()

  delete everybody[bo]
  referee.restore(3)
  const away = openPhone(clock, line, device, 'away', undefined, everybody)
  await clock.pass(0)
  expect(nameOf(away.view(), bo)).toBeNull()
  expect(nameOf(away.view(), ann)).toBe('Ann')
})

test('the emergency card comes again when it was written anew, and is there without signal', async () => {
  const device = aDevice(clock)
  let card = { version: 0, epoch: idOf('epoch'), card: {} }
  const phone = openPhone(clock, line, device, 'phone', () => card)
  await clock.pass(0)
  expect(phone.view().emergency).toEqual({})

  card = { ...card, version: 1, card: { number: '112' } }
  referee.happen('orchard_changed', { emergencyVersion: 1 })
  await clock.pass(0)
  expect(phone.view().emergency).toEqual({ number: '112' })

  phone.close()
  line.online = false
  const again = openPhone(clock, line, device, 'again')
  await clock.pass(0)
  expect(again.view().emergency).toEqual({ number: '112' })
})

test('an emergency card that did not come is asked for again, though nothing happens', async () => {
  let isReached = false
  const card = { version: 1, epoch: idOf('epoch'), card: { number: '112' } }
  referee.happen('orchard_changed', { emergencyVersion: 1 })
  const phone = openPhone(clock, line, aDevice(clock), 'phone', () => (isReached ? card : null))
  await clock.pass(0)
  expect(phone.view().emergency).toBeNull()

  isReached = true
  await clock.pass(60_000)

  expect(phone.view().emergency).toEqual({ number: '112' })
})

test('after a restore the same version is read again, since it may say something else', async () => {
  const device = aDevice(clock)
  const before = { version: 0, epoch: idOf('another epoch'), card: { number: '1' } }
  openPhone(clock, line, device, 'before', () => before)
  await clock.pass(0)
  const after = { ...before, epoch: idOf('epoch'), card: { number: '112' } }
  const phone = openPhone(clock, line, device, 'after', () => after)
  await clock.pass(0)

  expect(phone.view().emergency).toEqual({ number: '112' })
})

test('a claim is asked, not expected, and seen when the referee has decided', async () => {
  const phone = openPhone(clock, line)
  await clock.pass(0)
  line.broadcasts = 'are lost'

  const sending = phone.send('claim_tree', { tree: 1 })
  expect(phone.view().asking).toEqual(['claim_tree'])
  expect(myTree(phone.view()).state).toBe('none')
  const sent = await sending
  await clock.pass(0)

  expect(sent).toMatchObject({ state: 'accepted', answer: { n: 1 } })
  expect(myTree(phone.view())).toMatchObject({ state: 'held', tree: 1, isHolder: true })
  expect(phone.view().asking).toEqual([])
})

test('a claim waits until the referee knows what was done before', async () => {
  const phone = openPhone(clock, line)
  await clock.pass(0)
  line.answersToLose = 1
  await phone.send('start_break', {})
  await phone.send('end_break', {})

  const sending = phone.send('claim_tree', { tree: 1 })
  await clock.pass(100)
  expect(referee.log).toEqual(['start_break from ann: n 1'])
  line.answersToLose = 0
  phone.wake()
  await clock.pass(8_000)

  // The first answer was lost for eight seconds, as long as anybody waits for a claim.
  expect((await sending).state).toBe('no_answer')
  await clock.pass(2_000)
  expect(referee.log).toEqual(['start_break from ann: n 1', 'end_break from ann: n 2'])
  expect((await phone.send('claim_tree', { tree: 1 })).state).toBe('accepted')
})

test('work that came too late is told to whoever did it', async () => {
  const phone = openPhone(clock, line)
  await clock.pass(0)
  const work = { tree: 1, claim: idOf('ended'), begunAt: null, at: null, elapsedS: null }

  await phone.send('finish_tree', work)
  await clock.pass(2_000)

  expect(phone.view().unsent).toEqual([])
  expect(phone.view().cameInOtherwise).toMatchObject([
    { command: { name: 'finish_tree', args: { tree: 1 } }, answer: { kept: 'also_worked' } },
  ])
})

test('a claim without signal says plainly that there was no answer', async () => {
  const phone = openPhone(clock, line)
  await clock.pass(0)
  line.online = false

  const sending = phone.send('claim_tree', { tree: 1 })
  await clock.pass(8_100)

  expect((await sending).state).toBe('no_answer')
  line.online = true
  await clock.pass(120_000)
  expect(referee.log).toEqual([])
})

test('what the phone knows to be refused is said at once and not kept', async () => {
  const phone = openPhone(clock, line)
  await clock.pass(0)

  const sent = await phone.send('arrive', {})

  expect(sent).toMatchObject({ state: 'refused', refused: [{ code: 'already_here' }] })
  expect(phone.view().unsent).toEqual([])
})

test('out of touch it is kept all the same: the phone may be wrong about the day', async () => {
  const phone = openPhone(clock, line)
  await clock.pass(0)
  line.online = false
  await clock.pass(61_000)
  expect(phone.view().signal).toBe('no_signal')

  const sent = await phone.send('arrive', {})

  expect(sent.state).toBe('kept')
  expect(phone.view().unsent).toHaveLength(1)
})

test('an hour without signal in a dealt tree comes in with its times', async () => {
  const phone = openPhone(clock, line)
  await clock.pass(0)
  dealTo(referee, 2)
  await clock.pass(0)
  expect(myDealtTrees(phone.view())).toEqual([2])
  line.online = false
  line.dropChannels()

  expect(await phone.begin(3)).toBe('not_dealt')
  expect(await phone.begin(2)).toBe('begun')
  expect(myTree(phone.view())).toMatchObject({ state: 'not_confirmed', tree: 2 })
  const begunAt = new Date(clock.now()).toISOString()
  await clock.pass(3600_000)
  const work = phone.workArgs(2)
  expect(work).toMatchObject({ claim: null, tree: 2, begunAt, elapsedS: 3600 })
  await phone.send('finish_tree', work)
  expect(myTree(phone.view()).state).toBe('none')
  expect(phone.view().state?.work[2]?.state).toBe('done')
  expect(referee.log).toEqual([])

  line.online = true
  await clock.pass(31_000)

  expect(referee.log).toEqual(['finish_tree from ann: n 2'])
  expect(referee.state().work[2]?.state).toBe('done')
  expect(phone.view()).toMatchObject({ unsent: [], signal: 'reached', begun: null })
})

test('a begun tree outlives the page, and a claim that comes after all takes its place', async () => {
  const device = aDevice(clock)
  const first = openPhone(clock, line, device)
  await clock.pass(0)
  dealTo(referee, 2)
  await clock.pass(0)
  await first.begin(2)
  first.close()

  const phone = openPhone(clock, line, device, 'page 2')
  await clock.pass(0)
  expect(myTree(phone.view()).state).toBe('not_confirmed')
  await phone.send('claim_tree', { tree: 2 })
  await clock.pass(0)

  expect(myTree(phone.view()).state).toBe('held')
  expect(phone.view().begun).toBeNull()
})

describe('the next start', () => {
  test('without signal shows the last state with what was not sent', async () => {
    const device = aDevice(clock)
    const first = openPhone(clock, line, device)
    await clock.pass(6_000)
    line.online = false
    await first.send('start_break', {})
    first.close()

    const phone = openPhone(clock, line, device, 'page 2')
    await clock.pass(0)

    const view = phone.view()
    expect(view).toMatchObject({ phase: 'in', signal: 'no_signal' })
    expect(view.state?.attendance[ann]?.state).toBe('break')
    expect(view.confirmed?.attendance[ann]?.state).toBe('here')
    expect(view.ground.trees.size).toBe(4)
    expect(nameOf(view, ann)).toBe('Ann')
  })

  test('after the page was killed on a busy day shows how it was some seconds before', async () => {
    const device = aDevice(clock)
    openPhone(clock, line, device)
    for (let second = 0; second < 12; second++) {
      referee.happen(second % 2 ? 'break_ended' : 'break_started', {}, { personId: ann })
      await clock.pass(1_000)
    }
    line.online = false

    const phone = openPhone(clock, line, device, 'page 2')
    await clock.pass(0)

    expect(phone.view().phase).toBe('in')
    expect(phone.view().state?.head).toBeGreaterThanOrEqual(6)
  })

  test('after the page was put away shows how it was then', async () => {
    const device = aDevice(clock)
    const first = openPhone(clock, line, device)
    await clock.pass(0)
    referee.happen('break_started', {}, { personId: ann })
    await clock.pass(0)
    first.rest()
    line.online = false

    const phone = openPhone(clock, line, device, 'page 2')
    await clock.pass(0)

    expect(phone.view().state?.attendance[ann]?.state).toBe('break')
  })

  test('does not play again what is in the state already', async () => {
    const device = aDevice(clock)
    const first = openPhone(clock, line, device)
    await clock.pass(0)
    // Taken, heard by broadcast, and the answer lost; then somebody ends the break.
    line.answersToLose = 1
    await first.send('start_break', {})
    await clock.pass(0)
    referee.happen('break_ended', {}, { personId: ann })
    await clock.pass(6_000)
    line.online = false
    first.close()

    const phone = openPhone(clock, line, device, 'page 2')
    await clock.pass(0)

    expect(phone.view().unsent).toHaveLength(1)
    expect(phone.view().state?.attendance[ann]?.state).toBe('here')
  })
})

test('how long one is out of touch counts from the last word', async () => {
  const phone = openPhone(clock, line)
  await clock.pass(0)
  line.online = false
  await clock.pass(20 * 60_000)

  const since = Date.parse(phone.view().outOfTouchSince ?? '')
  const minutes = (clock.now() - since) / 60_000
  expect(minutes).toBeGreaterThanOrEqual(19)
  expect(minutes).toBeLessThanOrEqual(20)
})

test('times are said by the referee’s clock', async () => {
  const phone = openPhone(clock, line)
  await clock.pass(60_000)
  expect(phone.view().skewMs).toBe(90_000)

  expect(Date.parse(phone.workArgs(1).at ?? '') - clock.now()).toBe(90_000)
})

test('somebody who was put out hands in what was not sent, once, and the photos stay on the device', async () => {
  const handedIn: unknown[] = []
  const ids: string[] = []
  let isLost = true
  const phone = openPhone(clock, {
    ...line,
    send: async (command, limitMs) => {
      if (command.name !== 'hand_in') return line.send(command, limitMs)
      ids.push(command.id)
      if (isLost) return { ok: false, fault: 'unknown' }
      handedIn.push(...command.args.work)
      return { ok: true, value: { n: 99 } }
    },
  })
  await clock.pass(0)
  referee.putOut('ann')
  await phone.send('start_break', {})
  await phone.send('add_photo', { purpose: 'before', jpeg: '/9j/' })
  await clock.pass(61_000)
  expect(phone.view().phase).toBe('out')
  expect(phone.view().unsent).toHaveLength(2)

  expect(await phone.handIn()).toMatchObject({ state: 'failed' })
  isLost = false
  expect(await phone.handIn()).toMatchObject({ state: 'accepted' })

  // Under another id it would be a second one, which is refused.
  expect(new Set(ids).size).toBe(1)
  expect(handedIn).toMatchObject([{ name: 'start_break', personId: ann }])
  expect(phone.view().unsent).toMatchObject([{ command: { name: 'add_photo' } }])
})

test('an old page asks to be loaded again, but not before all is sent', async () => {
  const phone = openPhone(clock, line)
  await clock.pass(0)
  line.online = false
  await phone.send('start_break', {})
  const heartbeat = {
    head: 0,
    epoch: referee.state().epoch,
    channelEpoch: 1,
    minClient: 1_000,
    now: new Date(clock.now()).toISOString(),
  }
  line.heartbeat = async () => ({ ok: true, value: heartbeat })
  await clock.pass(60_000)
  expect(phone.view().reloadWanted).toBe(false)

  line.online = true
  await clock.pass(31_000)

  expect(phone.view()).toMatchObject({ unsent: [], reloadWanted: true })
})

test('a view that did not change is not drawn again', async () => {
  const phone = openPhone(clock, line)
  await clock.pass(0)
  const before = phone.drawn.length
  for (let beat = 0; beat < 10; beat++) line.frame()
  await clock.pass(60_000)
  const drawn = phone.drawn.length - before

  // The first heartbeat measures the clocks.
  expect(drawn).toBeLessThanOrEqual(1)
  expect(bo).not.toBe(idOf('ann'))
})
