/** What a lead does for and about people in mid-shift: handing on, counting, what came in otherwise. */

import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import {
  codesOf,
  crewOfThree,
  faultOf,
  lastEvent,
  type Orchard,
  openShift,
  type Person,
  readyCrew,
} from '../support/orchard'

describe.each(engines)('people of the day on $name', ({ open }) => {
  let db: TestDatabase
  beforeAll(async () => {
    db = await open()
  }, 60_000)
  afterAll(() => db.close())

  const asksSaw = (orchard: Orchard, tree: number) =>
    db.asOwner('update trees set asks_saw = true where orchard_id = $1 and no = $2', [
      orchard.id,
      tree,
    ])

  /** With the skill and a saw in hand, so that only company is missing. */
  async function mayUseTheSaw(lead: Person, person: Person): Promise<void> {
    await lead.must('grant_skill', { subject: person.id, skill: 'hand_saw' })
    const { body } = await lead.must('add_tool', { label: randomUUID().slice(0, 8), kind: 'saw' })
    await person.must('take_tool', { tool: body.tool, failedItems: [] })
  }

  test('a lead who hands on somebody’s tree says how they were reached; the holder need not', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })

    expect(faultOf(await lead.for(ann).send('hand_over', { claim, to: bo.id }))).toBe(
      '400 malformed'
    )
    await lead.for(ann).must('hand_over', { claim, to: bo.id, howReached: 'By phone' })
    await bo.must('hand_over', { claim, to: ann.id })

    expect(
      await db.asOwner(
        'select person_id as person, how_reached as how from claim_people where claim_id = $1 order by from_at, to_at nulls last',
        [claim]
      )
    ).toEqual([
      { person: ann.id, how: 'By phone' },
      { person: bo.id, how: null },
      { person: ann.id, how: null },
    ])
  })

  test('a buddy is an adult of the crew, here and not on a break', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    const kid = await lead.adds('Kid', { ageBand: 'minor', guardian: bo.id })
    const guest = await lead.adds('Guest', { role: 'visitor' })
    await kid.must('arrive')
    await guest.must('arrive')
    await asksSaw(orchard, 3)
    await mayUseTheSaw(lead, ann)
    const claiming = (buddy: Person) => ann.send('claim_tree', { tree: 3, buddy: buddy.id })

    expect(codesOf(await claiming(kid))).toEqual(['buddy_not_fit'])
    expect(codesOf(await claiming(guest))).toEqual(['buddy_not_fit'])
    await bo.must('start_break')
    expect(codesOf(await claiming(bo))).toEqual(['buddy_not_here'])
    await bo.must('end_break')
    expect(codesOf(await claiming(bo))).toEqual([])
  })

  test('only a break of ten minutes is a rest, from whichever side it comes', async () => {
    const { orchard, lead, bo, shift } = await readyCrew(db)
    const minute = 60_000
    const arrived = Date.now() - 90 * minute
    await db.asOwner(
      'update attendances set arrived_at = $3 where shift_id = $1 and person_id = $2',
      [shift, bo.id, new Date(arrived).toISOString()]
    )
    const restedAt = async () => {
      const told = (await lead.read('snapshot', { person: lead.id })) as {
        attendance: Record<string, { restedAt: string }>
      }
      return told.attendance[bo.id]?.restedAt
    }
    const rests = async (from: number, to: number) => {
      await bo.must('start_break', { at: new Date(arrived + from * minute).toISOString() })
      await bo.must('end_break', { at: new Date(arrived + to * minute).toISOString() })
    }

    expect(await restedAt()).toBe(new Date(arrived).toISOString())
    await rests(20, 29)
    expect(await restedAt()).toBe(new Date(arrived).toISOString())
    await rests(40, 50)
    expect(await restedAt()).toBe(new Date(arrived + 50 * minute).toISOString())
    await rests(60, 62)
    expect(await restedAt()).toBe(new Date(arrived + 50 * minute).toISOString())
    expect((await lastEvent(orchard)).kind).toBe('break_ended')
  })

  test('who takes over a saw tree from the one whose buddy they were needs other company', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    await asksSaw(orchard, 3)
    await mayUseTheSaw(lead, ann)
    await mayUseTheSaw(lead, bo)
    const { command: claim } = await ann.must('claim_tree', { tree: 3, buddy: bo.id })

    expect(codesOf(await ann.send('hand_over', { claim, to: bo.id }))).toEqual([
      'two_people_needed',
    ])
  })

  test('a skill holds to the end of its last day where the orchard is, whatever day the shift is of', async () => {
    const { orchard, lead, ann } = await readyCrew(db)
    const day = async (zone: string) => {
      await db.asOwner('update orchards set time_zone = $2 where id = $1', [orchard.id, zone])
      const [row] = await db.asOwner('select private.today($1)::text as today', [orchard.id])
      return String(row?.today)
    }
    const until = async (last: string) => {
      await lead.must('grant_skill', { subject: ann.id, skill: 'prunes_alone', until: last })
      return codesOf(await ann.send('claim_tree', { tree: 3 }))
    }
    const dayBefore = (date: string) =>
      new Date(Date.parse(date) - 24 * 3_600_000).toISOString().slice(0, 10)
    // Kiritimati is a day ahead of Pago Pago at every hour.
    const ahead = await day('Pacific/Kiritimati')
    await db.asOwner('update shifts set on_date = $2 where orchard_id = $1', [
      orchard.id,
      dayBefore(ahead),
    ])

    expect(await until(dayBefore(ahead))).toEqual(['not_marked'])
    await day('Pacific/Pago_Pago')
    expect(await until(dayBefore(ahead))).toEqual([])
  })

  test('an answer to a stop says whether the phone gave it or a lead saw them', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    const di = await lead.adds('Di')
    await lead.for(di).must('arrive')
    const { command: stop } = await bo.must('stop_work')

    await ann.must('answer_stop', { stop })
    await lead.for(di).must('answer_stop', { stop })
    await lead.for(bo).must('answer_stop', { stop })
    await bo.must('answer_stop', { stop })

    const state = (await ann.read('snapshot', { person: ann.id })) as {
      stops: Record<string, { answers: unknown; seenBy: unknown }>
    }
    expect(state.stops[stop]).toMatchObject({
      answers: { [ann.id]: 'stopped', [di.id]: 'stopped', [bo.id]: 'stopped' },
      seenBy: { [di.id]: lead.id, [bo.id]: lead.id },
    })
  })

  test('whom nobody found when the shift closed stays on the leads’ list until they are', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    const here = [lead, ann, bo].map(({ id }) => id)
    const tools = await db.asOwner<{ no: number }>(
      'select tool_no as no from tool_holdings where orchard_id = $1 and returned_at is null',
      [lead.orchardId]
    )
    const why = {
      people: Object.fromEntries(here.map((id) => [id, 'looked for'])),
      claims: {},
      tools: Object.fromEntries(tools.map(({ no }) => [no, 'lost'])),
    }
    const listed = async (person: Person) =>
      ((await person.read('snapshot', { person: person.id })) as { notFound: object }).notFound

    const { command } = await lead.must('close_shift', { why, notFound: [bo.id] })

    expect(command).toBeDefined()
    expect(Object.keys(await listed(lead))).toEqual([bo.id])
    expect(await listed(ann)).toEqual({})
    await lead.must('found_person', { subject: bo.id })
    expect(await listed(lead)).toEqual({})
  })

  test('only who was not signed out can be not found, and without a why the shift stays open', async () => {
    const { orchard, lead, ann } = await crewOfThree(db)
    await openShift({ orchard, lead })
    await lead.must('arrive')

    const silent = await lead.send('close_shift', { notFound: [lead.id] })
    await lead.must('close_shift', {
      why: { people: { [lead.id]: 'closes' }, claims: {}, tools: {} },
      notFound: [ann.id],
    })

    expect(codesOf(silent)).toEqual(['still_signed_in'])
    expect((await lastEvent(orchard)).leadBody).toBeNull()
  })

  test('work begun without a claim is kept, and a lead sees what would have refused it', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    await lead.must('deal_trees', { trees: [8, 9], to: [ann.id] })
    await asksSaw(orchard, 8)

    await ann.must('finish_tree', { tree: 8, begunAt: new Date().toISOString() })
    await ann.must('finish_tree', { tree: 9, begunAt: new Date().toISOString() })

    expect(await lead.read('came_in')).toMatchObject({
      visits: [
        { tree: 9, person: ann.id, withoutClaim: true, late: false, lacked: [] },
        {
          tree: 8,
          withoutClaim: true,
          lacked: ['no_saw_in_hand', 'skill_missing', 'two_people_needed'],
        },
      ],
      handIns: [],
    })
    expect(await bo.read('came_in')).toMatchObject({ details: 'not_allowed' })
  })

  test('what was handed in counts once a lead accepts it, where the trees are free', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    await bo.must('claim_tree', { tree: 6 })
    await lead.must('remove_person', { subject: ann.id })
    const work = [
      { name: 'finish_tree', args: { tree: 5, claim: null } },
      { name: 'finish_tree', args: { tree: 6 } },
      { name: 'release_tree', args: { tree: 7, share: 40 } },
      { name: 'finish_tree', args: { tree: 'x' } },
      { name: 'finish_tree', args: { tree: 99999 } },
      { name: 'flag_tree', args: { tree: 12 } },
      7,
    ]
    const { command: handIn } = await ann.must('hand_in', { work })

    expect(await lead.read('came_in')).toMatchObject({
      handIns: [{ id: handIn, person: ann.id, name: 'Ann' }],
    })
    await lead.must('accept_hand_in', { handIn })

    expect(await lastEvent(orchard)).toMatchObject({
      kind: 'hand_in_accepted',
      body: {
        work: [
          [5, 'done', null],
          [7, 'begun', 40],
        ],
      },
      leadBody: { handIn },
    })
    expect(codesOf(await lead.send('accept_hand_in', { handIn }))).toEqual(['accepted_before'])
    expect(
      await db.asOwner(
        'select tree_no as tree, result from visits where person_id = $1 order by tree_no',
        [ann.id]
      )
    ).toEqual([
      { tree: 5, result: 'done' },
      { tree: 6, result: 'also_worked' },
      { tree: 7, result: 'begun' },
    ])
  })

  test('why a tool is out of use is for leads, until it is mended', async () => {
    const { lead, ann } = await readyCrew(db)
    const { body } = await lead.must('add_tool', { label: 'L1', kind: 'lopper' })
    await ann.must('fail_tool', { tool: body.tool, failedItems: ['blade_tight'], note: 'Bent' })

    expect(await lead.read('tool_faults')).toMatchObject({
      [String(body.tool)]: { failed: ['blade_tight'], note: 'Bent', by: ann.id },
    })
    expect(await ann.read('tool_faults')).toMatchObject({ details: 'not_allowed' })
    await lead.must('mend_tool', { tool: body.tool })
    expect(await lead.read('tool_faults')).toEqual({})
  })

  test('the last tree of everybody in this shift, for whoever looks for them', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })
    await ann.must('finish_tree', { tree: 3, claim })

    expect(await lead.read('private_people')).toMatchObject({
      [ann.id]: { lastTree: 3 },
      [bo.id]: { lastTree: null },
    })
  })
})
