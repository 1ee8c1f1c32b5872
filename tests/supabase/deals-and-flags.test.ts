import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import { codesOf, lastEvent, readyCrew } from '../support/orchard'
import { longitudeAt } from '../support/sun-place'

/** A JPEG's first bytes and nothing more; enough for what the database looks at. */
const plainJpeg = Buffer.concat([Buffer.from('ffd8ffdb0043', 'hex'), Buffer.alloc(500, 7)])

describe.each(engines)('deals, flags and photos on $name', ({ open }) => {
  let db: TestDatabase
  beforeAll(async () => {
    db = await open()
  })
  afterAll(() => db.close())

  test('a volunteer deals nothing; a lead deals to a pair and takes back', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)

    const volunteer = await ann.send('deal_trees', { trees: [1], to: [ann.id] })
    await lead.must('deal_trees', { trees: [1, 2], to: [ann.id, bo.id] })
    await lead.must('take_back', { trees: [2, 9] })

    expect(volunteer.status).toBe(403)
    expect(await lastEvent(orchard)).toMatchObject({
      kind: 'trees_taken_back',
      body: { dealsEnded: [2] },
    })
  })

  test('a deal is refused as a whole, each reason with its trees', async () => {
    const { orchard, lead, ann } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 1 })
    await ann.must('finish_tree', { tree: 1, claim })
    await ann.must('claim_tree', { tree: 2 })
    await lead.must('flag_tree', {
      tree: 9,
      kind: 'arborist',
      sign: 'crack',
      severity: 'high',
      keepOutM: 6,
    })

    const answer = await lead.send('deal_trees', { trees: [1, 2, 8, 9, 15], to: [ann.id] })

    expect(answer.body.refused).toEqual([
      { code: 'arborist_flag', detail: { trees: [9] } },
      { code: 'inside_keep_out', detail: { trees: [8] } },
      { code: 'tree_done', detail: { trees: [1] } },
      { code: 'tree_in_progress', detail: { trees: [2] } },
    ])
    expect(await db.asOwner('select * from deals where orchard_id = $1', [orchard.id])).toEqual([])
  })

  test('flagging a hazard ends the claim and closes the tree and its neighbours in reach', async () => {
    const { orchard, ann, bo } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 5 })

    const flag = await ann.must('flag_tree', {
      tree: 5,
      kind: 'arborist',
      sign: 'hanging_limb',
      severity: 'danger_now',
      keepOutM: 5.5,
      share: 25,
    })

    expect(await lastEvent(orchard)).toMatchObject({
      body: { flag: flag.command, claimsEnded: [claim], work: [[5, 'begun', 25]], keepOutM: 5.5 },
    })
    expect(codesOf(await bo.send('claim_tree', { tree: 5 }))).toEqual(['arborist_flag'])
    expect((await bo.send('claim_tree', { tree: 6 })).body.refused).toEqual([
      { code: 'inside_keep_out', detail: { tree: 5 } },
    ])
    await bo.must('claim_tree', { tree: 7 })
  })

  test('a keep-out is measured from positions where there are some', async () => {
    const { orchard, lead, ann } = await readyCrew(db)
    // Trees 1 and 20 stand 8 m apart on the ground although they are nineteen places apart in the row.
    await db.asOwner(
      `update trees set lat_e7 = case no when 20 then 719 else 0 end, lon_e7 = $2
       where orchard_id = $1 and no in (1, 20)`,
      [orchard.id, Math.round(longitudeAt('noon', Date.now()) * 1e7)]
    )
    await lead.must('flag_tree', {
      tree: 1,
      kind: 'arborist',
      sign: 'crack',
      severity: 'high',
      keepOutM: 10,
    })

    expect(codesOf(await ann.send('claim_tree', { tree: 20 }))).toEqual(['inside_keep_out'])
  })

  test('a tree flagged for disease is only for whom a lead dealt it to', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    await bo.must('flag_tree', { tree: 3, kind: 'disease', sign: 'gum', severity: 'low' })

    const before = await ann.send('claim_tree', { tree: 3 })
    await lead.must('deal_trees', { trees: [3], to: [ann.id] })

    expect(codesOf(before)).toEqual(['disease_not_dealt'])
    await ann.must('claim_tree', { tree: 3 })
  })

  test('a flag is taken after the shift, and its words never travel in events', async () => {
    const { orchard, ann } = await readyCrew(db)
    await db.asOwner(
      "update shifts set state = 'closed', closed_at = now() where orchard_id = $1",
      [orchard.id]
    )

    await ann.must('flag_tree', {
      tree: 3,
      kind: 'disease',
      sign: 'canker',
      severity: 'high',
      note: 'Ask Pat.',
    })

    expect(JSON.stringify(await lastEvent(orchard))).not.toContain('Pat')
  })

  test('the reporter withdraws within two minutes, others never', async () => {
    const { ann, bo } = await readyCrew(db)
    const { command: flag } = await ann.must('flag_tree', {
      tree: 3,
      kind: 'disease',
      sign: 'gum',
      severity: 'low',
    })
    const { command: old } = await ann.must('flag_tree', {
      tree: 4,
      kind: 'disease',
      sign: 'gum',
      severity: 'low',
    })
    await db.asOwner(
      "update flags set raised_at = raised_at - interval '3 minutes' where id = $1",
      [old]
    )

    expect(codesOf(await bo.send('withdraw_flag', { flag }))).toEqual(['not_yours'])
    expect(codesOf(await ann.send('withdraw_flag', { flag: old }))).toEqual([
      'too_late_to_withdraw',
    ])
    await ann.must('withdraw_flag', { flag })
    expect(codesOf(await ann.send('withdraw_flag', { flag }))).toEqual(['too_late_to_withdraw'])
  })

  test('a photo is taken when it is plain and small; others hear only a number', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)

    const { command: photo } = await ann.must('add_photo', {
      jpeg: plainJpeg.toString('base64'),
      purpose: 'flag',
      tree: 3,
    })

    expect(await lastEvent(orchard)).toMatchObject({
      body: null,
      leadBody: { photo, tree: 3 },
      own: true,
    })
    expect(await lead.read('read_photo', { photo })).toEqual({ jpeg: plainJpeg.toString('base64') })
    expect(
      (await db.as(bo.userId, 'read_photo', { p_orchard: orchard.id, p_photo: photo })).status
    ).toBe(403)
  })

  test('the photo of a mark is told to all, and nobody hangs one on the mark of another', async () => {
    const { orchard, lead, ann } = await readyCrew(db)
    const jpeg = plainJpeg.toString('base64')
    const { command: mark } = await lead.must('mark_big_cuts', { tree: 3 })

    const { command: photo } = await lead.must('add_photo', { jpeg, purpose: 'mark', mark })
    expect(await lastEvent(orchard)).toMatchObject({
      kind: 'photo_added',
      body: { photo, tree: 3, mark },
    })

    const others = await ann.send('add_photo', { jpeg, purpose: 'mark', mark })
    const ofNone = await lead.send('add_photo', { jpeg, purpose: 'mark' })
    const mislabelled = await lead.send('add_photo', { jpeg, purpose: 'before', mark })
    expect(others.body.details).toBe('no_such_mark')
    expect([ofNone, mislabelled].map(({ status }) => status)).toEqual([400, 400])
  })

  test('a photo that comes after its mark was taken off is kept for leads', async () => {
    const { orchard, lead, bo } = await readyCrew(db)
    const { command: mark } = await lead.must('mark_big_cuts', { tree: 3 })
    await lead.must('unmark_big_cuts', { tree: 3 })

    const jpeg = plainJpeg.toString('base64')
    const { command: photo } = await lead.must('add_photo', { jpeg, purpose: 'mark', mark })

    expect(await lastEvent(orchard)).toMatchObject({ body: null, leadBody: { photo, tree: 3 } })
    expect(await bo.read('read_photo', { photo })).toMatchObject({ details: 'not_allowed' })
  })

  test('only a lead takes a mark off; without it the tree is not open to learners', async () => {
    const { orchard, lead, ann } = await readyCrew(db)
    await lead.must('mark_big_cuts', { tree: 3 })

    expect((await ann.send('unmark_big_cuts', { tree: 3 })).status).toBe(403)
    await lead.must('unmark_big_cuts', { tree: 3 })

    expect(await lastEvent(orchard)).toMatchObject({ kind: 'big_cuts_unmarked', body: { tree: 3 } })
  })

  test.each([
    [
      'with EXIF',
      Buffer.concat([plainJpeg, Buffer.from('457869660000', 'hex')]),
      'photo_not_plain',
    ],
    ['that is no JPEG', Buffer.from('GIF89a-something'), 'photo_not_plain'],
    ['over 200 kB', Buffer.concat([plainJpeg, Buffer.alloc(200_000, 7)]), 'photo_too_large'],
  ])('a photo %s is refused and nothing of it is kept', async (_what, jpeg, code) => {
    const { orchard, ann } = await readyCrew(db)

    const answer = await ann.send('add_photo', {
      jpeg: jpeg.toString('base64'),
      purpose: 'flag',
      tree: 3,
    })

    expect(codesOf(answer)).toEqual([code])
    expect(await db.asOwner('select id from photos where orchard_id = $1', [orchard.id])).toEqual(
      []
    )
  })

  test('the table itself takes no photo that tells where it was taken', async () => {
    const { orchard, ann } = await readyCrew(db)
    const withExif = Buffer.concat([plainJpeg, Buffer.from('457869660000', 'hex')]).toString('hex')

    const byHand = db.asOwner(
      `insert into photos (id, orchard_id, purpose, jpeg, taken_by, added_at)
       values (gen_random_uuid(), $1, 'flag', decode($2, 'hex'), $3, now())`,
      [orchard.id, withExif, ann.id]
    )

    await expect(byHand).rejects.toThrow(/photos_tell_nothing_else/)
  })
})
