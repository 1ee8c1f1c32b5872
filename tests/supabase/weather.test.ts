import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { heatIndexF } from '@/lib/domain/safety/heat-index'
import { engines, type TestDatabase } from '../support/engines'
import { codesOf, lastEvent, type Orchard, readyCrew } from '../support/orchard'
import { darkness } from './darkness'
import { withLadder } from './with-ladder'

const dry = { temperatureC: 12, humidity: 60, gustKmh: 12, canopy: 'dry', rainInH: 96 } as const

describe.each(engines)('weather on $name', ({ open }) => {
  let db: TestDatabase
  beforeAll(async () => {
    db = await open()
  })
  afterAll(() => db.close())

  /** As if everything written so far had been written so long ago. */
  async function minutesPass(orchard: Orchard, minutes: number): Promise<void> {
    await db.asOwner(
      `update weather_readings set measured_at = measured_at - $2 * interval '1 minute' where orchard_id = $1`,
      [orchard.id, minutes]
    )
  }

  async function openClaims(orchard: Orchard): Promise<number> {
    const [row] = await db.asOwner(
      'select count(*)::integer as open from claims where orchard_id = $1 and ended_at is null',
      [orchard.id]
    )
    return Number(row?.open)
  }

  describe('thunder', () => {
    test('empties the trees: everybody in one is told, claims stay, and nobody takes another', async () => {
      const { orchard, lead, ann, bo } = await readyCrew(db)
      const { command: claim } = await ann.must('claim_tree', { tree: 5, helpers: [bo.id] })

      await lead.must('write_weather', { thunder: true })

      const told = { claim, tree: 5, why: 'thunder' }
      expect(await lastEvent(orchard)).toMatchObject({
        kind: 'weather_written',
        body: { thunder: true, toLeave: { [ann.id]: told, [bo.id]: told } },
      })
      expect(await openClaims(orchard)).toBe(1)
      const { body } = await lead.send('claim_tree', { tree: 7 })
      expect(body.refused).toContainEqual({
        code: 'thunder',
        detail: { until: expect.stringMatching(/^\d{4}-.*Z$/) },
      })
    })

    test('each says that they are down; a lead says it of who has no phone', async () => {
      const { orchard, lead, ann, bo } = await readyCrew(db)
      await ann.must('claim_tree', { tree: 5, helpers: [bo.id] })
      await lead.must('write_weather', { thunder: true })

      await ann.must('answer_weather')
      await lead.for(bo).must('answer_weather')
      await ann.must('answer_weather')

      expect(await lead.read('snapshot', { person: lead.id })).toMatchObject({ toLeave: {} })
      expect(
        await db.asOwner(
          'select person_id, left_by from told_to_leave where orchard_id = $1 order by left_at',
          [orchard.id]
        )
      ).toEqual([
        { person_id: ann.id, left_by: ann.id },
        { person_id: bo.id, left_by: lead.id },
      ])
    })

    test('is over 30 minutes after the last, not before, however often it was mild since', async () => {
      const { orchard, lead, ann } = await readyCrew(db)
      await lead.must('write_weather', { thunder: true })
      await minutesPass(orchard, 29)
      await lead.must('write_weather', dry)

      expect(codesOf(await ann.send('claim_tree', { tree: 5 }))).toEqual(['thunder'])
      await minutesPass(orchard, 2)
      expect(codesOf(await ann.send('claim_tree', { tree: 5 }))).toEqual([])
    })

    test('a second clap does not ask again who is still down; after it was over it does', async () => {
      const { orchard, lead, ann } = await readyCrew(db)
      await ann.must('claim_tree', { tree: 5 })
      await lead.must('write_weather', { thunder: true })
      await ann.must('answer_weather')

      await lead.must('write_weather', { thunder: true })
      expect((await lastEvent(orchard)).body).not.toHaveProperty('toLeave')
      await minutesPass(orchard, 31)
      await lead.must('write_weather', { thunder: true })

      expect((await lastEvent(orchard)).body).toHaveProperty(['toLeave', ann.id])
    })

    test('stops hauling, joining and undoing too, and no exception lifts it', async () => {
      const { lead, ann, bo } = await readyCrew(db)
      const { command: claim } = await ann.must('claim_tree', { tree: 5 })
      const { command: done } = await bo.must('claim_tree', { tree: 9 })
      await bo.must('finish_tree', { tree: 9, claim: done, elapsedS: 60 })
      await lead.must('write_weather', { thunder: true })

      expect(codesOf(await bo.send('take_brush', { block: 1, row: 1 }))).toContain('thunder')
      expect(codesOf(await bo.send('join_tree', { claim }))).toContain('thunder')
      expect(codesOf(await bo.send('undo_tree', { tree: 9 }))).toContain('thunder')
      const excepted = { what: 'apple', because: 'lead_judges' }
      expect(codesOf(await lead.send('make_exception', excepted))).toEqual(['not_off'])
    })
  })

  describe('wind', () => {
    test('refuses ladders, tells who is on one, and leaves the others alone', async () => {
      const { orchard, lead, ann, bo } = await readyCrew(db)
      const wish = await withLadder(lead, ann, bo)
      const { command: claim } = await ann.must('claim_tree', { tree: 5, ...wish })
      await bo.must('claim_tree', { tree: 15 })

      await lead.must('write_weather', { ...dry, gustKmh: 30.58 })

      expect(await lastEvent(orchard)).toMatchObject({
        body: { toLeave: { [ann.id]: { claim, tree: 5, why: 'ladders_off' } } },
      })
      expect((await lastEvent(orchard)).body).not.toHaveProperty(['toLeave', bo.id])
      await ann.must('release_tree', { claim, tree: 5, share: 20 })
      expect((await ann.send('claim_tree', { tree: 5, ...wish })).body.refused).toEqual([
        { code: 'ladders_off', detail: { reason: 'wind' } },
      ])
      expect(codesOf(await ann.send('claim_tree', { tree: 5 }))).toEqual([])
    })

    test.each([
      [{ gustKmh: 29.9 }, {}, []],
      [{ gustKmh: 40 }, {}, ['too_windy']],
      [{ windKmh: 41, gustKmh: null }, {}, ['too_windy']],
      [{ gustKmh: 40 }, { work_gust_kmh: 45 }, []],
    ])('%j with the rules %j: %j', async (wind, houseRules, codes) => {
      const { orchard, lead, ann } = await readyCrew(db)
      await orchard.manager.must('change_orchard', { houseRules })
      await lead.must('write_weather', { ...dry, ...wind })

      expect(codesOf(await ann.send('claim_tree', { tree: 5 }))).toEqual(codes)
    })

    test('an orchard may be stricter than usual, and hardly looser', async () => {
      const { orchard } = await readyCrew(db)
      const set = (rules: object) => orchard.manager.send('change_orchard', { houseRules: rules })

      expect((await set({ ladder_gust_kmh: 15 })).status).toBe(200)
      expect((await set({ ladder_gust_kmh: 40 })).status).toBe(400)
      expect((await set({ thunder_minutes: 29 })).status).toBe(400)
    })
  })

  test('heat is felt as the published equation has it, and stops work at the house limit', async () => {
    const { lead, ann } = await readyCrew(db)
    const pairs = [90, 60, 96, 65, 80, 90, 95, 10, 112, 8, 70, 50, 79, 75, 30, 50]
    for (let at = 0; at < pairs.length; at += 2) {
      const [t = 0, rh = 0] = pairs.slice(at, at + 2)
      const [row] = await db.asOwner('select private.heat_index_f($1, $2) as felt', [t, rh])
      expect(Number(row?.felt)).toBeCloseTo(heatIndexF(t, rh), 9)
    }

    await lead.must('write_weather', { ...dry, temperatureC: 34, humidity: 45 })
    expect(codesOf(await ann.send('claim_tree', { tree: 5 }))).toEqual([])
    // 95 °F and 50 % feel like 105 °F.
    await lead.must('write_weather', { ...dry, temperatureC: 35, humidity: 50 })
    expect(codesOf(await ann.send('claim_tree', { tree: 6 }))).toContain('too_hot')
  })

  describe('species off', () => {
    test('wet wood refuses a tree, tells who is in one, and brush is hauled all the same', async () => {
      const { orchard, lead, ann, bo } = await readyCrew(db)
      const { command: done } = await bo.must('claim_tree', { tree: 9 })
      await bo.must('finish_tree', { tree: 9, claim: done, elapsedS: 60 })
      await ann.must('claim_tree', { tree: 5 })

      await lead.must('write_weather', { ...dry, canopy: 'wet' })

      expect(await lastEvent(orchard)).toMatchObject({
        body: { toLeave: { [ann.id]: { tree: 5, why: 'species_off' } } },
      })
      expect((await bo.send('claim_tree', { tree: 15 })).body.refused).toEqual([
        { code: 'species_off', detail: { species: 'apple', reason: 'wet_wood' } },
      ])
      expect(codesOf(await bo.send('take_brush', { block: 1, row: 1 }))).toEqual([])
    })

    test.each([
      [{ canopy: null, humidity: 90 }, ['species_off']],
      [{ canopy: null, humidity: 89 }, []],
      [{ canopy: 'dry', humidity: 95 }, []],
      [{ rainInH: 18 }, ['species_off']],
      [{ rainInH: 30 }, []],
      [{ rainInH: null, canopy: null, humidity: null, gustKmh: null, temperatureC: 12 }, []],
    ])('%j: %j', async (reading, codes) => {
      const { lead, ann } = await readyCrew(db)
      await lead.must('write_weather', { ...dry, ...reading })

      expect(codesOf(await ann.send('claim_tree', { tree: 5 }))).toEqual(codes)
    })

    test('old weather is no weather', async () => {
      const { orchard, lead, ann } = await readyCrew(db)
      await lead.must('write_weather', { canopy: 'wet', gustKmh: 80, temperatureC: 50, rainInH: 0 })
      expect(codesOf(await ann.send('claim_tree', { tree: 5 }))).toEqual([
        'too_windy',
        'too_hot',
        'species_off',
      ])

      await minutesPass(orchard, 61)

      expect(codesOf(await ann.send('claim_tree', { tree: 5 }))).toEqual([])
    })

    test('a reading that comes in late does not undo a newer one', async () => {
      const { lead, ann } = await readyCrew(db)
      await lead.must('write_weather', { ...dry, canopy: 'wet' })
      const at = new Date(Date.now() - 600_000).toISOString()
      await lead.must('write_weather', { ...dry, at })

      expect(codesOf(await ann.send('claim_tree', { tree: 5 }))).toEqual(['species_off'])
    })

    test('a shift opens with what is out of season off, and a lead cannot just put it on again', async () => {
      const { orchard, lead, ann } = await readyCrew(db)
      await orchard.manager.must('bring_in_trees', oneCherry)

      expect(await lead.read('snapshot', { person: lead.id })).toMatchObject({
        shifts: { [await shiftOf(orchard)]: { off: { cherry: 'season' } } },
      })
      expect(codesOf(await ann.send('claim_tree', { tree: 41 }))).toEqual(['species_off'])
      const on = { what: 'cherry', reason: null }
      expect(codesOf(await lead.send('set_off_today', on))).toEqual(['exception_needed'])
    })

    test.each([
      [[7, 8], '2026-11-24', true],
      [[11, 11], '2026-11-24', false],
      [[10, 2], '2026-11-24', false],
      [[12, 2], '2026-11-24', true],
      [[12, 2], '2026-01-31', false],
    ])('cherries with the months %j on %s are off: %s', async ([from, to], day, isOff) => {
      const { orchard } = await readyCrew(db)
      await orchard.manager.must('change_orchard', {
        houseRules: { cherry_from_month: from, cherry_to_month: to },
      })

      const [row] = await db.asOwner(
        "select private.season_offs($1, '{apple, cherry}', $2) as off",
        [orchard.id, day]
      )
      expect(row?.off).toEqual(isOff ? { cherry: 'season' } : {})
    })

    test('a lead who puts a species off tells who is in such a tree', async () => {
      const { orchard, lead, ann } = await readyCrew(db)
      await ann.must('claim_tree', { tree: 5 })

      await lead.must('set_off_today', { what: 'apple', reason: 'rain' })

      expect((await lastEvent(orchard)).body).toHaveProperty(
        ['toLeave', ann.id, 'why'],
        'species_off'
      )
    })
  })

  describe('darkness', () => darkness(() => db))

  test('hours to come are brought in whole, replace the ones before, and refuse nothing', async () => {
    const { orchard, lead, ann } = await readyCrew(db)
    const storm = ['2027-02-01T08:00:00.000Z', 9.5, null, 80, 120, 12]
    await lead.must('bring_in_forecast', { hours: [storm] })
    const { command: id } = await lead.must('bring_in_forecast', { hours: [storm, storm] })

    expect(await ann.read('read_forecast')).toMatchObject({ id, hours: [storm, storm] })
    expect(await ann.read('snapshot', { person: ann.id })).toMatchObject({ forecast: id })
    expect(codesOf(await ann.send('claim_tree', { tree: 5 }))).toEqual([])
    for (const hours of [
      [],
      [[storm[0]]],
      [['soon', ...storm.slice(1)]],
      [[...storm.slice(0, 5), 'a']],
    ]) {
      expect((await lead.send('bring_in_forecast', { hours })).status).toBe(400)
    }
    expect((await ann.send('bring_in_forecast', { hours: [storm] })).status).toBe(403)
    expect(
      await db.asOwner('select id from forecasts where orchard_id = $1', [orchard.id])
    ).toEqual([{ id }])
  })

  test('a lead reads who is new here, and how hot it got on the days before', async () => {
    const { orchard, lead, ann, shift } = await readyCrew(db)
    const before = async (days: number, celsius: number) => {
      await lead.must('write_weather', { temperatureC: celsius })
      await minutesPass(orchard, days * 24 * 60)
    }
    const workedBefore = (days: number) =>
      db.asOwner(
        `with day as (
           insert into shifts select (jsonb_populate_record(s, jsonb_build_object('id', gen_random_uuid(), 'state', 'closed',
             'on_date', private.today($1) - $4::integer))).* from shifts s where s.id = $2 returning id)
         insert into attendances select (jsonb_populate_record(a, jsonb_build_object('id', gen_random_uuid(), 'shift_id', day.id,
           'left_at', a.arrived_at))).* from attendances a, day where a.shift_id = $2 and a.person_id = $3`,
        [orchard.id, shift, ann.id, days]
      )
    await before(1, 20)
    await lead.must('write_weather', { temperatureC: 31.5 })
    await lead.must('write_weather', { temperatureC: 28 })
    await lead.must('write_weather', { humidity: 40 })
    for (const days of [3, 3, 9]) await workedBefore(days)

    const [days] = await db.asOwner(
      'select private.today($1)::text as today, (private.today($1) - 1)::text as yesterday',
      [orchard.id]
    )
    expect(await lead.read('close_watch')).toEqual({
      worked: { [ann.id]: 2 },
      highs: [
        [days?.yesterday, 20],
        [days?.today, 31.5],
      ],
    })
  })

  describe('exceptions', () => {
    test('of a lead are kept with their reason, lift what was in force, and the manager reads them', async () => {
      const { orchard, lead, ann } = await readyCrew(db)
      await orchard.manager.must('bring_in_trees', oneCherry)

      const { command: id } = await lead.must('make_exception', {
        what: 'cherry',
        because: 'dead_wood_only',
        note: 'Only what the storm broke',
      })

      expect(await lastEvent(orchard)).toMatchObject({
        kind: 'exception_made',
        by: lead.id,
        body: { what: 'cherry', lifts: ['season'], because: 'dead_wood_only' },
      })
      expect(await orchard.manager.read('read_exceptions')).toMatchObject([
        { id, what: 'cherry', note: 'Only what the storm broke', madeBy: lead.id },
      ])
      await ann.must('claim_tree', { tree: 41 })

      // Rain is another reason than the season.
      await lead.must('write_weather', { ...dry, rainInH: 2 })
      expect((await lastEvent(orchard)).body).toHaveProperty(
        ['toLeave', ann.id, 'why'],
        'species_off'
      )
    })

    test('are ended, and who relied on them is told to come out', async () => {
      const { orchard, lead, ann } = await readyCrew(db)
      await orchard.manager.must('bring_in_trees', oneCherry)
      await lead.must('make_exception', { what: 'cherry', because: 'lead_judges' })
      await ann.must('claim_tree', { tree: 41 })

      await lead.must('end_exception', { what: 'cherry' })

      expect(await lastEvent(orchard)).toMatchObject({
        kind: 'exception_ended',
        body: { toLeave: { [ann.id]: { tree: 41, why: 'species_off' } } },
      })
    })

    test('are not for volunteers, nor are readings; nothing of theirs is kept', async () => {
      const { orchard, ann, lead } = await readyCrew(db)
      await lead.must('make_exception', { what: 'cherry', because: 'lead_judges', note: 'Mine' })

      const tried = [
        await ann.send('make_exception', { what: 'cherry', because: 'lead_judges' }),
        await ann.send('end_exception', { what: 'cherry' }),
        await ann.send('write_weather', dry),
      ]

      expect(tried.map(({ status }) => status)).toEqual([403, 403, 403])
      expect(await ann.read('read_exceptions')).toMatchObject({ details: 'not_allowed' })
      // There is something that she could have seen, and nothing that she wrote.
      expect(
        await db.asOwner(
          `select made_by, note, (select count(*)::integer from weather_readings where orchard_id = $1) as readings
           from weather_exceptions where orchard_id = $1 and ended_at is null`,
          [orchard.id]
        )
      ).toEqual([{ made_by: lead.id, note: 'Mine', readings: 0 }])
      expect(JSON.stringify(await ann.read('snapshot', { person: ann.id }))).not.toContain('Mine')
    })
  })
})

const oneCherry = {
  blocks: [{ code: 'B', name: 'Far Piece', rowSpacingM: 6, treeSpacingM: 5 }],
  cultivars: [],
  trees: [{ block: 'B', row: 1, place: 1, species: 'cherry', heightCm: 220 }],
}

async function shiftOf({ id, database }: Orchard): Promise<string> {
  const [row] = await database.asOwner(
    "select id from shifts where orchard_id = $1 and state = 'open'",
    [id]
  )
  return String(row?.id)
}
