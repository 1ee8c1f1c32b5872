/** The first manager, links, codes: who gets in, as whom, and who does not. */

import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import type { Row } from '../../supabase/local/engine/engine'
import { engines, type TestDatabase } from '../support/engines'
import {
  type Crew,
  codesOf,
  crewOfThree,
  faultOf,
  lastEvent,
  newCode,
  openShift,
  Person,
  readyCrew,
  sendAs,
  sha256,
} from '../support/orchard'

const founding = {
  name: 'Long Meadow',
  personName: 'First',
  timeZone: 'Europe/Madrid',
  language: 'es',
  units: 'metric',
}

describe.each(engines)('getting in on $name', ({ open }) => {
  let database: TestDatabase
  beforeAll(async () => {
    database = await open()
  }, 60_000)
  afterAll(() => database.close())

  async function setUpCode(hours = 24): Promise<string> {
    const code = newCode()
    await database.asOwner('select private.make_setup_code($1, $2)', [sha256(code), hours])
    return code
  }

  /** A link made by this person; the code that it carries. */
  async function link(by: Person, args: Row): Promise<string> {
    const code = newCode()
    await by.must('make_invite', { codeHash: sha256(code), ...args })
    return code
  }

  async function come(code: string, name: string, user?: string) {
    const userId = user ?? (await database.newUser())
    return { userId, ...(await sendAs(database, userId, 'redeem', { code, name })) }
  }

  describe('with a set-up code', () => {
    test('one manager founds one orchard, and sending it again gives the same answer', async () => {
      const user = await database.newUser()
      const code = await setUpCode()

      const first = await sendAs(database, user, 'create_orchard', { code, ...founding })
      const again = await sendAs(
        database,
        user,
        'create_orchard',
        { code, ...founding },
        first.command
      )

      expect(first.body).toEqual({ n: 1, orchard: first.command, person: first.command })
      expect(again.body).toEqual(first.body)
      expect(
        await database.asOwner('select role, name from public.people where orchard_id = $1', [
          first.command,
        ])
      ).toEqual([{ role: 'manager', name: 'First' }])
    })

    test('a code that is wrong, over or used founds nothing', async () => {
      const user = await database.newUser()
      const used = await setUpCode()
      await sendAs(database, user, 'create_orchard', { code: used, ...founding })
      const over = await setUpCode(-1)
      const before = await database.asOwner(
        'select count(*)::integer as count from public.orchards'
      )

      const answers = await Promise.all(
        ['nonsense', over, used].map((code) =>
          sendAs(database, user, 'create_orchard', { code, ...founding })
        )
      )

      expect(answers.map(codesOf)).toEqual([['code_wrong'], ['code_expired'], ['code_used']])
      expect(
        await database.asOwner('select count(*)::integer as count from public.orchards')
      ).toEqual(before)
    })

    test.each([
      { timeZone: 'Nowhere/Land' },
      { timeZone: 'XYZ3' },
      { timeZone: 'PST' },
      { timeZone: 'posix/Europe/Madrid' },
      { name: '   ' },
      { name: 'x'.repeat(81) },
      { personName: 'two\nlines' },
      { language: 'fr' },
    ])('%j is malformed and does not use the code up', async (wrong) => {
      const user = await database.newUser()
      const code = await setUpCode()

      const answer = await sendAs(database, user, 'create_orchard', {
        code,
        ...founding,
        ...wrong,
      })

      expect(faultOf(answer)).toBe('400 malformed')
      expect(
        await database.asOwner('select used_at from public.setup_codes where code_hash = $1', [
          sha256(code),
        ])
      ).toEqual([{ used_at: null }])
    })

    test('somebody else who learns the command id does not get the answer', async () => {
      const code = await setUpCode()
      const user = await database.newUser()
      const { command } = await sendAs(database, user, 'create_orchard', { code, ...founding })

      const thief = await sendAs(
        database,
        await database.newUser(),
        'create_orchard',
        { code, ...founding },
        command
      )

      expect(faultOf(thief)).toBe('409 command_id_used')
    })

    test('ten wrong codes in an hour are enough, also for the right one; others are not held up', async () => {
      const user = await database.newUser()
      const code = await setUpCode()
      for (let i = 0; i < 10; i++) {
        await sendAs(database, user, 'create_orchard', { code: `guess ${i}`, ...founding })
      }

      const blocked = await sendAs(database, user, 'create_orchard', { code, ...founding })
      const other = await sendAs(database, await database.newUser(), 'create_orchard', {
        code,
        ...founding,
      })

      expect(faultOf(blocked)).toBe('429 too_many')
      expect(codesOf(other)).toEqual([])

      await database.asOwner(
        `update public.wrong_codes set since = now() - interval '61 minutes' where user_id = $1`,
        [user]
      )
      expect(codesOf(await sendAs(database, user, 'redeem', { code: 'x', name: 'A' }))).toEqual([
        'code_wrong',
      ])
    })
  })

  describe('with a join link', () => {
    let crew: Crew
    beforeAll(async () => {
      crew = await crewOfThree(database)
    })

    test('outside an open shift one waits for a lead, and hears nothing until let in', async () => {
      const code = await link(crew.lead, { kind: 'join' })
      const { body, userId } = await come(code, '  Dee ')

      expect(body).toMatchObject({ orchard: crew.orchard.id })
      expect(await lastEvent(crew.orchard)).toMatchObject({
        kind: 'person_joined',
        person: body.person,
        body: { person: body.person, role: 'volunteer', admitted: false },
      })
      const dee = new Person(database, crew.orchard.id, String(body.person), userId)
      expect(await dee.read('snapshot', { person: dee.id })).toMatchObject({
        details: 'not_admitted',
      })

      await crew.lead.must('admit_person', { subject: dee.id })

      expect(await dee.read('snapshot', { person: dee.id })).toMatchObject({
        me: { personId: dee.id },
      })
    })

    test('whoever waits to be let in can stop nothing, close no tree and fail no tool', async () => {
      const own = await readyCrew(database)
      const { command: claim } = await own.ann.must('claim_tree', { tree: 3 })
      const code = await link(own.lead, { kind: 'join' })
      const { body, userId } = await come(code, 'Zoe')
      const zoe = new Person(database, own.orchard.id, String(body.person), userId)
      await database.asOwner('update public.people set admitted_at = null where id = $1', [zoe.id])
      const hazard = { tree: 3, kind: 'arborist', sign: 'crack', severity: 'danger_now' }

      const tried = [
        await zoe.send('flag_tree', hazard),
        await zoe.send('stop_work'),
        await zoe.send('fail_tool', { tool: 1, failedItems: [] }),
      ]

      expect(tried.map(faultOf)).toEqual(Array(3).fill('403 not_admitted'))
      await own.ann.must('finish_tree', { tree: 3, claim })
      await own.lead.must('admit_person', { subject: zoe.id })
      await zoe.must('stop_work')
    })

    test('a link made before any shift was open ends with the next shift, too', async () => {
      const own = await crewOfThree(database)
      const code = await link(own.lead, { kind: 'join' })
      await openShift(own)
      expect(codesOf(await come(code, 'Zoe'))).toEqual([])
      await own.lead.must('close_shift')

      expect(codesOf(await come(code, 'Yan'))).toEqual(['code_expired'])
    })

    test('the name is not in any event', async () => {
      const code = await link(crew.lead, { kind: 'join' })
      await come(code, 'Perpetua Unmistakable')

      expect(
        await database.asOwner(
          `select count(*)::integer as count from public.people where name = 'Perpetua Unmistakable'`
        )
      ).toEqual([{ count: 1 }])
      expect(
        await database.asOwner(
          `select n from public.events where concat(body, lead_body) like '%Perpetua%'`
        )
      ).toEqual([])
    })

    test('the same login and name is the same person, another name is another', async () => {
      const code = await link(crew.lead, { kind: 'join' })
      const parent = await come(code, 'Parent')

      const again = await come(code, 'Parent', parent.userId)
      const child = await come(code, 'Child', parent.userId)

      expect(again.body.person).toBe(parent.body.person)
      expect(child.body.person).not.toBe(parent.body.person)
    })

    test('an age band makes a minor, and only leads and the phone itself are told', async () => {
      const code = await link(crew.lead, { kind: 'join' })
      await sendAs(database, await database.newUser(), 'redeem', {
        code,
        name: 'Kid',
        ageBand: 'minor',
      })

      const event = await lastEvent(crew.orchard)
      expect(event).toMatchObject({ leadBody: { minor: true }, own: true })
      expect(JSON.stringify(event.body)).not.toContain('minor')
    })

    test('a volunteer makes none, and a made-up role is not taken from the client', async () => {
      const codeHash = sha256(newCode())
      const asked = await crew.ann.send('make_invite', { kind: 'join', codeHash })
      expect(faultOf(asked)).toBe('403 not_allowed')

      const code = await link(crew.lead, { kind: 'join', role: 'manager' })
      const { body } = await come(code, 'Sly')
      expect(
        await database.asOwner('select role from public.people where id = $1', [
          String(body.person),
        ])
      ).toEqual([{ role: 'volunteer' }])
    })

    test('a link that was ended is over, and the answer stays the same', async () => {
      const code = newCode()
      const { body } = await crew.lead.must('make_invite', {
        kind: 'join',
        codeHash: sha256(code),
      })
      await crew.lead.must('end_invite', { invite: body.invite })

      const user = await database.newUser()
      const late = await sendAs(database, user, 'redeem', { code, name: 'Late' })
      const again = await sendAs(database, user, 'redeem', { code, name: 'Late' }, late.command)

      expect(codesOf(late)).toEqual(['code_expired'])
      expect(again.body).toEqual(late.body)
    })

    test('a lead ends no link that makes a lead, nor a manager’s way back in', async () => {
      const { orchard, lead } = crew
      for (const wish of [{ kind: 'role', role: 'lead' }, { kind: 'recovery' }]) {
        const codeHash = sha256(newCode())
        const { body } = await orchard.manager.must('make_invite', { ...wish, codeHash })
        const ended = await lead.send('end_invite', { invite: body.invite })
        expect(codesOf(ended)).toEqual(['not_yours_to_give'])
        await orchard.manager.must('end_invite', { invite: body.invite })
      }
    })

    test('a link counts down', async () => {
      const code = await link(crew.lead, { kind: 'join' })
      await database.asOwner('update public.invites set uses_left = 1 where code_hash = $1', [
        sha256(code),
      ])

      await come(code, 'Last one')

      expect(codesOf(await come(code, 'One more'))).toEqual(['code_used'])
    })

    test('ten people a day on one phone are enough', async () => {
      const code = await link(crew.lead, { kind: 'join' })
      const { userId } = await come(code, 'Person 0')
      for (let i = 1; i < 10; i++) await come(code, `Person ${i}`, userId)

      expect(faultOf(await come(code, 'Person 10', userId))).toBe('429 too_many')
    })

    test('what is behind a link is told before it is used, and nothing about a wrong one', async () => {
      const code = await link(crew.lead, { kind: 'join' })
      const user = await database.newUser()
      const look = async (p_code: string) =>
        (await database.as(user, 'look_at_invite', { p_code })).body

      expect(await look(code)).toEqual({
        orchardName: 'Three Wells',
        language: 'en',
        kind: 'join',
        role: 'volunteer',
        shiftDate: null,
        over: null,
      })
      expect(await look('nonsense')).toBeNull()
    })

    test('of a link that lets nobody in any more is told why', async () => {
      const ann = await crew.lead.adds('Ann')
      const user = await database.newUser()
      const overOf = async (p_code: string) =>
        ((await database.as(user, 'look_at_invite', { p_code })).body as Row).over
      const used = await link(crew.lead, { kind: 'device', subject: ann.id })
      await sendAs(database, user, 'redeem', { code: used })
      const late = await link(crew.lead, { kind: 'join' })
      await database.asOwner(
        `update public.invites set expires_at = now() - interval '1 minute' where code_hash = $1`,
        [sha256(late)]
      )

      expect(await overOf(used)).toBe('code_used')
      expect(await overOf(late)).toBe('code_expired')
    })
  })

  test('in an open shift a join link lets in at once; at its close the link ends', async () => {
    const { lead, orchard } = await readyCrew(database)
    const code = await link(lead, { kind: 'join' })

    const { body } = await come(code, 'Early')
    expect(await lastEvent(orchard)).toMatchObject({ body: { admitted: true } })

    await database.asOwner(
      'update public.tool_holdings set returned_at = now() where orchard_id = $1',
      [orchard.id]
    )
    await database.asOwner('update public.attendances set left_at = now() where orchard_id = $1', [
      orchard.id,
    ])
    await lead.must('close_shift')
    expect(codesOf(await come(code, 'Late'))).toEqual(['code_expired'])
    expect(body.n).toBeGreaterThan(0)
  })

  test('who came the evening before is let in by the same link in the open shift', async () => {
    const crew = await crewOfThree(database)
    const code = await link(crew.lead, { kind: 'join' })
    const evening = await come(code, 'Dee')
    await openShift(crew)

    const morning = await come(code, 'Dee', evening.userId)

    expect(morning.body.person).toBe(evening.body.person)
    expect(await lastEvent(crew.orchard)).toMatchObject({
      kind: 'person_admitted',
      body: { person: evening.body.person },
    })
  })

  test('who was put out comes back only when a lead lets them in', async () => {
    const { lead, ann, orchard } = await readyCrew(database)
    const code = await link(lead, { kind: 'join' })
    await orchard.manager.must('remove_person', { subject: ann.id })

    const { body } = await come(code, 'Ann', ann.userId)

    expect(body.person).not.toBe(ann.id)
    expect(await lastEvent(orchard)).toMatchObject({ body: { admitted: false } })
  })

  test('a role link makes one lead, once; the one who used it may open it again', async () => {
    const { orchard } = await crewOfThree(database)
    const code = await link(orchard.manager, { kind: 'role', role: 'lead' })

    const first = await come(code, 'Second lead')
    const thief = await come(code, 'Thief')
    const again = await come(code, 'Second lead', first.userId)

    expect(codesOf(thief)).toEqual(['code_used'])
    expect(again.body.person).toBe(first.body.person)
    expect(
      await database.asOwner('select role from public.people where id = $1', [
        String(first.body.person),
      ])
    ).toEqual([{ role: 'lead' }])
  })

  test('whoever opens a lead’s link waits until a manager lets them in, and no lead does', async () => {
    const { orchard, lead, ann } = await crewOfThree(database)
    const code = await link(orchard.manager, { kind: 'role', role: 'lead' })

    const { userId, body } = await come(code, 'Whoever was in the chat')
    const comer = new Person(database, orchard.id, String(body.person), userId)

    expect(faultOf(await comer.send('remove_person', { subject: ann.id }))).toBe('403 not_admitted')
    expect(codesOf(await lead.send('admit_person', { subject: comer.id }))).toEqual([
      'not_yours_to_give',
    ])
    await orchard.manager.must('admit_person', { subject: comer.id })
    expect(await comer.read('snapshot', { person: comer.id })).toMatchObject({
      me: { role: 'lead' },
    })
  })

  test('a device link is a second phone for the same person', async () => {
    const { ann } = await crewOfThree(database)
    const code = await link(ann, { kind: 'device' })

    const { userId, body } = await come(code, 'ignored')

    expect(body.person).toBe(ann.id)
    const second = new Person(database, ann.orchardId, ann.id, userId)
    expect(await second.read('snapshot', { person: ann.id })).toMatchObject({
      me: { personId: ann.id },
    })
    expect(codesOf(await come(code, 'ignored'))).toEqual(['code_used'])
  })

  test('a lead cannot make a phone that is the manager’s', async () => {
    const { orchard, lead } = await crewOfThree(database)

    const asked = await lead.send('make_invite', {
      kind: 'device',
      subject: orchard.manager.id,
      codeHash: sha256(newCode()),
    })

    expect(codesOf(asked)).toEqual(['not_yours_to_give'])
    expect(
      await database.asOwner('select id from public.invites where person_id = $1', [
        orchard.manager.id,
      ])
    ).toEqual([])
  })

  test('a manager who lost the phone comes back by the recovery code', async () => {
    const { orchard } = await crewOfThree(database)
    const code = await link(orchard.manager, { kind: 'recovery' })
    await database.asOwner('update public.logins set ended_at = now() where user_id = $1', [
      orchard.manager.userId,
    ])

    const { userId, body } = await come(code, 'ignored')

    expect(body.person).toBe(orchard.manager.id)
    const back = new Person(database, orchard.id, orchard.manager.id, userId)
    await back.must('change_orchard', { name: 'Still ours' })
  })

  test('codes are stored hashed only', async () => {
    const { lead, orchard } = await crewOfThree(database)
    const code = await link(lead, { kind: 'join' })
    await come(code, 'Dee')

    const rows = await database.asOwner(
      `select i::text as text from public.invites i where orchard_id = $1
       union all select a::text from public.command_answers a where orchard_id = $1
       union all select e::text from public.events e where orchard_id = $1`,
      [orchard.id]
    )

    expect(rows.some(({ text }) => String(text).includes(sha256(code)))).toBe(true)
    expect(rows.filter(({ text }) => String(text).includes(code))).toEqual([])
  })

  test.each([
    ['a hash of the wrong shape', { kind: 'join', codeHash: 'abc' }],
    ['an unknown kind', { kind: 'door', codeHash: sha256('1') }],
    ['no kind', { kind: null, codeHash: sha256('2') }],
    ['a year for a phone', { kind: 'device', hours: 9000, codeHash: sha256('3') }],
    ['a role link for volunteers', { kind: 'role', role: 'volunteer', codeHash: sha256('4') }],
  ])('%s is malformed', async (_, args) => {
    const { orchard } = await crewOfThree(database)
    expect(faultOf(await orchard.manager.send('make_invite', args))).toBe('400 malformed')
  })

  test('a link for a shift that nobody knows is no such shift', async () => {
    const { lead } = await crewOfThree(database)
    const args = { kind: 'join', shift: randomUUID(), codeHash: sha256(newCode()) }
    expect(faultOf(await lead.send('make_invite', args))).toBe('404 no_such_shift')
  })
})
