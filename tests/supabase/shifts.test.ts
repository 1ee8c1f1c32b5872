/** Rounds and shifts: what opens, what is off, and what a lead must say before it closes. */

import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import {
  type Crew,
  codesOf,
  crewOfThree,
  faultOf,
  lastEvent,
  openShift,
  readyCrew,
} from '../support/orchard'

const day = {
  date: '2026-11-24',
  startsAt: '2026-11-24T08:00:00.000Z',
  endsAt: '2026-11-24T15:00:00.000Z',
}

describe.each(engines)('shifts on $name', ({ open }) => {
  let database: TestDatabase
  beforeAll(async () => {
    database = await open()
  }, 60_000)
  afterAll(() => database.close())

  async function scheduled({ lead, orchard }: Crew): Promise<string> {
    return (await lead.must('schedule_shift', { round: orchard.round, ...day })).command
  }

  test('a manager opens rounds, a lead does not, and the event carries the round', async () => {
    const { orchard, lead } = await crewOfThree(database)
    const summer = {
      kind: 'summer',
      season: 2027,
      species: ['plum'],
      from: '2027-06-01',
      to: '2027-08-01',
    }

    expect(faultOf(await lead.send('open_round', summer))).toBe('403 not_allowed')
    const { command } = await orchard.manager.must('open_round', summer)

    expect((await lastEvent(orchard)).body).toEqual({ round: command, ...summer })
  })

  test.each([
    { species: [] },
    { species: ['stone'] },
    { species: [null] },
    { season: 20260 },
    { from: '2027-09-01' },
    { from: '-infinity' },
    { kind: 'spring' },
  ])('a round with %j is malformed', async (wrong) => {
    const { orchard } = await crewOfThree(database)
    const args = { kind: 'winter', season: 2026, species: ['plum'], from: '2026-11-01' }
    expect(
      faultOf(await orchard.manager.send('open_round', { ...args, to: '2027-08-01', ...wrong }))
    ).toBe('400 malformed')
  })

  test('a shift opens with a briefing and in an open round, and everything missing is said', async () => {
    const crew = await crewOfThree(database)
    const { lead, orchard } = crew
    const shift = await scheduled(crew)

    expect(codesOf(await lead.send('open_shift', { shift }))).toEqual(['briefing_missing'])
    expect(
      await database.asOwner('select state from public.shifts where id = $1', [shift])
    ).toEqual([{ state: 'scheduled' }])
    await orchard.manager.must('close_round', { round: orchard.round, callOff: [shift] })
    expect(codesOf(await lead.send('schedule_shift', { round: orchard.round, ...day }))).toEqual([
      'round_closed',
    ])
  })

  test('one shift is open at a time, and its round stays open', async () => {
    const crew = await crewOfThree(database)
    const { lead, orchard } = crew
    await openShift(crew)
    const second = await scheduled(crew)
    await lead.must('write_briefing', { shift: second, topics: [{ code: 'wasps' }] })

    expect(codesOf(await lead.send('open_shift', { shift: second }))).toEqual(['shift_open'])
    expect(codesOf(await orchard.manager.send('close_round', { round: orchard.round }))).toEqual([
      'shift_open',
    ])
  })

  test('a round is not closed over a planned shift that nobody called off, and a closed one opens again', async () => {
    const crew = await crewOfThree(database)
    const { orchard } = crew
    const [first, second] = [await scheduled(crew), await scheduled(crew)]
    const states = () =>
      database.asOwner('select id, state from public.shifts where orchard_id = $1', [orchard.id])

    const half = await orchard.manager.send('close_round', {
      round: orchard.round,
      callOff: [first],
    })

    expect(codesOf(half)).toEqual(['shifts_planned'])
    expect(half.body.refused?.[0]?.detail?.shifts).toEqual(expect.arrayContaining([first, second]))
    expect((await states()).map(({ state }) => state)).toEqual(['scheduled', 'scheduled'])

    await orchard.manager.must('close_round', { round: orchard.round, callOff: [first, second] })

    expect((await states()).map(({ state }) => state)).toEqual(['cancelled', 'cancelled'])
    expect((await lastEvent(orchard)).body).toMatchObject({
      calledOff: expect.arrayContaining([first, second]),
    })
    await orchard.manager.must('reopen_round', { round: orchard.round })
    expect(await crew.lead.must('schedule_shift', { round: orchard.round, ...day })).toBeTruthy()
  })

  test('a closed round keeps no tree for anybody', async () => {
    const { orchard, lead, ann } = await crewOfThree(database)
    await lead.must('deal_trees', { trees: [3, 4], to: [ann.id] })

    await orchard.manager.must('close_round', { round: orchard.round })

    expect((await lastEvent(orchard)).body).toEqual({ round: orchard.round, dealsEnded: [3, 4] })
  })

  test.each([
    { endsAt: day.startsAt },
    { endsAt: '2026-11-26T15:00:00Z' },
    { endsAt: 'infinity' },
    { date: 'infinity' },
    { signal: 'drum' },
  ])('a shift with %j is malformed', async (wrong) => {
    const { orchard, lead } = await crewOfThree(database)
    expect(
      faultOf(await lead.send('schedule_shift', { round: orchard.round, ...day, ...wrong }))
    ).toBe('400 malformed')
  })

  test('a species is off at the opening or later, with a reason, and on again', async () => {
    const crew = await crewOfThree(database)
    const { lead, orchard, ann } = crew
    const shift = await scheduled(crew)
    await lead.must('write_briefing', { shift, topics: [{ code: 'ladders' }] })
    await lead.must('open_shift', { shift, off: { apple: 'lead' } })
    const off = async () => {
      const state = (await lead.read('snapshot', { person: lead.id })) as {
        shifts: Record<string, { off: unknown }>
      }
      return state.shifts[shift]?.off
    }
    // November is not their season, whatever the lead says.
    expect(await off()).toEqual({ apple: 'lead', cherry: 'season' })

    await lead.must('set_off_today', { what: 'ladder', reason: 'wind' })
    await lead.must('set_off_today', { what: 'apple', reason: null })

    expect((await lastEvent(orchard)).body).toEqual({ shift, what: 'apple' })
    expect(await off()).toEqual({ ladder: 'wind', cherry: 'season' })
    expect(faultOf(await ann.send('set_off_today', { what: 'ladder' }))).toBe('403 not_allowed')
    expect(faultOf(await lead.send('set_off_today', { what: 'ladder', reason: 'mood' }))).toBe(
      '400 malformed'
    )
  })

  test('a shift does not close on people, trees and tools that nobody speaks for', async () => {
    const { lead, ann, bo, shift } = await readyCrew(database)
    const { command: claim } = await ann.must('claim_tree', { tree: 5 })

    const refused = await lead.send('close_shift')
    const half = await lead.send('close_shift', {
      why: { people: { [lead.id]: 'here', [ann.id]: 'went to the car' }, tools: { 1: 'broken' } },
    })

    expect(refused.body.refused).toEqual([
      { code: 'still_signed_in', detail: { people: [lead.id, ann.id, bo.id] } },
      { code: 'trees_held', detail: { claims: [claim], trees: [5] } },
      { code: 'tools_out', detail: { tools: [1, 2] } },
    ])
    expect(half.body.refused).toEqual([
      { code: 'still_signed_in', detail: { people: [bo.id] } },
      { code: 'trees_held', detail: { claims: [claim], trees: [5] } },
      { code: 'tools_out', detail: { tools: [2] } },
    ])
    expect(
      await database.asOwner('select state from public.shifts where id = $1', [shift])
    ).toEqual([{ state: 'open' }])
  })

  test('with a reason for each it closes: trees are begun, tools back, people out, deals over', async () => {
    const { lead, ann, bo, orchard, shift } = await readyCrew(database)
    const { command: claim } = await ann.must('claim_tree', { tree: 5 })
    await lead.must('deal_trees', { trees: [9], to: [bo.id] })
    const why = {
      people: { [lead.id]: 'locks the gate', [ann.id]: 'went home', [bo.id]: 'went home' },
      claims: { [claim]: 'dusk' },
      tools: { 1: 'in the van', 2: 'in the van' },
    }

    const closed = await lead.must('close_shift', { why })

    expect((await lastEvent(orchard)).body).toEqual({
      shift,
      left: [lead.id, ann.id, bo.id],
      claimsEnded: [claim],
      work: [[5, 'begun', null]],
      returned: [1, 2],
      dealsEnded: [9],
    })
    const [left] = await database.asOwner(
      'select left_why, left_by from public.attendances where person_id = $1',
      [ann.id]
    )
    expect(left).toEqual({ left_why: 'went home', left_by: lead.id })
    expect(
      await database.asOwner('select returned_why from public.tool_holdings where person_id = $1', [
        ann.id,
      ])
    ).toEqual([{ returned_why: 'in the van' }])
    expect(
      await database.asOwner(
        `select v.result, v.note, c.ended_note from public.visits v join public.claims c on c.id = v.claim_id
         where c.id = $1`,
        [claim]
      )
    ).toEqual([{ result: 'begun', note: null, ended_note: 'dusk' }])
    // Words about people are in no event.
    expect(
      await database.asOwner(
        `select n from public.events where orchard_id = $1 and concat(body, lead_body) ~ 'went home|dusk'`,
        [orchard.id]
      )
    ).toEqual([])

    const again = await lead.send('close_shift', { why }, closed.command)
    expect(again.body).toEqual(closed.body)
    expect(codesOf(await lead.send('close_shift', { why }))).toEqual(['shift_not_open'])
    expect(codesOf(await lead.send('open_shift', { shift }))).toEqual(['shift_closed'])
  })

  test('a tree that was half done before keeps its share when the shift closes on it', async () => {
    const { lead, ann, bo, orchard } = await readyCrew(database)
    const { command: first } = await ann.must('claim_tree', { tree: 5 })
    await ann.must('release_tree', { claim: first, tree: 5, share: 40 })
    const { command: claim } = await ann.must('claim_tree', { tree: 5 })

    await lead.must('close_shift', {
      why: {
        people: { [lead.id]: 'x', [ann.id]: 'x', [bo.id]: 'x' },
        claims: { [claim]: 'x' },
        tools: { 1: 'x', 2: 'x' },
      },
    })

    expect((await lastEvent(orchard)).body).not.toHaveProperty('work')
    expect(
      await database.asOwner(
        'select state, share from public.tree_work where orchard_id = $1 and tree_no = 5',
        [orchard.id]
      )
    ).toEqual([{ state: 'begun', share: 40 }])
  })

  test.each([
    [{ people: { someone: '' } }],
    [{ people: { someone: 'x'.repeat(301) } }],
    [{ people: ['someone'] }],
    [{ dogs: {} }],
    [[]],
    ['gone'],
  ])('a why of %j is malformed', async (why) => {
    const { lead } = await readyCrew(database)
    expect(faultOf(await lead.send('close_shift', { why }))).toBe('400 malformed')
  })

  test('another orchard’s shift and round are no such shift and round', async () => {
    const here = await crewOfThree(database)
    const there = await crewOfThree(database)
    const shift = await scheduled(there)

    const asked = [
      await here.lead.send('open_shift', { shift }),
      await here.lead.send('write_briefing', { shift, topics: [{ code: 'ladders' }] }),
      await here.lead.send('schedule_shift', { round: there.orchard.round, ...day }),
      await here.orchard.manager.send('close_round', { round: there.orchard.round }),
      await here.lead.for({ id: randomUUID() }).send('arrive'),
    ]

    expect(asked.map(faultOf)).toEqual([
      '404 no_such_shift',
      '404 no_such_shift',
      '404 no_such_round',
      '404 no_such_round',
      '404 no_such_person',
    ])
  })
})
