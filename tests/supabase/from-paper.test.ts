import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import { codesOf, crewOfThree, faultOf, lastEvent, openShift, readyCrew } from '../support/orchard'

describe.each(engines)('from paper on $name', ({ open }) => {
  let db: TestDatabase
  beforeAll(async () => {
    db = await open()
  })
  afterAll(() => db.close())

  const workOn = async (orchard: string, tree: number) =>
    (
      await db.asOwner(
        'select state, share from tree_work where orchard_id = $1 and tree_no = $2',
        [orchard, tree]
      )
    )[0]
  const visitOf = async (command: string) =>
    (
      await db.asOwner(
        `select result, from_paper as "fromPaper", came_in_late as late, seconds, to_char(at at time zone 'UTC', 'HH24:MI') as at
         from visits where id = $1`,
        [command]
      )
    )[0]
  const staysOf = (person: string) =>
    db.asOwner(
      `select to_char(arrived_at at time zone 'UTC', 'HH24:MI') as came, to_char(left_at at time zone 'UTC', 'HH24:MI') as went,
         (select count(*)::int from breaks where attendance_id = a.id) as breaks
       from attendances a where person_id = $1 order by arrived_at`,
      [person]
    )
  /** A shift whose planned hours are over, so that any time of them can be written. */
  const at = (clock: string) => `2026-11-24T${clock}:00.000Z`
  const closedShift = async () => {
    const crew = await crewOfThree(db)
    const shift = await openShift(crew)
    await crew.lead.must('close_shift')
    return { ...crew, shift }
  }

  test('a tree without any claim is done at the time that was written, and the event says who tapped', async () => {
    const { orchard, lead, ann } = await readyCrew(db)

    const { command } = await lead
      .for(ann)
      .must('enter_work', { tree: 7, at: at('09:40'), begunAt: at('09:15') })

    expect(await workOn(orchard.id, 7)).toEqual({ state: 'done', share: null })
    expect(await visitOf(command)).toEqual({
      result: 'done',
      fromPaper: true,
      late: false,
      seconds: 25 * 60,
      at: '09:40',
    })
    expect(await lastEvent(orchard)).toMatchObject({
      kind: 'tree_finished',
      person: ann.id,
      by: lead.id,
      body: { tree: 7, work: [[7, 'done', null]] },
    })
  })

  test('without a time for the beginning nobody learns from the minutes', async () => {
    const { lead, ann } = await readyCrew(db)

    const { command } = await lead.for(ann).must('enter_work', { tree: 7, at: at('09:40') })

    expect(await visitOf(command)).toMatchObject({ seconds: null })
  })

  test('half done keeps its share and note for whoever goes on', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)

    await lead
      .for(ann)
      .must('enter_work', { tree: 7, at: at('09:40'), share: 60, note: 'The top is left.' })

    expect(await workOn(orchard.id, 7)).toEqual({ state: 'begun', share: 60 })
    expect(await bo.read('tree_notes', { tree: 7 })).toMatchObject([
      { note: 'The top is left.', at: at('09:40'), personId: ann.id },
    ])
  })

  test('a tree that the phone still holds is let go, also at a time before it was claimed there', async () => {
    const { orchard, lead, ann } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })

    const { command } = await lead.for(ann).must('enter_work', { tree: 3, at: at('09:40') })

    expect(await lastEvent(orchard)).toMatchObject({ body: { claimsEnded: [claim] } })
    expect(await visitOf(command)).toMatchObject({ at: '09:40', seconds: null })
    await ann.must('claim_tree', { tree: 4 })
  })

  test('what somebody else holds, or was seen to be later, is kept as also worked on', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    await bo.must('claim_tree', { tree: 3 })
    await lead.for(bo).must('enter_work', { tree: 8, at: at('11:00'), share: 30 })

    const held = await lead.for(ann).must('enter_work', { tree: 3, at: at('09:40') })
    const seenLater = await lead.for(ann).must('enter_work', { tree: 8, at: at('10:00') })

    expect([held.body.kept, seenLater.body.kept]).toEqual(['also_worked', 'also_worked'])
    expect(await workOn(orchard.id, 3)).toBeUndefined()
    expect(await workOn(orchard.id, 8)).toEqual({ state: 'begun', share: 30 })
  })

  test('nothing is entered twice: the same line, the same tree again, or what the phone sent', async () => {
    const { orchard, lead, ann } = await readyCrew(db)
    const line = randomUUID()
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })
    await ann.must('finish_tree', { tree: 3, claim })

    const first = await lead.for(ann).send('enter_work', { tree: 7, at: at('09:40') }, line)
    const again = await lead.for(ann).send('enter_work', { tree: 7, at: at('09:40') }, line)
    const secondSheet = await lead.for(ann).send('enter_work', { tree: 7, at: at('09:45') })
    const fromPhone = await lead.for(ann).send('enter_work', { tree: 3, at: at('09:40') })

    expect(again.body).toEqual(first.body)
    expect([codesOf(secondSheet), codesOf(fromPhone)]).toEqual([
      ['already_entered'],
      ['already_entered'],
    ])
    const [counted] = await db.asOwner(
      'select count(*)::int as visits from visits where orchard_id = $1',
      [orchard.id]
    )
    expect(counted).toEqual({ visits: 2 })
  })

  test('readiness refuses nothing any more; what was missing is said to the lead', async () => {
    const crew = await crewOfThree(db)
    await openShift(crew)

    const reply = await crew.lead.for(crew.ann).must('enter_work', { tree: 7, at: at('09:40') })

    expect(reply.body.missing).toEqual([
      'consent_missing',
      'briefing_not_given',
      'briefing_not_signed',
      'equipment_not_checked',
      'not_arrived',
    ])
  })

  test('a time of no shift, another species and a gap are refused, and volunteers enter nothing', async () => {
    const { orchard, lead, ann } = await readyCrew(db)
    await db.asOwner("update trees set life = 'gap' where orchard_id = $1 and no = 9", [orchard.id])
    await db.asOwner("update trees set species = 'plum' where orchard_id = $1 and no = 10", [
      orchard.id,
    ])
    const entered = async (tree: number, clock: string) =>
      codesOf(await lead.for(ann).send('enter_work', { tree, at: at(clock) }))

    expect(await entered(7, '06:30')).toEqual(['not_in_shift'])
    expect(await entered(9, '09:30')).toEqual(['tree_not_standing'])
    expect(await entered(10, '09:30')).toEqual(['tree_not_in_round'])
    expect(faultOf(await ann.send('enter_work', { tree: 7, at: at('09:40') }))).toBe(
      '403 not_allowed'
    )
  })

  test('after the shift closed it is done, belongs to that shift, and came in late', async () => {
    const { orchard, lead, ann, shift } = await closedShift()

    const { body, command } = await lead.for(ann).must('enter_work', { tree: 7, at: at('14:10') })

    expect(body.kept).toBe('late')
    expect(await visitOf(command)).toMatchObject({ late: true, fromPaper: true })
    expect(await lastEvent(orchard)).toMatchObject({
      kind: 'tree_finished_late',
      body: { shift, work: [[7, 'done', null]] },
    })
  })

  test('a time that has not come yet is refused, also where the plan went on longer than the shift', async () => {
    const { lead, ann, shift } = await closedShift()
    await db.asOwner("update shifts set ends_at = now() + interval '4 hours' where id = $1", [
      shift,
    ])
    const inAnHour = new Date(Date.now() + 3_600_000).toISOString()
    const soon = new Date(Date.now() + 1_800_000).toISOString()

    const early = await lead.for(ann).send('enter_work', { tree: 7, at: inAnHour, begunAt: soon })

    expect(codesOf(early)).toEqual(['not_in_shift'])
  })

  test('a whole day of somebody who was never tapped: came, rested, went', async () => {
    const { lead, ann } = await closedShift()

    await lead.for(ann).must('enter_attendance', {
      arrivedAt: at('08:05'),
      breaks: [[at('10:00'), at('10:15')]],
      leftAt: at('14:30'),
    })

    expect(await staysOf(ann.id)).toEqual([{ came: '08:05', went: '14:30', breaks: 1 }])
    const again = await lead
      .for(ann)
      .send('enter_attendance', { arrivedAt: at('08:10'), leftAt: at('14:00') })
    expect(codesOf(again)).toEqual(['already_here'])
  })

  test('who is here since a time on paper is counted, and leaves by the same rules as everybody', async () => {
    const crew = await crewOfThree(db)
    await openShift(crew)
    const { lead, ann, orchard } = crew
    const { body } = await lead.must('add_tool', { label: 'P1', kind: 'pruner' })

    await lead.for(ann).must('enter_attendance', { arrivedAt: at('08:05') })
    expect(await lastEvent(orchard)).toMatchObject({
      kind: 'attendance_entered',
      body: { attendance: { state: 'here', since: at('08:05') } },
    })
    await ann.must('take_tool', { tool: body.tool, failedItems: [] })
    const leaves = { breaks: [[at('10:00'), at('10:15')]], leftAt: at('12:00') }
    const withTool = await lead.for(ann).send('enter_attendance', leaves)
    await ann.must('return_tool', { tool: body.tool })
    await lead.for(ann).must('enter_attendance', leaves)

    expect(codesOf(withTool)).toEqual(['tools_out'])
    expect(await staysOf(ann.id)).toEqual([{ came: '08:05', went: '12:00', breaks: 1 }])
    expect((await lastEvent(orchard)).body).toEqual({ left: [ann.id] })
  })

  test('who was only signed out by closing went when the paper says', async () => {
    const crew = await crewOfThree(db)
    await openShift(crew)
    const { lead, ann } = crew
    await lead.for(ann).must('enter_attendance', { arrivedAt: at('08:05') })
    await lead.must('close_shift', { why: { people: { [ann.id]: 'went home' } } })

    await lead.for(ann).must('enter_attendance', { leftAt: at('11:40') })

    expect(await staysOf(ann.id)).toMatchObject([{ went: '11:40' }])
    expect(codesOf(await lead.for(ann).send('enter_attendance', { leftAt: at('11:30') }))).toEqual([
      'left_before',
    ])
  })

  test('times that cannot be are refused, in the wrong order they are malformed', async () => {
    const { lead, ann, bo } = await closedShift()
    const send = (args: Record<string, unknown>) => lead.for(ann).send('enter_attendance', args)
    await lead.for(bo).must('enter_attendance', { arrivedAt: at('08:05'), leftAt: at('12:00') })

    expect(codesOf(await send({ arrivedAt: at('08:05') }))).toEqual(['leaving_missing'])
    expect(codesOf(await send({ leftAt: at('12:00') }))).toEqual(['not_arrived'])
    expect(codesOf(await send({ arrivedAt: at('05:00'), leftAt: at('12:00') }))).toEqual([
      'not_in_shift',
    ])
    for (const wrong of [
      {},
      { arrivedAt: at('12:00'), leftAt: at('08:00') },
      { arrivedAt: at('08:00'), breaks: [[at('10:15'), at('10:00')]], leftAt: at('12:00') },
      { arrivedAt: at('08:00'), breaks: [[at('07:00'), at('09:00')]], leftAt: at('12:00') },
      { arrivedAt: at('08:00'), breaks: ['soon'], leftAt: at('12:00') },
    ]) {
      expect(faultOf(await send(wrong)), JSON.stringify(wrong)).toBe('400 malformed')
    }
  })
})
