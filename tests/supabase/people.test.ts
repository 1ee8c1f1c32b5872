/** Adding, changing, letting in and putting out; consent and skills. */

import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import {
  codesOf,
  crewOfThree,
  faultOf,
  lastEvent,
  newCode,
  newOrchard,
  readyCrew,
  sendAs,
  sha256,
} from '../support/orchard'

describe.each(engines)('people on $name', ({ open }) => {
  let database: TestDatabase
  beforeAll(async () => {
    database = await open()
  }, 60_000)
  afterAll(() => database.close())

  async function headOf(orchard: string) {
    const [head] = await database.asOwner(
      'select head::integer as head, channel_epoch from public.orchard_heads where orchard_id = $1',
      [orchard]
    )
    return head
  }

  test('a lead adds volunteers and visitors, a manager anybody, a volunteer nobody', async () => {
    const { orchard, lead, ann } = await crewOfThree(database)

    expect(codesOf(await lead.send('add_person', { name: 'V', role: 'visitor' }))).toEqual([])
    expect(codesOf(await lead.send('add_person', { name: 'L', role: 'lead' }))).toEqual([
      'not_yours_to_give',
    ])
    expect(codesOf(await orchard.manager.send('add_person', { name: 'L', role: 'lead' }))).toEqual(
      []
    )
    expect(faultOf(await ann.send('add_person', { name: 'X' }))).toBe('403 not_allowed')
  })

  test('the same command twice adds one person; with another name it is an error', async () => {
    const { lead } = await crewOfThree(database)
    const first = await lead.send('add_person', { name: 'Once' })

    const again = await lead.send('add_person', { name: 'Once' }, first.command)
    const other = await lead.send('add_person', { name: 'Twice' }, first.command)

    expect(again.body).toEqual(first.body)
    expect(faultOf(other)).toBe('409 command_id_used')
    expect(
      await database.asOwner('select name from public.people where id = $1', [first.command])
    ).toEqual([{ name: 'Once' }])
  })

  test.each([
    { name: '' },
    { name: 'x'.repeat(61) },
    { name: 'A', role: 'king' },
    { name: 'A', ageBand: 'old' },
    { name: 'A', ageBand: 'minor', role: 'lead' },
    { name: 'A', phone: '1'.repeat(41) },
  ])('%j is malformed', async (args) => {
    const { orchard } = await crewOfThree(database)
    expect(faultOf(await orchard.manager.send('add_person', args))).toBe('400 malformed')
  })

  test('a lead may set right a volunteer’s name and phone, but not make leads, nor touch them', async () => {
    const { orchard, lead, ann } = await crewOfThree(database)

    await lead.must('change_person', { subject: ann.id, name: 'Anne', phone: '555 0101' })
    await lead.must('change_person', { subject: lead.id, name: 'Leigh' })
    const promoted = await lead.send('change_person', { subject: ann.id, role: 'lead' })
    const touched = await lead.send('change_person', { subject: orchard.manager.id, name: 'Boss' })

    expect([promoted, touched].map(codesOf)).toEqual([['not_yours_to_give'], ['not_yours_to_give']])
    expect(
      await database.asOwner('select name, role, phone from public.people where id = $1', [ann.id])
    ).toEqual([{ name: 'Anne', role: 'volunteer', phone: '555 0101' }])
    expect(
      await database.asOwner(
        `select n from public.events where orchard_id = $1 and concat(body, lead_body) like '%555%'`,
        [orchard.id]
      )
    ).toEqual([])
  })

  test('the last manager who can sign in stays manager and stays in', async () => {
    const { manager: boss } = await newOrchard(database)
    // Somebody without a phone cannot manage.
    await boss.must('add_person', { name: 'On paper', role: 'manager' })

    const removed = await boss.send('remove_person', { subject: boss.id })
    const demoted = await boss.send('change_person', { subject: boss.id, role: 'volunteer' })
    const signedOut = await boss.send('end_login')

    expect([removed, demoted, signedOut].map(codesOf)).toEqual([
      ['last_manager'],
      ['last_manager'],
      ['last_manager'],
    ])
    await boss.adds('Second', { role: 'manager' })
    await boss.must('remove_person', { subject: boss.id })
  })

  test('a removed person holds nothing, hears it on the old channel, and is out', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(database)
    const { command: claim } = await ann.must('claim_tree', { tree: 5 })
    await lead.must('deal_trees', { trees: [7], to: [ann.id] })
    await lead.must('deal_trees', { trees: [8], to: [ann.id, bo.id] })
    const messages = await database.listenMessages()
    const before = await headOf(orchard.id)

    await lead.must('remove_person', { subject: ann.id })

    const event = await lastEvent(orchard)
    expect(event).toMatchObject({
      kind: 'person_removed',
      body: {
        person: ann.id,
        channel: 2,
        claimsEnded: [claim],
        work: [[5, 'begun', null]],
        dealsEnded: [7],
        left: [ann.id],
        returned: [1],
      },
    })
    expect(before).toMatchObject({ channel_epoch: 1 })
    expect(await headOf(orchard.id)).toMatchObject({ channel_epoch: 2 })
    await expect
      .poll(() => messages.filter(({ payload }) => payload.kind === 'person_removed').at(-1)?.topic)
      .toBe(`orchard:${orchard.id}:1`)
    expect(faultOf(await ann.send('arrive'))).toBe('403 not_allowed')
    // Somebody else may go on where Ann stopped.
    await bo.must('claim_tree', { tree: 5 })
  })

  test('a removed helper leaves the tree to its holder', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(database)
    const { command: claim } = await ann.must('claim_tree', { tree: 5, helpers: [bo.id] })

    await lead.must('remove_person', { subject: bo.id })

    expect(await lastEvent(orchard)).toMatchObject({ body: { claimsLeft: [[claim, bo.id]] } })
    await ann.must('finish_tree', { claim, tree: 5, elapsedS: 60 })
  })

  test('links that a removed person kept open nothing', async () => {
    const { orchard, lead } = await crewOfThree(database)
    await lead.must('make_invite', { kind: 'join', codeHash: sha256(newCode()) })
    const open = 'select kind from public.invites where made_by = $1 and ended_at is null'
    expect(await database.asOwner(open, [lead.id])).toContainEqual({ kind: 'join' })

    await orchard.manager.must('remove_person', { subject: lead.id })

    expect(await database.asOwner(open, [lead.id])).toEqual([])
  })

  test('a lead does not remove leads or managers, nor end their phones', async () => {
    const { orchard, lead } = await crewOfThree(database)
    const other = await orchard.manager.adds('Other lead', { role: 'lead' })

    const removed = await lead.send('remove_person', { subject: other.id })
    const [login] = await database.asOwner('select id from public.logins where person_id = $1', [
      other.id,
    ])
    const ended = await lead.for(other).send('end_login', { login: login?.id })

    expect([removed, ended].map(codesOf)).toEqual([['not_yours_to_give'], ['not_yours_to_give']])
  })

  test('ending a login puts that phone out and moves the channel', async () => {
    const { orchard, ann, lead } = await crewOfThree(database)

    await ann.must('end_login')

    expect(await lastEvent(orchard)).toMatchObject({ kind: 'login_ended', body: { channel: 2 } })
    expect(await headOf(orchard.id)).toMatchObject({ channel_epoch: 2 })
    expect(faultOf(await ann.send('end_login'))).toBe('403 not_allowed')
    expect(faultOf(await lead.for(ann).send('end_login'))).toBe('404 no_such_login')
  })

  test('unsent work is handed in once, by the phone that was put out, within 48 hours', async () => {
    const { lead, ann, bo } = await crewOfThree(database)
    const work = [{ name: 'finish_tree', args: { tree: 5 } }]
    expect(faultOf(await ann.send('hand_in', { work }))).toBe('403 not_allowed')
    await lead.must('remove_person', { subject: ann.id })

    const first = await ann.send('hand_in', { work })
    const again = await ann.send('hand_in', { work }, first.command)
    const more = await ann.send('hand_in', { work: [] })

    expect(again.body).toEqual(first.body)
    expect(codesOf(more)).toEqual(['handed_in_before'])
    expect(faultOf(await bo.for(ann).send('hand_in', { work }))).toBe('403 not_allowed')
    expect(
      await database.asOwner('select work from public.hand_ins where person_id = $1', [ann.id])
    ).toEqual([{ work }])

    await lead.must('remove_person', { subject: bo.id })
    expect(faultOf(await bo.send('hand_in', { work: 'x' }))).toBe('400 malformed')
    expect(faultOf(await bo.send('hand_in', { work: ['x'.repeat(200_000)] }))).toBe('413 too_large')
    await database.asOwner(
      `with late as (update public.people set removed_at = now() - interval '49 hours' where id = $1 returning id, removed_at)
       update public.logins l set ended_at = late.removed_at from late where l.person_id = late.id`,
      [bo.id]
    )
    expect(faultOf(await bo.send('hand_in', { work }))).toBe('403 not_allowed')
  })

  test('another orchard’s people are nobody here', async () => {
    const here = await crewOfThree(database)
    const there = await crewOfThree(database)

    const removed = await here.lead.send('remove_person', { subject: there.ann.id })

    expect(faultOf(removed)).toBe('404 no_such_person')
    expect(
      await database.asOwner('select removed_at from public.people where id = $1', [there.ann.id])
    ).toEqual([{ removed_at: null }])
    expect(faultOf(await here.lead.for(there.ann).send('arrive'))).toBe('404 no_such_person')
  })

  test('whoever is no manager any more comes back as one by no link they made', async () => {
    const { orchard } = await crewOfThree(database)
    const other = await orchard.manager.adds('Max', { role: 'manager' })
    const [asManager, forShift] = [newCode(), newCode()]
    await other.must('make_invite', {
      kind: 'role',
      role: 'manager',
      codeHash: sha256(asManager),
    })
    await other.must('make_invite', { kind: 'join', codeHash: sha256(forShift) })
    const redeem = async (code: string) =>
      codesOf(await sendAs(database, await database.newUser(), 'redeem', { code, name: 'Again' }))

    await orchard.manager.must('change_person', { subject: other.id, role: 'lead' })
    expect([await redeem(asManager), await redeem(forShift)]).toEqual([['code_expired'], []])

    await orchard.manager.must('change_person', { subject: other.id, role: 'volunteer' })
    expect(await redeem(forShift)).toEqual(['code_expired'])
  })

  test('what was typed is not kept beside the answer', async () => {
    const { lead, ann } = await crewOfThree(database)
    const added = await lead.must('add_person', { name: 'Perpetua Unlike', phone: '555 0199' })
    await ann.must('flag_tree', {
      tree: 3,
      kind: 'disease',
      sign: 'gum',
      severity: 'low',
      note: 'Perpetua Unlike saw it',
    })

    expect(
      await database.asOwner(
        `select count(*)::integer as count from public.command_answers a where a::text ~ 'Perpetua|555 0199'`
      )
    ).toEqual([{ count: 0 }])
    expect(
      faultOf(
        await lead.send('add_person', { name: 'Perpetua Alike', phone: '555 0199' }, added.command)
      )
    ).toBe('409 command_id_used')
  })

  describe('consent', () => {
    test('is a person’s own, for the season of the round, and told to leads and the person', async () => {
      const { orchard, ann } = await crewOfThree(database)

      await ann.must('give_consent', { textVersion: 1 })

      expect(await lastEvent(orchard)).toMatchObject({
        kind: 'consent_given',
        person: ann.id,
        body: null,
        leadBody: { person: ann.id, season: 2026 },
        own: true,
      })
    })

    test('an adult consents for no other adult', async () => {
      const { ann, bo } = await crewOfThree(database)
      expect(faultOf(await ann.send('give_consent', { textVersion: 1, by: bo.id }))).toBe(
        '400 malformed'
      )
    })

    test('who turns out to be a minor has consented to nothing yet', async () => {
      const { lead, ann, bo } = await readyCrew(database)
      await lead.must('change_person', { subject: bo.id, ageBand: 'minor', guardian: ann.id })

      const refused = codesOf(await bo.send('claim_tree', { tree: 3 }))
      const { consents } = (await lead.read('snapshot', { person: lead.id })) as {
        consents: Record<string, number>
      }

      expect(refused).toEqual(['consent_missing'])
      expect(consents).not.toHaveProperty(bo.id)
      await lead.for(bo).must('give_consent', { textVersion: 1, by: ann.id })
      await bo.must('claim_tree', { tree: 3 })
    })

    test('a minor’s guardian consents, with a lead or on a phone that is the guardian’s', async () => {
      const { lead, ann, bo } = await crewOfThree(database)
      const kid = await lead.adds('Kid', { ageBand: 'minor', guardian: ann.id })

      const alone = await kid.send('give_consent', { textVersion: 1 })
      const forged = await kid.send('give_consent', { textVersion: 1, by: ann.id })
      const byOther = await lead.for(kid).send('give_consent', { textVersion: 1, by: bo.id })
      expect([alone, forged, byOther].map(codesOf)).toEqual([
        ['guardian_must_consent'],
        ['guardian_must_consent'],
        ['guardian_must_consent'],
      ])

      await lead.for(kid).must('give_consent', { textVersion: 1, by: ann.id })
      expect(
        await database.asOwner(
          'select by_person_id as by from public.consents where person_id = $1',
          [kid.id]
        )
      ).toEqual([{ by: ann.id }])
    })

    test('to a text that was changed since does not count', async () => {
      const { orchard, ann } = await crewOfThree(database)
      await orchard.manager.must('change_orchard', { houseRules: { consent_version: 2 } })
      expect(codesOf(await ann.send('give_consent', { textVersion: 1 }))).toEqual([
        'consent_changed',
      ])
    })

    test('needs a round', async () => {
      const { orchard, ann } = await crewOfThree(database)
      await orchard.manager.must('close_round', { round: orchard.round })
      expect(codesOf(await ann.send('give_consent', { textVersion: 1 }))).toEqual(['no_round'])
    })
  })

  describe('skills', () => {
    test('are granted to others, never to oneself, and the person hears it', async () => {
      const { orchard, lead, ann } = await crewOfThree(database)

      expect(
        codesOf(await lead.send('grant_skill', { subject: lead.id, skill: 'ladder' }))
      ).toEqual(['not_to_oneself'])
      await lead.must('grant_skill', { subject: ann.id, skill: 'ladder', until: '2027-03-31' })

      expect(await lastEvent(orchard)).toMatchObject({
        person: ann.id,
        by: lead.id,
        body: null,
        leadBody: { person: ann.id, skill: 'ladder', until: '2027-03-31' },
        own: true,
      })
      expect(faultOf(await ann.send('grant_skill', { subject: ann.id, skill: 'ladder' }))).toBe(
        '403 not_allowed'
      )
    })

    test('granted again it has the new end; ended it is gone', async () => {
      const { lead, ann } = await crewOfThree(database)
      const skill = { subject: ann.id, skill: 'hand_saw' }
      await lead.must('grant_skill', { ...skill, until: '2026-12-31' })
      await lead.must('grant_skill', skill)
      const open = 'select until from public.skills where person_id = $1 and ended_at is null'
      expect(await database.asOwner(open, [ann.id])).toEqual([{ until: null }])

      await lead.must('end_skill', skill)

      expect(await database.asOwner(open, [ann.id])).toEqual([])
    })
  })
})
