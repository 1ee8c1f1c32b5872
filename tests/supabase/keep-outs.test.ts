import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import { codesOf, lastEvent, readyCrew } from '../support/orchard'

const crack = { kind: 'arborist', sign: 'crack', severity: 'high' } as const

describe.each(engines)('keep-outs on $name', ({ open }) => {
  let db: TestDatabase
  beforeAll(async () => {
    db = await open()
  })
  afterAll(() => db.close())

  test('a hazard ends every claim inside its keep-out, and says who was told to come out', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    const { command: near } = await ann.must('claim_tree', { tree: 6 })
    const { command: far } = await bo.must('claim_tree', { tree: 9 })

    const { command: flag } = await lead.must('flag_tree', { tree: 5, ...crack, keepOutM: 6 })

    expect(await lastEvent(orchard)).toMatchObject({
      body: {
        claimsEnded: [near],
        work: [[6, 'begun', null]],
        inside: { [ann.id]: { tree: 6, out: false } },
      },
    })
    const claims = await db.asOwner(
      'select id, ended_how from claims where orchard_id = $1 order by ended_how',
      [orchard.id]
    )
    expect(claims).toEqual([
      { id: near, ended_how: 'flagged' },
      { id: far, ended_how: null },
    ])
    expect(codesOf(await ann.send('claim_tree', { tree: 6 }))).toEqual(['inside_keep_out'])
    expect(await lead.read('snapshot', { person: lead.id })).toMatchObject({
      flags: { [flag]: { inside: { [ann.id]: { tree: 6, out: false } } } },
    })
  })

  test('work finished inside a keep-out before the phone knew of it is kept', async () => {
    const { orchard, lead, ann } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 6 })
    await lead.must('flag_tree', { tree: 5, ...crack, keepOutM: 6 })

    const late = await ann.must('finish_tree', { tree: 6, claim, elapsedS: 300 })

    expect(late.body).toMatchObject({ kept: 'also_worked' })
    expect(
      await db.asOwner(
        "select person_id, result, seconds from visits where orchard_id = $1 and result = 'also_worked'",
        [orchard.id]
      )
    ).toEqual([{ person_id: ann.id, result: 'also_worked', seconds: expect.any(Number) }])
  })

  test('who stands inside says that they are out; a lead says it for who has no phone', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    await ann.must('claim_tree', { tree: 4, helpers: [bo.id] })
    const { command: flag } = await lead.must('flag_tree', { tree: 5, ...crack, keepOutM: 6 })

    await ann.must('answer_keep_out', { flag })
    await lead.for(bo).must('answer_keep_out', { flag })
    await ann.must('answer_keep_out', { flag })

    expect(
      await db.asOwner(
        'select person_id, out_by from keep_out_people where orchard_id = $1 order by out_at',
        [orchard.id]
      )
    ).toEqual([
      { person_id: ann.id, out_by: ann.id },
      { person_id: bo.id, out_by: lead.id },
    ])
    expect((await bo.send('answer_keep_out', { flag: ann.id })).status).toBe(404)
  })

  test('a bystander ends the claim and says nothing about how far somebody else is', async () => {
    const { orchard, ann, bo } = await readyCrew(db)
    await ann.must('claim_tree', { tree: 5 })

    await bo.must('flag_tree', { tree: 5, ...crack, keepOutM: 0, share: 90 })

    expect(await lastEvent(orchard)).toMatchObject({
      body: { work: [[5, 'begun', null]], inside: { [ann.id]: { tree: 5, out: false } } },
    })
  })

  test('who holds the tree says how far it is, and that is in its history', async () => {
    const { orchard, ann } = await readyCrew(db)
    await ann.must('claim_tree', { tree: 5 })

    await ann.must('flag_tree', { tree: 5, ...crack, keepOutM: 0, share: 40 })

    const event = await lastEvent(orchard)
    expect(event).toMatchObject({ body: { work: [[5, 'begun', 40]] } })
    expect(event).not.toHaveProperty('body.inside')
    expect(
      await db.asOwner('select person_id, result, share from visits where orchard_id = $1', [
        orchard.id,
      ])
    ).toEqual([{ person_id: ann.id, result: 'begun', share: 40 }])
  })

  test('a lead widens a keep-out and whoever is inside now is told; only a manager narrows it', async () => {
    const { orchard, lead, ann } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 7 })
    const { command: flag } = await lead.must('flag_tree', { tree: 5, ...crack, keepOutM: 4 })

    const volunteer = await ann.send('change_keep_out', { flag, keepOutM: 50 })
    await lead.must('change_keep_out', { flag, keepOutM: 12 })
    const widened = await lastEvent(orchard)
    const narrower = await lead.send('change_keep_out', { flag, keepOutM: 5 })
    await orchard.manager.must('change_keep_out', { flag, keepOutM: 0 })

    expect(volunteer.status).toBe(403)
    expect(widened).toMatchObject({
      kind: 'keep_out_changed',
      body: {
        flag,
        keepOutM: 12,
        claimsEnded: [claim],
        inside: { [ann.id]: { tree: 7, out: false } },
      },
    })
    expect(codesOf(narrower)).toEqual(['only_manager_narrows'])
    await ann.must('claim_tree', { tree: 7 })
  })

  test('the reporter does not take back a hazard whose keep-out a lead has changed', async () => {
    const { lead, ann } = await readyCrew(db)
    const { command: flag } = await ann.must('flag_tree', { tree: 5, ...crack, keepOutM: 4 })
    await lead.must('change_keep_out', { flag, keepOutM: 8 })

    expect(codesOf(await ann.send('withdraw_flag', { flag }))).toEqual(['too_late_to_withdraw'])
  })
})
