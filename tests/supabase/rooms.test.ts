/** What managers look up: the history of a tree, hours, links, rounds and shifts, and what happened. */

import { randomUUID } from 'node:crypto'

import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import { type Crew, crewOfThree, faultOf, type Person, readyCrew, sha256 } from '../support/orchard'
import { plainJpeg } from './scene'

type Thing = { what: string; person: string; at: string; round?: string } & Record<string, unknown>
type History = {
  rounds: { round: string; season: number; state: string; closedAt: string | null }[]
  things: Thing[]
  names: Record<string, string>
}
type Trail = {
  events: { n: number; kind: string; personId: string; body: unknown; leadBody: unknown }[]
  names: Record<string, string>
}

describe.each(engines)('the manager’s rooms on $name', ({ open }) => {
  let db: TestDatabase
  beforeAll(async () => {
    db = await open()
  })
  afterAll(() => db.close())

  async function finish(who: Person, tree: number): Promise<void> {
    const { command: claim } = await who.must('claim_tree', { tree })
    await who.must('finish_tree', { tree, claim })
  }

  async function closeAll({ lead, orchard }: Crew): Promise<void> {
    const ids = async (sql: string) =>
      Object.fromEntries(
        (await db.asOwner<{ id: string }>(sql, [orchard.id])).map(({ id }) => [id, 'went home'])
      )
    await lead.must('close_shift', {
      why: {
        people: await ids(
          'select person_id as id from attendances where orchard_id = $1 and left_at is null'
        ),
        claims: await ids('select id from claims where orchard_id = $1 and ended_at is null'),
        tools: await ids(
          'select tool_no as id from tool_holdings where orchard_id = $1 and returned_at is null'
        ),
      },
    })
  }

  /** Pruned by Ann, reopened, pruned by Bo and passed; a canker withdrawn; then a new round in which nothing is done. */
  async function twoSeasons() {
    const crew = await readyCrew(db)
    const { orchard, lead, ann, bo } = crew
    await finish(ann, 5)
    await lead.must('look_over', {
      tree: 5,
      result: 'reopened',
      reason: 'stubs_left',
      note: 'East',
    })
    await finish(ann, 5)
    await lead.must('look_over', { tree: 5, result: 'passed' })
    await bo.must('mark_big_cuts', { tree: 5, note: 'the low limb' })
    const { command: flag } = await bo.must('flag_tree', {
      tree: 5,
      kind: 'disease',
      sign: 'canker',
      severity: 'low',
      note: 'at the fork',
    })
    await bo.must('add_photo', { jpeg: plainJpeg, purpose: 'flag', flag })
    await lead.must('confirm_flag', { flag, sign: 'canker', severity: 'high' })
    await closeAll(crew)
    await orchard.manager.must('close_round', { round: orchard.round })
    const { command: next } = await orchard.manager.must('open_round', {
      kind: 'summer',
      season: 2027,
      species: ['apple'],
      from: '2027-06-01',
      to: '2027-08-01',
    })
    return { ...crew, next, flag }
  }

  test('a tree keeps its past over rounds, and begins the new one unpruned', async () => {
    const { orchard, lead, ann, next } = await twoSeasons()

    const history = (await lead.read('tree_history', { tree: 5 })) as History

    expect(history.rounds.map(({ round, season, state }) => [round, season, state])).toEqual([
      [next, 2027, 'unpruned'],
      [orchard.round, 2026, 'done'],
    ])
    expect(history.things.map(({ what }) => what).toReversed()).toEqual([
      'done',
      'reopened',
      'done',
      'passed',
      'mark',
      'flag',
      'photo',
    ])
    expect(history.things.find(({ what }) => what === 'flag')).toMatchObject({
      state: 'confirmed',
      severity: 'high',
      confirmedBy: lead.id,
    })
    expect(history.things.filter(({ what }) => what === 'done')).toEqual(
      [0, 0].map(() => expect.objectContaining({ person: ann.id, seconds: expect.any(Number) }))
    )
    expect(history.names[ann.id]).toBe('Ann')
  })

  test('a volunteer reads who worked there, but no minutes, findings and photos of others', async () => {
    const { ann, bo } = await twoSeasons()
    const readBy = async (who: Person) => (await who.read('tree_history', { tree: 5 })) as History
    const whats = ({ things }: History) => things.map(({ what }) => what).sort()

    const [asAnn, asBo] = [await readBy(ann), await readBy(bo)]

    expect(whats(asAnn)).toEqual(['done', 'done', 'flag', 'mark', 'passed', 'reopened'])
    expect(whats(asBo)).toEqual(['done', 'done', 'flag', 'mark', 'photo'])
    expect(JSON.stringify(asBo)).not.toMatch(/seconds|stubs_left|East|at the fork/)
    expect(asAnn.things.find(({ what }) => what === 'reopened')).toMatchObject({ note: 'East' })
    // They are there: a lead reads all of them.
    expect(
      await db.asOwner('select count(*)::integer as rows from looked_over where tree_no = 5')
    ).not.toEqual([{ rows: 0 }])
  })

  test('how long trees took: breaks and stops taken out, and whoever helped for half of it half', async () => {
    const crew = await readyCrew(db)
    const { lead, ann, bo, orchard } = crew
    const { command: claim } = await ann.must('claim_tree', { tree: 5 })
    await bo.must('join_tree', { claim, part: 'helper' })
    await ann.must('finish_tree', { tree: 5, claim })
    await finish(ann, 6)
    const { command: stop } = await lead.must('stop_work', { block: null, reason: 'wasps' })
    const of = (sql: string) => db.asOwner(sql, [orchard.id])
    const ago = (minutes: number) => `clock_timestamp() - interval '${minutes} minutes'`
    await of(
      `update claims set opened_at = ${ago(90)}, ended_at = ${ago(30)} where orchard_id = $1`
    )
    await of(
      `update claim_people set from_at = ${ago(90)}, to_at = ${ago(30)} where orchard_id = $1`
    )
    await db.asOwner('update claim_people set from_at = from_at + $2 where person_id = $1', [
      bo.id,
      '30 minutes',
    ])
    await of(`update visits set at = ${ago(30)}, seconds = 3600 where orchard_id = $1`)
    await db.asOwner(
      `update stops set called_at = ${ago(80)}, resumed_at = ${ago(70)} where id = $1`,
      [stop]
    )
    await db.asOwner(
      `insert into breaks (id, attendance_id, from_at, to_at)
       select gen_random_uuid(), id, ${ago(75)}, ${ago(60)} from attendances where person_id = $1`,
      [ann.id]
    )

    const { visits, shifts } = (await lead.read('work_times')) as {
      visits: unknown[][]
      shifts: { shift: string; hereS: number; breakS: number }[]
    }

    // An hour, less the twenty minutes that the stop and the break took together.
    expect(visits.toSorted()).toEqual([
      [5, crew.shift, orchard.round, 'done', 2400, 1.5, false],
      [6, crew.shift, orchard.round, 'done', 2400, 1, false],
    ])
    expect(shifts).toMatchObject([{ shift: crew.shift, breakS: expect.any(Number) }])

    // As an archive may have it.
    await db.asOwner('update visits set seconds = -60 where orchard_id = $1 and tree_no = 6', [
      orchard.id,
    ])
    expect(await lead.read('work_times')).toMatchObject({
      visits: expect.arrayContaining([[6, crew.shift, orchard.round, 'done', 0, 1, false]]),
    })

    const summer = randomUUID()
    await db.asOwner(
      `insert into rounds select (jsonb_populate_record(r, jsonb_build_object('id', $2::text, 'kind', 'summer',
         'closed_at', r.opened_at))).* from rounds r where id = $1`,
      [orchard.round, summer]
    )
    await db.asOwner('update visits set round_id = $1 where tree_no = 6', [summer])
    const now = (await lead.read('work_times')) as { visits: unknown[][] }
    expect(now.visits.map(([tree]) => tree)).toEqual([5])
  })

  test('hours of a season add up by shift and person; a volunteer reads their own only', async () => {
    const crew = await readyCrew(db)
    const { lead, ann, orchard } = crew
    const at = (clock: string) => `2026-11-24T${clock}:00.000Z`
    const cy = await lead.adds('Cy')
    await lead.for(cy).must('enter_attendance', {
      arrivedAt: at('08:00'),
      breaks: [[at('10:00'), at('10:30')]],
      leftAt: at('12:00'),
    })
    await closeAll(crew)
    await lead.must('remove_person', { subject: cy.id })
    type Hours = {
      season: number
      seasons: number[]
      shifts: { people: { person: string; hereS: number; breakS: number }[] }[]
      names: Record<string, string>
    }

    const hours = (await lead.read('volunteer_hours', {})) as Hours

    expect([hours.season, hours.seasons, hours.shifts.length]).toEqual([2026, [2026], 1])
    expect(hours.shifts[0]?.people.find(({ person }) => person === cy.id)).toMatchObject({
      hereS: 4 * 3600,
      breakS: 1800,
    })
    expect(hours.names[cy.id]).toBe('Cy')
    expect(await lead.read('volunteer_hours', { season: 2020 })).toMatchObject({ shifts: [] })
    expect(await ann.read('my_hours', { person: ann.id })).toEqual([
      { shift: crew.shift, season: 2026, date: '2026-11-24', hereS: expect.any(Number), breakS: 0 },
    ])
    expect(await ann.read('my_hours', { person: orchard.manager.id })).toMatchObject({
      details: 'not_allowed',
    })
  })

  test('links are listed with their use and end, never their code', async () => {
    const { orchard, lead } = await crewOfThree(db)
    await orchard.manager.must('make_invite', {
      kind: 'role',
      role: 'lead',
      codeHash: sha256('a lead'),
    })
    const { command: join } = await lead.must('make_invite', {
      kind: 'join',
      codeHash: sha256('all'),
    })
    await orchard.manager.must('end_invite', { invite: join })

    const { invites } = (await orchard.manager.read('read_invites')) as {
      invites: Record<string, unknown>[]
    }

    expect(invites[0]).toMatchObject({
      invite: join,
      madeBy: lead.id,
      used: 0,
      over: 'code_expired',
    })
    expect(invites[1]).toMatchObject({
      kind: 'role',
      role: 'lead',
      madeBy: orchard.manager.id,
      over: null,
    })
    expect(invites.filter(({ kind }) => kind === 'device').map(({ used }) => used)).toEqual([
      1, 1, 1,
    ])
    expect(JSON.stringify(invites)).not.toContain(sha256('a lead'))
  })

  test('rounds and shifts of the past keep their counts', async () => {
    const { orchard, lead, next, shift } = await twoSeasons()

    expect(await lead.read('read_rounds')).toMatchObject([
      { round: next, trees: 40, done: 0, held: 0, closedAt: null },
      { round: orchard.round, done: 1, held: 1, planned: 0, closedAt: expect.any(String) },
    ])
    expect(await lead.read('read_shifts')).toMatchObject([
      { shift, state: 'closed', people: 3, done: 1, season: 2026 },
    ])
  })

  describe('the audit trail', () => {
    test('has every number, the newest first, a page at a time', async () => {
      const { orchard, ann } = await readyCrew(db)
      for (let i = 0; i < 60; i++) {
        await ann.must('start_break')
        await ann.must('end_break')
      }
      const page = async (before?: number) =>
        ((await orchard.manager.read('audit_trail', { before })) as Trail).events.map(({ n }) => n)

      const first = await page()
      const second = await page(first.at(-1))

      expect(first.length).toBe(100)
      expect([...first, ...second]).toEqual(
        Array.from({ length: first[0] ?? 0 }, (_, i) => (first[0] ?? 0) - i)
      )
    })

    test('is read by person, by tree, by kind and by day, with what only leads hear', async () => {
      const { orchard, lead, ann, bo, flag } = await twoSeasons()
      const read = async (args: object) =>
        ((await orchard.manager.read('audit_trail', { ...args })) as Trail).events
      const kinds = async (args: object) => (await read(args)).map(({ kind }) => kind).toReversed()

      expect(await kinds({ tree: 5 })).toEqual([
        'tree_claimed',
        'tree_finished',
        'tree_looked_over',
        'tree_claimed',
        'tree_finished',
        'tree_looked_over',
        'big_cuts_marked',
        'flag_raised',
        'photo_added',
        'flag_confirmed',
      ])
      const about = await read({ about: ann.id })
      expect(about.map(({ kind }) => kind)).toEqual(
        expect.arrayContaining([
          'person_added',
          'tree_looked_over',
          'shift_closed',
          'skill_granted',
        ])
      )
      expect(about.map(({ kind }) => kind)).not.toContain('flag_raised')
      expect(await kinds({ about: bo.id, kinds: ['flag_raised', 'round_closed'] })).toEqual([
        'flag_raised',
      ])
      expect(await kinds({ tree: 5, kinds: ['tree_looked_over'] })).toHaveLength(2)
      expect((await read({ tree: 5, kinds: ['tree_looked_over'] }))[0]?.leadBody).toMatchObject({
        result: 'passed',
      })
      await db.asOwner(
        "update events set at = '2026-03-09T23:30:00Z' where orchard_id = $1 and kind = 'flag_confirmed'",
        [orchard.id]
      )
      await db.asOwner("update orchards set time_zone = 'Europe/Madrid' where id = $1", [
        orchard.id,
      ])
      expect(await kinds({ day: '2026-03-10' })).toEqual(['flag_confirmed'])
      expect(await kinds({ day: '2026-03-09' })).toEqual([])
      const trail = await orchard.manager.read('audit_trail', { kinds: ['flag_confirmed'] })
      expect(trail).toMatchObject({ flags: { [flag]: 5 }, names: { [lead.id]: 'Lee' } })
    })

    test('is for managers: a lead of the orchard and a manager of another read nothing of it', async () => {
      const { orchard, lead } = await crewOfThree(db)
      const elsewhere = await crewOfThree(db)
      const by = async ({ userId }: Person) => {
        const { status, body } = await db.as(userId, 'audit_trail', { p_orchard: orchard.id })
        return faultOf({ status, body: body as never })
      }

      expect([await by(lead), await by(elsewhere.orchard.manager)]).toEqual([
        '403 not_allowed',
        '403 not_allowed',
      ])
      expect(await by(orchard.manager)).toBe('answered')
    })
  })
})
