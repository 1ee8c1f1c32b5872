import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import type { Event } from '@/lib/events/event'
import type { State } from '@/lib/events/state'
import { engines, type TestDatabase } from '../support/engines'
import { type Orchard, type Person, readyCrew } from '../support/orchard'
import { plainJpeg } from './scene'

describe.each(engines)('reading on $name', ({ open }) => {
  let db: TestDatabase
  beforeAll(async () => {
    db = await open()
  }, 60_000)
  afterAll(() => db.close())

  const snapshotOf = async (person: Person) =>
    (await person.read('snapshot', { person: person.id })) as State

  type News = { events: Event[]; head: number; reset?: true }
  const newsFor = async (person: Person, n: number, epoch?: string) =>
    (await person.read('events_after', {
      person: person.id,
      epoch: epoch ?? (await snapshotOf(person)).epoch,
      n,
    })) as News

  test('a volunteer hears every number, leads hear what else was said, and the person concerned too', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    const { n } = (await lead.must('grant_skill', { subject: ann.id, skill: 'ladder' })).body
    const before = Number(n) - 1

    const toLead = await newsFor(lead, before)
    const toAnn = await newsFor(ann, before)
    const toBo = await newsFor(bo, before)

    const said = { person: ann.id, skill: 'ladder' }
    expect(toLead.events).toMatchObject([{ n, kind: 'skill_granted', body: null, leadBody: said }])
    expect(toAnn.events).toMatchObject([{ n, kind: 'skill_granted', leadBody: said }])
    expect(toBo).toEqual({ events: [{ n }], head: n })
  })

  test('a volunteer is told of nobody else what only leads may know', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    await bo.must('check_equipment', { failedItems: ['gloves'] })
    await lead.must('change_person', { subject: bo.id, ageBand: 'minor', guardian: ann.id })
    await lead.for(bo).must('give_consent', { textVersion: 1, by: ann.id })

    const toLead = await snapshotOf(lead)
    const toAnn = await snapshotOf(ann)

    for (const key of ['skills', 'consents', 'minors', 'failedEquipment'] as const) {
      expect(toLead[key]).toHaveProperty(bo.id)
      expect(toAnn[key]).not.toHaveProperty(bo.id)
    }
    expect(toAnn.skills).toHaveProperty(ann.id)
    // It passed once; that it fails now is not hers to know.
    expect([toLead.equipped[bo.id], toAnn.equipped[bo.id]]).toEqual([false, true])
  })

  test('news come a thousand at a time, and start again when they do not follow', async () => {
    const { orchard, ann } = await readyCrew(db)
    const { head } = await snapshotOf(ann)
    await pretendEvents(orchard, 5200)
    const last = head + 5200

    const first = await newsFor(ann, last - 1500)
    expect([first.events.length, first.events.at(-1)?.n, first.head]).toEqual([
      1000,
      last - 500,
      last,
    ])
    expect((await newsFor(ann, last - 500)).events.length).toBe(500)
    expect(await newsFor(ann, last)).toEqual({ events: [], head: last })
    expect((await newsFor(ann, last - 5000)).events.length).toBe(1000)

    expect(await newsFor(ann, last - 5001)).toEqual({ reset: true })
    expect(await newsFor(ann, last + 1)).toEqual({ reset: true })
    expect(await newsFor(ann, last, randomUUID())).toEqual({ reset: true })
  })

  test('who waits to be let in sees that, and nothing of the orchard', async () => {
    const { orchard, ann } = await readyCrew(db)
    await db.asOwner('update people set admitted_at = null where id = $1', [ann.id])

    const told = await ann.read('snapshot', { person: ann.id })
    const orchards = (await db.as(ann.userId, 'my_orchards')).body

    expect(told).toMatchObject({ code: 'PT403', details: 'not_admitted' })
    expect(await ann.read('names')).toMatchObject({ details: 'not_admitted' })
    expect(orchards).toEqual([
      {
        orchard: orchard.id,
        name: 'Three Wells',
        language: 'en',
        person: ann.id,
        personName: 'Ann',
        role: 'volunteer',
        admitted: false,
      },
    ])
  })

  test('who was removed has a name for those who ask, is in no list, and hears nothing more', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    await lead.must('remove_person', { subject: bo.id })

    expect(await ann.read('names')).not.toHaveProperty(bo.id)
    expect(await ann.read('names', { people: [bo.id] })).toEqual({ [bo.id]: 'Bo' })
    expect(await bo.read('names')).toMatchObject({ details: 'not_allowed' })
    expect((await db.as(bo.userId, 'my_orchards')).body).toEqual([])
  })

  test('leads see who was heard when, without an event', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    const { command: di } = await lead.must('add_person', { name: 'Di' })
    const before = await snapshotOf(lead)

    const beat = await ann.read('heartbeat', { person: ann.id, head: 3 })
    const people = await lead.read('private_people')

    expect(beat).toEqual({
      head: before.head,
      epoch: before.epoch,
      channelEpoch: 1,
      minClient: 0,
      now: expect.stringMatching(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/),
    })
    expect(people).toMatchObject({
      [ann.id]: { phone: null, heardAt: expect.any(String), heardHead: 3, joinedBy: lead.id },
      // Since the link was opened nothing was heard, but there is a phone.
      [bo.id]: { heardAt: expect.any(String), heardHead: null },
      [di]: { heardAt: null },
    })
    expect((await snapshotOf(lead)).head).toBe(before.head)
  })

  test('a photo is for leads and for who took it', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    const photo = (await ann.must('add_photo', { tree: 3, purpose: 'before', jpeg: plainJpeg }))
      .command

    expect(await ann.read('read_photo', { photo })).toEqual({ jpeg: plainJpeg })
    expect(await lead.read('read_photo', { photo })).toEqual({ jpeg: plainJpeg })
    expect(await bo.read('read_photo', { photo })).toMatchObject({ details: 'not_allowed' })
    // Whether there is one is not told to who may not see it.
    expect(await bo.read('read_photo', { photo: randomUUID() })).toMatchObject({
      details: 'not_allowed',
    })
    expect(await lead.read('read_photo', { photo: randomUUID() })).toMatchObject({
      details: 'no_such_photo',
    })
  })

  test('what was marked on a tree everybody sees, as long as the mark stands', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    const { command: mark } = await lead.must('mark_big_cuts', { tree: 3 })
    const { command: photo } = await lead.must('add_photo', {
      mark,
      purpose: 'mark',
      jpeg: plainJpeg,
    })

    expect(await bo.read('read_photo', { photo })).toEqual({ jpeg: plainJpeg })
    expect(await snapshotOf(bo)).toMatchObject({ marked: { 3: { mark, by: lead.id, photo } } })
    await lead.must('unmark_big_cuts', { tree: 3 })
    expect(await bo.read('read_photo', { photo })).toMatchObject({ details: 'not_allowed' })
    expect(await snapshotOf(ann)).toMatchObject({ marked: {} })
  })

  test('the notes of a tree are those of this round, newest first', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })
    await ann.must('release_tree', { tree: 3, claim, share: 40, note: 'The top is left.' })
    const flag = { tree: 3, kind: 'disease', sign: 'gum', severity: 'low', note: 'On two limbs.' }
    await bo.must('flag_tree', flag)
    await lead.must('mark_big_cuts', { tree: 3, note: 'The two water shoots.' })

    expect(await bo.read('tree_notes', { tree: 3 })).toMatchObject([
      { kind: 'mark', note: 'The two water shoots.', personId: lead.id },
      { kind: 'flag', note: 'On two limbs.', personId: bo.id },
      { kind: 'begun', note: 'The top is left.', personId: ann.id },
    ])
    expect(await bo.read('tree_notes', { tree: 4 })).toEqual([])
  })

  test('the newest briefing is read by its shift, and there is none before the first', async () => {
    const { orchard, lead, ann, shift } = await readyCrew(db)
    await lead.must('write_briefing', { shift, topics: [{ code: 'wasps' }], change: 'come_down' })
    const { command: later } = await lead.must('schedule_shift', {
      round: orchard.round,
      date: '2026-12-01',
      startsAt: '2026-12-01T08:00:00Z',
      endsAt: '2026-12-01T12:00:00Z',
    })

    expect(await ann.read('read_briefing', { shift })).toEqual({
      version: 2,
      change: 'come_down',
      topics: [{ code: 'wasps' }],
    })
    expect(await ann.read('read_briefing', { shift: later })).toBeNull()
  })

  /** Numbers without holes, as commands would have made them. */
  async function pretendEvents({ id, manager }: Orchard, count: number): Promise<void> {
    await db.asOwner(
      `insert into events (orchard_id, n, at, command_id, person_id, by_person_id, kind, body)
       select $1, h.head + i, now(), gen_random_uuid(), $2, $2, 'tools_cleaned', '{"tools": []}'
       from orchard_heads h, generate_series(1, $3) i where h.orchard_id = $1`,
      [id, manager.id, count]
    )
    await db.asOwner('update orchard_heads set head = head + $2 where orchard_id = $1', [id, count])
  }
})
