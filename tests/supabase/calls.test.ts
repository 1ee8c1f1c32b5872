/** Calls for help, who hears of them, and incidents. */

import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import type { Event } from '@/lib/events/event'
import { stateOf } from '@/lib/events/snapshot'
import { engines, type TestDatabase } from '../support/engines'
import {
  codesOf,
  crewOfThree,
  faultOf,
  lastEvent,
  newOrchard,
  type Person,
  readyCrew,
} from '../support/orchard'

describe.each(engines)('calls on $name', ({ open }) => {
  let database: TestDatabase
  beforeAll(async () => {
    database = await open()
  }, 60_000)
  afterAll(() => database.close())

  test('an injury is heard by leads, the manager and the caller, and by nobody else', async () => {
    const { ann, bo, lead, orchard } = await readyCrew(database)

    const { command: call } = await ann.must('call_for_help', { kind: 'injury', tree: 7 })

    const facts = { kind: 'injury', tree: 7, calledBy: ann.id, answeredBy: null }
    for (const person of [ann, lead, orchard.manager]) {
      expect(await callsOf(person)).toMatchObject({ [call]: facts })
      expect(await lastHeardBy(person)).toMatchObject({ kind: 'call_made', leadBody: { call } })
    }
    expect(await callsOf(bo)).toEqual({})
    const heard = await lastHeardBy(bo)
    expect(Object.keys(heard)).toEqual(['n'])
  })

  test('that somebody is looked for, everybody hears: any of them may have seen that person last', async () => {
    const { ann, bo, lead } = await readyCrew(database)

    const { command: call } = await ann.must('call_for_help', {
      kind: 'lost_person',
      subject: lead.id,
      tree: 3,
    })
    expect(await callsOf(bo)).toMatchObject({ [call]: { subject: lead.id, tree: 3 } })

    await lead.must('answer_call', { call })
    expect(await callsOf(bo)).toMatchObject({ [call]: { answeredBy: lead.id } })
    await lead.must('end_call', { call })
    expect(await callsOf(bo)).toEqual({})
  })

  test('what was written is read by leads and stands in no event', async () => {
    const { ann, bo, lead, orchard } = await readyCrew(database)
    const note = 'Cut in the left hand'
    const outcome = 'Bandaged and driven home'

    const { command: call } = await ann.must('call_for_help', { kind: 'injury', note })
    await lead.must('end_call', { call, outcome })

    expect(await lead.read('read_calls')).toMatchObject([
      { call, note, outcome, endedBy: lead.id, hasIncident: false },
    ])
    expect(await bo.read('read_calls')).toMatchObject({ details: 'not_allowed' })
    expect(await ann.read('read_calls')).toMatchObject({ details: 'not_allowed' })
    const events = await database.asOwner(
      'select body, lead_body from public.events where orchard_id = $1',
      [orchard.id]
    )
    expect(JSON.stringify(events)).not.toMatch(/left hand|driven/)
  })

  test('the first answer is when the caller was heard, the last one says who comes', async () => {
    const { ann, lead, orchard } = await readyCrew(database)
    const { command: call } = await ann.must('call_for_help', { kind: 'question' })

    await lead.must('answer_call', { call })
    const first = (await callsOf(ann))[call]
    await orchard.manager.must('answer_call', { call })

    expect(first?.answeredBy).toBe(lead.id)
    expect(await lastEvent(orchard)).toMatchObject({
      kind: 'call_answered',
      person: ann.id,
      by: orchard.manager.id,
      body: null,
    })
    expect((await callsOf(ann))[call]).toEqual({ ...first, answeredBy: orchard.manager.id })
  })

  test('only leads answer; the caller and leads end, nobody else', async () => {
    const { ann, bo, lead } = await readyCrew(database)
    const { command: call } = await ann.must('call_for_help', { kind: 'tool' })

    expect(faultOf(await bo.send('answer_call', { call }))).toBe('403 not_allowed')
    expect(faultOf(await ann.send('answer_call', { call }))).toBe('403 not_allowed')
    expect(codesOf(await bo.send('end_call', { call }))).toEqual(['not_yours'])
    expect(faultOf(await bo.for(ann).send('end_call', { call }))).toBe('403 not_allowed')
    await ann.must('end_call', { call })

    expect(await callsOf(lead)).toEqual({})
    // Late, and never refused for state: the call stays as it ended.
    await lead.must('answer_call', { call })
    expect(await callsOf(ann)).toEqual({})
    const [read] = (await lead.read('read_calls')) as { endedBy: string; answeredBy: unknown }[]
    expect(read).toMatchObject({ endedBy: ann.id, answeredBy: null })
  })

  test('a lead calls for somebody without a phone', async () => {
    const { lead, orchard } = await readyCrew(database)
    const { body } = await lead.must('add_person', { name: 'Dee' })
    const dee = String(body.person)

    const { command: call } = await lead.for({ id: dee }).must('call_for_help', { kind: 'injury' })

    expect((await callsOf(orchard.manager))[call]).toMatchObject({ calledBy: dee })
    expect(await lastEvent(orchard)).toMatchObject({ person: dee, by: lead.id, own: true })
  })

  test('a call is taken without a shift, during a stop, on a break and after the day', async () => {
    const crew = await crewOfThree(database)
    await crew.ann.must('call_for_help', { kind: 'question' })
    expect(Object.keys(await callsOf(crew.lead))).toHaveLength(1)

    const { ann, bo, lead } = await readyCrew(database)
    await bo.must('stop_work')
    await ann.must('start_break')
    await ann.must('call_for_help', { kind: 'injury' })
    expect(Object.keys(await callsOf(lead))).toHaveLength(1)
  })

  test('a call kept without signal says when it was made, within the shift', async () => {
    const { ann, lead, shift } = await readyCrew(database)
    await database.asOwner(
      "update public.shifts set opened_at = now() - interval '1 hour' where id = $1",
      [shift]
    )
    const at = new Date(Date.now() - 10 * 60_000).toISOString()

    const { command: late } = await ann.must('call_for_help', { kind: 'tool', at })
    const { command: wrong } = await ann.must('call_for_help', {
      kind: 'tool',
      at: '2001-01-01T00:00:00.000Z',
    })

    const calls = await callsOf(lead)
    expect(calls[late]?.calledAt).toBe(at)
    expect(Date.parse(calls[wrong]?.calledAt ?? '')).toBeGreaterThan(Date.now() - 3_700_000)
  })

  test('closing the shift ends its calls, and removing somebody ends theirs', async () => {
    const { ann, bo, lead, orchard } = await readyCrew(database)
    await ann.must('call_for_help', { kind: 'question' })
    await bo.must('call_for_help', { kind: 'tool' })

    await lead.must('remove_person', { subject: ann.id })
    const left = await callsOf(lead)
    const people = { [lead.id]: 'x', [bo.id]: 'x' }
    await lead.must('close_shift', { why: { people, tools: { 1: 'x', 2: 'x' } } })

    expect(Object.values(left)).toMatchObject([{ calledBy: bo.id }])
    expect(await callsOf(orchard.manager)).toEqual({})
  })

  test('words that are too many are cut: a call is not lost for them', async () => {
    const { ann, lead } = await readyCrew(database)
    await ann.must('call_for_help', { kind: 'injury', note: 'x'.repeat(5000) })
    const [read] = (await lead.read('read_calls')) as { note: string }[]
    expect(read?.note).toHaveLength(300)
  })

  test('a call of another orchard, or of nothing, is none', async () => {
    const { ann, lead } = await readyCrew(database)
    const elsewhere = await newOrchard(database)
    const { command: call } = await elsewhere.manager.must('call_for_help', { kind: 'tool' })

    expect(faultOf(await lead.send('answer_call', { call }))).toBe('404 no_such_call')
    expect(faultOf(await lead.send('end_call', { call }))).toBe('404 no_such_call')
    expect(faultOf(await lead.send('write_incident', { kind: 'other', call }))).toBe(
      '404 no_such_call'
    )
    const subject = elsewhere.manager.id
    expect(faultOf(await ann.send('call_for_help', { kind: 'lost_person', subject }))).toBe(
      '404 no_such_person'
    )
    expect(faultOf(await ann.send('call_for_help', { kind: 'boredom' }))).toBe('400 malformed')
    expect(faultOf(await ann.send('call_for_help', { kind: 'tool', tree: 999 }))).toBe(
      '404 no_such_tree'
    )
  })

  test('an incident is written and read by leads only, and belongs to the call it came from', async () => {
    const { ann, bo, lead, orchard } = await readyCrew(database)
    const { command: call } = await ann.must('call_for_help', { kind: 'injury', tree: 7 })
    const note = 'A branch fell beside the ladder'
    const at = '2026-11-24T09:00:00.000Z'

    const { command: incident } = await lead.must('write_incident', {
      kind: 'injury',
      tree: 7,
      note,
      at,
      call,
    })

    expect(await orchard.manager.read('read_incidents')).toMatchObject([
      { incident, kind: 'injury', tree: 7, note, call, happenedAt: at, writtenBy: lead.id },
    ])
    expect(await lead.read('read_calls')).toMatchObject([{ call, hasIncident: true }])
    expect(await lastEvent(orchard)).toMatchObject({ body: null, leadBody: { incident } })
    expect(Object.keys(await lastHeardBy(ann))).toEqual(['n'])
    for (const person of [ann, bo]) {
      expect(await person.read('read_incidents')).toMatchObject({ details: 'not_allowed' })
      expect(faultOf(await person.send('write_incident', { kind: 'other' }))).toBe(
        '403 not_allowed'
      )
    }
    expect(faultOf(await lead.send('write_incident', { kind: 'illness' }))).toBe('400 malformed')
  })

  async function callsOf(person: Person) {
    const state = stateOf(await person.read('snapshot', { person: person.id }))
    if (!state) throw new Error('Not a snapshot.')
    return state.calls
  }

  async function lastHeardBy(person: Person): Promise<Event> {
    const state = stateOf(await person.read('snapshot', { person: person.id }))
    const told = (await person.read('events_after', {
      person: person.id,
      epoch: state?.epoch,
      n: (state?.head ?? 0) - 1,
    })) as { events: Event[] }
    const [last] = told.events
    if (!last) throw new Error('Nothing was heard.')
    return last
  }
})
