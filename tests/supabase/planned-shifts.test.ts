/** A planned shift changes or is called off; an open one does not. */

import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import {
  codesOf,
  crewOfThree,
  faultOf,
  lastEvent,
  newCode,
  openShift,
  readyCrew,
  sendAs,
  sha256,
} from '../support/orchard'

const first = {
  date: '2026-11-24',
  startsAt: '2026-11-24T08:00:00.000Z',
  endsAt: '2026-11-24T15:00:00.000Z',
}
const later = {
  date: '2026-11-25',
  startsAt: '2026-11-25T09:00:00.000Z',
  endsAt: '2026-11-25T13:00:00.000Z',
  signal: 'whistle',
}

describe.each(engines)('planned shifts on $name', ({ open }) => {
  let database: TestDatabase
  beforeAll(async () => {
    database = await open()
  }, 60_000)
  afterAll(() => database.close())

  test('day, hours and signal change, and what was written for it stays', async () => {
    const { orchard, lead, ann } = await crewOfThree(database)
    const { command: shift } = await lead.must('schedule_shift', { round: orchard.round, ...first })
    await lead.must('write_briefing', { shift, topics: [{ code: 'ladders' }] })

    expect(faultOf(await ann.send('change_shift', { shift, ...later }))).toBe('403 not_allowed')
    await lead.must('change_shift', { shift, ...later })

    expect((await lastEvent(orchard)).body).toEqual({ shift, ...later })
    const told = (await ann.read('snapshot', { person: ann.id })) as {
      shifts: Record<string, unknown>
    }
    expect(told.shifts[shift]).toMatchObject({ ...later, state: 'scheduled', briefingVersion: 1 })
  })

  test('hours out of order are malformed, as when it was planned', async () => {
    const { orchard, lead } = await crewOfThree(database)
    const { command: shift } = await lead.must('schedule_shift', { round: orchard.round, ...first })

    const turned = { ...later, startsAt: later.endsAt, endsAt: later.startsAt }
    expect(faultOf(await lead.send('change_shift', { shift, ...turned }))).toBe('400 malformed')
  })

  test('called off it is gone from every phone, its links end, and nothing is planned in it', async () => {
    const { orchard, lead, ann } = await crewOfThree(database)
    const { command: shift } = await lead.must('schedule_shift', { round: orchard.round, ...first })
    const code = newCode()
    await lead.must('make_invite', { kind: 'join', shift, codeHash: sha256(code) })

    expect(faultOf(await ann.send('cancel_shift', { shift }))).toBe('403 not_allowed')
    await lead.must('cancel_shift', { shift })

    expect((await lastEvent(orchard)).body).toEqual({ shift })
    const told = (await ann.read('snapshot', { person: ann.id })) as { shifts: object }
    expect(told.shifts).toEqual({})
    const newcomer = await database.newUser()
    const joining = { code, name: 'Nia', ageBand: 'adult' }
    expect(codesOf(await sendAs(database, newcomer, 'redeem', joining))).toEqual(['code_expired'])
    for (const [name, args] of [
      ['open_shift', { shift }],
      ['write_briefing', { shift, topics: [{ code: 'ladders' }] }],
      ['change_shift', { shift, ...later }],
      ['cancel_shift', { shift }],
      ['make_invite', { kind: 'join', shift, codeHash: sha256(newCode()) }],
    ] as const) {
      expect(codesOf(await lead.send(name, args)), name).toEqual(['shift_cancelled'])
    }
  })

  test('an open shift is neither, and a closed one neither', async () => {
    const crew = await crewOfThree(database)
    const { lead } = crew
    const shift = await openShift(crew)

    expect(codesOf(await lead.send('cancel_shift', { shift }))).toEqual(['shift_open'])
    expect(codesOf(await lead.send('change_shift', { shift, ...later }))).toEqual(['shift_open'])
    await lead.must('close_shift')
    expect(codesOf(await lead.send('cancel_shift', { shift }))).toEqual(['shift_closed'])
  })

  test('late work belongs to a shift that was held, not to one called off after it', async () => {
    const { orchard, lead, ann, bo, shift } = await readyCrew(database)
    const { command: second } = await lead.must('schedule_shift', {
      round: orchard.round,
      ...later,
    })
    await lead.must('deal_trees', { trees: [7], to: [ann.id] })
    const begunAt = new Date().toISOString()
    await lead.must('close_shift', {
      why: {
        people: Object.fromEntries([lead, ann, bo].map(({ id }) => [id, 'went home'])),
        tools: { 1: 'in the van', 2: 'in the van' },
      },
    })
    await lead.must('cancel_shift', { shift: second })

    await ann.must('finish_tree', { tree: 7, begunAt })

    expect(
      await database.asOwner(
        'select shift_id from public.visits where tree_no = 7 and orchard_id = $1',
        [orchard.id]
      )
    ).toEqual([{ shift_id: shift }])
  })
})
