/** Arriving, the briefing, breaks, leaving, equipment, tools and stops. */

import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import { codesOf, crewOfThree, faultOf, lastEvent, openShift, readyCrew } from '../support/orchard'

describe.each(engines)('readiness on $name', ({ open }) => {
  let database: TestDatabase
  beforeAll(async () => {
    database = await open()
  }, 60_000)
  afterAll(() => database.close())

  describe('the count', () => {
    test('one arrives once, in an open shift; a lead counts those without a phone', async () => {
      const crew = await crewOfThree(database)
      const { ann, bo, lead, orchard } = crew
      expect(codesOf(await ann.send('arrive'))).toEqual(['shift_not_open'])
      await openShift(crew)

      await ann.must('arrive')
      await lead.for(bo).must('arrive')

      expect(codesOf(await ann.send('arrive'))).toEqual(['already_here'])
      expect(await lastEvent(orchard)).toMatchObject({
        kind: 'person_arrived',
        person: bo.id,
        by: lead.id,
      })
      expect(faultOf(await ann.for(bo).send('arrive'))).toBe('403 not_allowed')
    })

    test('a break starts without a tree in hand and ends once', async () => {
      const { ann, orchard } = await readyCrew(database)
      const { command: claim } = await ann.must('claim_tree', { tree: 5 })
      expect(codesOf(await ann.send('start_break'))).toEqual(['holds_another'])
      await ann.must('finish_tree', { claim, tree: 5, elapsedS: 60 })

      await ann.must('start_break')

      expect(codesOf(await ann.send('start_break'))).toEqual(['on_break'])
      expect(codesOf(await ann.send('claim_tree', { tree: 6 }))).toContain('on_break')
      await ann.must('end_break')
      expect(codesOf(await ann.send('end_break'))).toEqual(['not_on_break'])
      expect(await lastEvent(orchard)).toMatchObject({ kind: 'break_ended', person: ann.id })
    })

    test.each([
      ['2001-01-01T00:00:00Z'],
      ['2199-01-01T00:00:00Z'],
      ['infinity'],
      ['-infinity'],
      [null],
    ])('a device that says %s is taken for what can be true', async (at) => {
      const { ann } = await readyCrew(database)

      await ann.must('start_break', { at })
      await ann.must('end_break', { at })
      const [times] = await database.asOwner(
        `select b.from_at >= a.arrived_at as "afterArriving", b.to_at >= b.from_at as "inOrder", b.to_at <= now() as "notLater"
         from public.breaks b join public.attendances a on a.id = b.attendance_id where a.person_id = $1`,
        [ann.id]
      )

      expect(times).toEqual({ afterArriving: true, inOrder: true, notLater: true })
    })

    test('nobody leaves with a tree or a tool, a lead’s word or not', async () => {
      const { ann, lead, orchard } = await readyCrew(database)
      const { command: claim } = await ann.must('claim_tree', { tree: 5 })

      expect((await lead.for(ann).send('leave')).body.refused).toEqual([
        { code: 'holds_another', detail: { claim, tree: 5 } },
        { code: 'tools_out', detail: { tools: [1] } },
      ])

      await ann.must('finish_tree', { claim, tree: 5, elapsedS: 60 })
      await ann.must('return_tool', { tool: 1 })
      await ann.must('leave')
      expect(await lastEvent(orchard)).toMatchObject({
        kind: 'person_left',
        body: { left: [ann.id] },
      })
      expect(codesOf(await ann.send('leave'))).toEqual(['not_arrived'])
    })

    test('who leaves on a break has left, and a pair keeps its tree while one is there', async () => {
      const { ann, bo, lead, orchard } = await readyCrew(database)
      await lead.must('deal_trees', { trees: [7], to: [ann.id] })
      await lead.must('deal_trees', { trees: [8], to: [ann.id, bo.id] })
      await ann.must('return_tool', { tool: 1 })
      await ann.must('start_break')

      await ann.must('leave')
      expect((await lastEvent(orchard)).body).toEqual({ left: [ann.id], dealsEnded: [7] })
      expect(
        await database.asOwner(
          `select b.id from public.breaks b join public.attendances a on a.id = b.attendance_id
           where a.person_id = $1 and b.to_at is null`,
          [ann.id]
        )
      ).toEqual([])

      await bo.must('return_tool', { tool: 2 })
      await bo.must('leave')
      expect((await lastEvent(orchard)).body).toEqual({ left: [bo.id], dealsEnded: [8] })
    })
  })

  describe('the briefing', () => {
    test('is given to people who are here, and signed in its newest version', async () => {
      const crew = await crewOfThree(database)
      const { ann, bo, lead } = crew
      const shift = await openShift(crew)
      await ann.must('arrive')

      expect((await lead.send('give_briefing', { people: [ann.id, bo.id] })).body.refused).toEqual([
        { code: 'not_arrived', detail: { people: [bo.id] } },
      ])
      await lead.must('give_briefing', { people: [ann.id] })
      await lead.must('write_briefing', {
        shift,
        topics: [{ code: 'wasps', en: 'Nest in row 2', es: 'Avispero en la fila 2' }],
        change: 'come_down',
      })

      const signing = { language: 'es', how: 'read_to_me' }
      expect((await ann.send('sign_briefing', { version: 1, ...signing })).body.refused).toEqual([
        { code: 'briefing_changed', detail: { version: 2 } },
      ])
      await ann.must('sign_briefing', { version: 2, ...signing })
      expect(
        await database.asOwner(
          'select version, language, how, signed_by from public.briefing_signatures where person_id = $1',
          [ann.id]
        )
      ).toEqual([{ version: 2, language: 'es', how: 'read_to_me', signed_by: ann.id }])
    })

    test('its words are not in events', async () => {
      const crew = await crewOfThree(database)
      const shift = await openShift(crew)
      await crew.lead.must('write_briefing', {
        shift,
        topics: [{ code: 'wasps', en: 'Mind Old Tom’s hive' }],
        change: 'before_next_tree',
      })

      expect((await lastEvent(crew.orchard)).body).toEqual({
        shift,
        version: 2,
        change: 'before_next_tree',
      })
      expect(await crew.ann.read('read_briefing', { shift })).toMatchObject({
        topics: [{ code: 'wasps', en: 'Mind Old Tom’s hive' }],
      })
    })

    test.each([
      [[]],
      [{}],
      [[{}]],
      [[{ code: 'NOT A CODE' }]],
      [[{ code: 'wasps', en: 5 }]],
      [[{ code: 'wasps', en: 'x'.repeat(1001) }]],
      [[{ code: 'wasps', fr: 'des guêpes' }]],
      [Array.from({ length: 41 }, () => ({ code: 'wasps' }))],
    ])('topics %j are malformed', async (topics) => {
      const crew = await crewOfThree(database)
      const shift = await openShift(crew)
      const change = 'come_down'
      expect(faultOf(await crew.lead.send('write_briefing', { shift, topics, change }))).toBe(
        '400 malformed'
      )
    })
  })

  describe('equipment', () => {
    test('that passed is told to all, what failed to leads and the person only', async () => {
      const { ann, orchard } = await readyCrew(database)

      await ann.must('check_equipment', { failedItems: ['gloves'] })
      expect(await lastEvent(orchard)).toMatchObject({
        body: null,
        leadBody: { person: ann.id, failed: ['gloves'] },
        own: true,
      })
      expect(codesOf(await ann.send('claim_tree', { tree: 5 }))).toEqual(['equipment_not_checked'])

      await ann.must('check_equipment', { failedItems: [] })
      expect((await lastEvent(orchard)).body).toEqual({ passed: true })
    })

    test('about which nothing is said did not pass', async () => {
      const { ann } = await readyCrew(database)
      expect(faultOf(await ann.send('check_equipment', { failedItems: null }))).toBe(
        '400 malformed'
      )
    })
  })

  describe('tools', () => {
    test('are in one hand at a time', async () => {
      const { ann, bo } = await readyCrew(database)

      expect((await bo.send('take_tool', { tool: 1, failedItems: [] })).body.refused).toEqual([
        { code: 'tool_held', detail: { tool: 1, person: ann.id } },
      ])
      expect(codesOf(await bo.send('return_tool', { tool: 1 }))).toEqual(['not_in_hand'])
      await ann.must('return_tool', { tool: 1 })
      await bo.must('take_tool', { tool: 1, failedItems: [] })
    })

    test('that fail the check are not handed out until mended', async () => {
      const { ann, lead, orchard } = await readyCrew(database)
      const { body } = await lead.must('add_tool', { label: 'Ladder 3', kind: 'ladder' })
      const tool = body.tool

      await ann.must('take_tool', { tool, failedItems: ['spreader'] })
      expect(await lastEvent(orchard)).toMatchObject({ kind: 'tool_failed', body: { tool } })
      expect(codesOf(await ann.send('take_tool', { tool, failedItems: [] }))).toEqual([
        'tool_failed',
      ])

      expect(faultOf(await ann.send('mend_tool', { tool }))).toBe('403 not_allowed')
      await lead.must('mend_tool', { tool })
      await ann.must('take_tool', { tool, failedItems: [] })
    })

    test('that fail in hand stay in hand, out of use, and the note is in no event', async () => {
      const { ann, orchard } = await readyCrew(database)

      await ann.must('fail_tool', { tool: 1, failedItems: ['spring'], note: 'Pinched my thumb' })

      expect((await lastEvent(orchard)).body).toEqual({ tool: 1 })
      expect(codesOf(await ann.send('claim_tree', { tree: 5 }))).toEqual(['tool_failed'])
      expect(
        await database.asOwner(
          'select note from public.tool_checks where orchard_id = $1 and note is not null',
          [orchard.id]
        )
      ).toEqual([{ note: 'Pinched my thumb' }])
    })

    test('are cleaned together or not at all', async () => {
      const { ann, orchard } = await readyCrew(database)
      await database.asOwner('update public.tools set clean = false where orchard_id = $1', [
        orchard.id,
      ])
      const clean = () =>
        database.asOwner('select no, clean from public.tools where orchard_id = $1 order by no', [
          orchard.id,
        ])

      expect((await ann.send('clean_tool', { tools: [1, 77] })).body.refused).toEqual([
        { code: 'no_such_tool', detail: { tools: [77] } },
      ])
      expect(await clean()).toEqual([
        { no: 1, clean: false },
        { no: 2, clean: false },
      ])

      await ann.must('clean_tool', { tools: [1, 2] })
      expect(await clean()).toEqual([
        { no: 1, clean: true },
        { no: 2, clean: true },
      ])
    })

    test('are taken by people who are here', async () => {
      const crew = await crewOfThree(database)
      await crew.lead.must('add_tool', { label: 'P1', kind: 'pruner' })
      const take = () => crew.ann.send('take_tool', { tool: 1, failedItems: [] })
      expect(codesOf(await take())).toEqual(['shift_not_open'])
      await openShift(crew)
      expect(codesOf(await take())).toEqual(['not_arrived'])
    })
  })

  describe('a stop', () => {
    test('is called by anyone and forbids claims until a lead resumes and each has answered', async () => {
      const { ann, bo, lead, orchard } = await readyCrew(database)

      const { command: stop } = await bo.must('stop_work', { reason: 'x'.repeat(5000) })
      expect(codesOf(await ann.send('claim_tree', { tree: 5 }))).toEqual(['stopped'])
      await ann.must('answer_stop', { stop })
      expect((await lastEvent(orchard)).body).toEqual({ stop, answer: 'stopped', person: ann.id })

      expect(faultOf(await ann.send('resume_work', { stop }))).toBe('403 not_allowed')
      await lead.must('resume_work', { stop })
      expect(codesOf(await ann.send('claim_tree', { tree: 5 }))).toEqual(['stop_not_answered'])
      await ann.must('answer_stop', { stop })
      expect(codesOf(await ann.send('claim_tree', { tree: 5 }))).toEqual([])
    })

    test('“I came down”, sent late, does not say that the person knows work goes on', async () => {
      const { ann, bo, lead, orchard } = await readyCrew(database)
      const { command: stop } = await bo.must('stop_work')
      await lead.must('resume_work', { stop })

      await ann.must('answer_stop', { stop, answer: 'stopped' })

      expect((await lastEvent(orchard)).body).toMatchObject({ answer: 'stopped' })
      expect(codesOf(await ann.send('claim_tree', { tree: 5 }))).toEqual(['stop_not_answered'])
    })

    test('what a lead saw is written down as seen', async () => {
      const { ann, bo, lead } = await readyCrew(database)
      const { command: stop } = await bo.must('stop_work')

      await lead.for(ann).must('answer_stop', { stop })

      expect(
        await database.asOwner(
          'select how, by_person_id from public.stop_answers where person_id = $1',
          [ann.id]
        )
      ).toEqual([{ how: 'seen_by_lead', by_person_id: lead.id }])
    })

    test('answers come in after the shift too, and a stop of nowhere is none', async () => {
      const { ann, bo, lead } = await readyCrew(database)
      const { command: stop } = await bo.must('stop_work', { block: 1 })
      const [person, tools] = [
        { [lead.id]: 'x', [ann.id]: 'x', [bo.id]: 'x' },
        { 1: 'x', 2: 'x' },
      ]
      await lead.must('close_shift', { why: { people: person, tools } })

      await ann.must('answer_stop', { stop })

      expect(codesOf(await ann.send('stop_work'))).toEqual(['shift_not_open'])
      expect(faultOf(await ann.send('stop_work', { block: 99 }))).toBe('404 no_such_block')
      expect(faultOf(await ann.send('answer_stop', { stop: ann.id }))).toBe('404 no_such_stop')
    })
  })
})
