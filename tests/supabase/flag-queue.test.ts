import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import { codesOf, lastEvent, readyCrew } from '../support/orchard'
import { plainJpeg } from './scene'

const crack = { kind: 'arborist', sign: 'crack', severity: 'high' } as const
const gum = { kind: 'disease', sign: 'gum', severity: 'low' } as const
const done = { done: 'Limb lowered in three pieces.', doneBy: 'Tall Oak Tree Care' }

describe.each(engines)('the queue of flags on $name', ({ open }) => {
  let db: TestDatabase
  beforeAll(async () => {
    db = await open()
  })
  afterAll(() => db.close())

  test('a lead confirms a disease and corrects what was seen; a volunteer does not', async () => {
    const { orchard, lead, ann } = await readyCrew(db)
    const { command: flag } = await ann.must('flag_tree', { tree: 3, ...gum })
    const seen = { flag, sign: 'canker', severity: 'high', part: 'limb', note: 'Two old cankers.' }

    const volunteer = await ann.send('confirm_flag', seen)
    await lead.must('confirm_flag', seen)

    expect(volunteer.status).toBe(403)
    const event = await lastEvent(orchard)
    expect(event).toMatchObject({
      kind: 'flag_confirmed',
      body: { flag, sign: 'canker', severity: 'high' },
    })
    expect(JSON.stringify(event)).not.toContain('cankers.')
    expect(codesOf(await ann.send('withdraw_flag', { flag }))).toEqual(['too_late_to_withdraw'])
    expect(await lead.read('snapshot', { person: lead.id })).toMatchObject({
      flags: { [flag]: { state: 'confirmed', sign: 'canker' } },
    })
  })

  test('a hazard is not confirmed, and what is over is over', async () => {
    const { lead, ann } = await readyCrew(db)
    const { command: hazard } = await ann.must('flag_tree', { tree: 3, ...crack })
    const { command: flag } = await ann.must('flag_tree', { tree: 4, ...gum })
    await ann.must('withdraw_flag', { flag })
    const { command: mistaken } = await ann.must('flag_tree', { tree: 9, ...crack })
    await ann.must('withdraw_flag', { flag: mistaken })

    const seen = { sign: 'gum', severity: 'low' }
    expect((await lead.send('confirm_flag', { flag: hazard, ...seen })).status).toBe(400)
    expect(codesOf(await lead.send('confirm_flag', { flag, ...seen }))).toEqual(['flag_over'])
    expect(codesOf(await lead.send('withdraw_flag', { flag }))).toEqual(['flag_over'])
    expect(codesOf(await lead.send('follow_up_flag', { flag, note: 'x' }))).toEqual(['flag_over'])
    expect(codesOf(await lead.send('change_keep_out', { flag: mistaken, keepOutM: 3 }))).toEqual([
      'flag_over',
    ])
  })

  test('a lead withdraws a disease at any time, confirmed or not', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    const { command: flag } = await ann.must('flag_tree', { tree: 3, ...gum })
    await lead.must('confirm_flag', { flag, sign: 'gum', severity: 'low' })

    expect(codesOf(await bo.send('withdraw_flag', { flag }))).toEqual(['not_yours'])
    await lead.must('withdraw_flag', { flag, note: 'A wound from the ladder.' })

    expect(await ann.read('my_flags', { person: ann.id })).toMatchObject([
      { flag, state: 'withdrawn', endedBy: lead.id, why: 'A wound from the ladder.' },
    ])
  })

  test('a hazard is cleared by a manager only, with what was done, by whom and when', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    const { command: flag } = await ann.must('flag_tree', { tree: 3, ...crack, keepOutM: 6 })
    const day = today()

    const byLead = await lead.send('clear_flag', { flag, ...done, doneOn: day })
    const withdrawn = await lead.send('withdraw_flag', { flag })
    await orchard.manager.must('clear_flag', { flag, ...done, doneOn: day })

    expect(byLead.status).toBe(403)
    expect(codesOf(withdrawn)).toEqual(['only_manager_clears'])
    const event = await lastEvent(orchard)
    expect(event).toMatchObject({ kind: 'flag_cleared', body: { flag } })
    expect(JSON.stringify(event)).not.toContain('Tall Oak')
    expect(
      await db.asOwner(
        'select state, done_by, done_on::text, ended_note from flags where id = $1',
        [flag]
      )
    ).toEqual([{ state: 'cleared', done_by: done.doneBy, done_on: day, ended_note: done.done }])
    await bo.must('claim_tree', { tree: 4 })
    await ann.must('claim_tree', { tree: 3 })
    expect(await ann.read('my_flags', { person: ann.id })).toMatchObject([
      { flag, state: 'cleared', doneOn: day },
    ])
  })

  test.each([
    ['without a word of what was done', { done: ' ' }],
    ['by nobody', { doneBy: '' }],
    ['in the future', { doneOn: '2999-01-01' }],
  ])('a hazard is not cleared %s', async (_what, change) => {
    const { orchard, lead } = await readyCrew(db)
    const { command: flag } = await lead.must('flag_tree', { tree: 3, ...crack })

    const reply = await orchard.manager.send('clear_flag', {
      flag,
      ...done,
      doneOn: today(),
      ...change,
    })

    expect(reply.status).toBe(400)
  })

  test('what leads write about a flag stays with leads; photos are heard by who took them too', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    const { command: flag } = await ann.must('flag_tree', { tree: 3, ...crack, note: 'Cracked.' })
    const { command: photo } = await ann.must('add_photo', {
      jpeg: plainJpeg,
      purpose: 'flag',
      flag,
    })
    await lead.must('follow_up_flag', { flag, note: 'Rang the arborist.' })

    const event = await lastEvent(orchard)
    expect(event).toMatchObject({ kind: 'flag_followed_up', body: null, leadBody: { flag } })
    expect(JSON.stringify(event)).not.toContain('Rang')
    expect(await lead.read('flag_details', { flags: [flag] })).toEqual({
      [flag]: {
        part: null,
        note: 'Cracked.',
        notes: [{ note: 'Rang the arborist.', at: expect.any(String), personId: lead.id }],
      },
    })
    expect(await ann.read('flag_details', { flags: [flag] })).toMatchObject({
      details: 'not_allowed',
    })
    const heard = async (person: typeof ann) => {
      const told = (await person.read('snapshot', { person: person.id })) as {
        flags: Record<string, { photos?: string[]; notes?: number }>
      }
      return told.flags[flag]
    }
    expect(await heard(lead)).toMatchObject({ photos: [photo], notes: 1 })
    expect(await heard(ann)).toMatchObject({ photos: [photo] })
    expect(await heard(bo)).not.toHaveProperty('photos')
    expect(await heard(bo)).not.toHaveProperty('notes')
  })

  test('nobody reads what became of somebody else’s reports', async () => {
    const { ann, bo } = await readyCrew(db)
    await ann.must('flag_tree', { tree: 3, ...gum })

    expect(await bo.read('my_flags', { person: bo.id })).toEqual([])
    expect(await bo.read('my_flags', { person: ann.id })).toMatchObject({ details: 'not_allowed' })
  })
})

function today(): string {
  return new Date().toISOString().slice(0, 10)
}
