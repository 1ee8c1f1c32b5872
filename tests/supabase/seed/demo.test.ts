import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { openShift } from '../../../lib/events/look-ups'
import { missingOfPerson } from '../../../lib/events/missing'
import type { State } from '../../../lib/events/state'
import { dayIn } from '../../../lib/util/day-in'
import { loadDemo } from '../../../supabase/seed/demo'
import { snapshotOf } from '../../../supabase/seed/follow'
import { signInInside } from '../../../supabase/seed/inside'
import { linksAtStart, type SeatName } from '../../../supabase/seed/links'
import { lastWinter } from '../../../supabase/seed/past/calendar'
import { mustRead } from '../../../supabase/seed/referee'
import { redeem, wayInOf } from '../../../supabase/seed/way-in'
import { engines, type TestDatabase } from '../../support/engines'

type PastRound = { round: string; closedAt: string; done: number; leftOut: number }
type PastShift = { round: string; date: string; people: number; done: number }

/** Whoever opens a link of the host. */
async function openLink(db: TestDatabase, seatName: SeatName, name: string | null = null) {
  const link = (await linksAtStart(db.engine)).find(({ seat }) => seat === seatName)
  const code = wayInOf(`http://orchard.test${link?.path}`)?.code ?? ''
  const entered = await redeem(await signInInside(db.engine)(), code, name)
  if (entered.state !== 'in') throw new Error(`The link was refused: ${entered.code}`)
  return entered.seat
}

describe.each(engines)('the demo on $name', ({ open }) => {
  let db: TestDatabase
  let seen: State
  const now = new Date()
  beforeAll(async () => {
    db = await open()
    await loadDemo(db.engine, now)
    seen = await snapshotOf(await openLink(db, 'manager'))
  }, 180_000)
  afterAll(() => db.close())

  test('a shift spans now, with a briefing, and began some hours ago', () => {
    const shift = openShift(seen)

    expect(shift?.briefingVersion).toBe(1)
    expect(Date.parse(shift?.startsAt ?? '')).toBeLessThan(now.getTime() - 2 * 3_600_000)
    expect(Date.parse(shift?.endsAt ?? '')).toBeGreaterThan(now.getTime() + 2 * 3_600_000)
  })

  test('the map is alive: trees done, begun, held, dealt, marked and flagged', () => {
    const states = Object.values(seen.work).map(({ state }) => state)

    expect(states.filter((state) => state === 'done').length).toBeGreaterThan(30)
    expect(states).toContain('begun')
    expect(Object.keys(seen.claims).length).toBeGreaterThanOrEqual(5)
    expect(Object.keys(seen.deals).length).toBeGreaterThan(0)
    expect(Object.keys(seen.marked).length).toBeGreaterThan(5)
    expect(Object.values(seen.flags).map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(['disease', 'arborist'])
    )
    expect(seen.orchard.emergencyVersion).toBe(1)
  })

  test('the people are there: a crew, a break, a visitor, a minor with the guardian', () => {
    const roles = Object.values(seen.people).map(({ role }) => role)
    const [minor] = Object.values(seen.minors)

    expect(roles.filter((role) => role === 'volunteer').length).toBeGreaterThanOrEqual(12)
    expect(roles).toEqual(expect.arrayContaining(['manager', 'lead', 'visitor']))
    expect(Object.values(seen.attendance).map(({ state }) => state)).toContain('break')
    expect(seen.attendance[minor?.guardianId ?? '']).toBeDefined()
  })

  test('nobody holds a tree from a time that is not of this morning', () => {
    const { startsAt = '' } = openShift(seen) ?? {}
    for (const { openedAt } of Object.values(seen.claims)) {
      expect(openedAt >= startsAt).toBe(true)
      expect(Date.parse(openedAt)).toBeLessThanOrEqual(now.getTime())
    }
  })

  test('times are in order: each visit after its claim, each number later than the one before', async () => {
    const [visits] = await db.asOwner(
      `select count(*)::integer, min(v.seconds) as shortest, max(v.seconds) as longest
       from public.visits v join public.claims c on c.id = v.claim_id where v.at > c.opened_at`
    )
    const [all] = await db.asOwner(
      'select count(*)::integer from public.visits where not from_paper'
    )
    expect(visits?.count).toBe(all?.count)
    expect(visits?.shortest).toBeGreaterThan(120)
    expect(visits?.longest).toBeLessThan(7200)
    expect(
      await db.asOwner(
        `select n from (select n, at, lag(at) over (order by n) as before from public.events) e where at < before`
      )
    ).toEqual([])
  })

  test('a winter lies behind it: held on four Saturdays, one of them on paper, and closed', async () => {
    const lead = await openLink(db, 'lead')
    const asked = { p_orchard: lead.orchardId }
    const [, winter] = (await mustRead(lead.call, 'read_rounds', asked)) as PastRound[]
    const held = (await mustRead(lead.call, 'read_shifts', asked)) as PastShift[]
    const past = held.filter(({ round }) => round === winter?.round)

    expect(winter).toMatchObject({ kind: 'winter', held: 4, planned: 0 })
    expect(Date.parse(winter?.closedAt ?? '')).toBeLessThan(now.getTime())
    expect(winter?.done).toBeGreaterThan(150)
    expect(winter?.leftOut).toBeGreaterThan(5)
    expect(past.map(({ date }) => new Date(`${date}T12:00:00Z`).getUTCDay())).toEqual([6, 6, 6, 6])
    for (const { people, done } of past) {
      expect(people).toBeGreaterThanOrEqual(9)
      expect(done).toBeGreaterThan(30)
    }
    const [from] = await db.asOwner(
      'select count(*)::integer as paper, min(seconds) as shortest from public.visits where from_paper'
    )
    expect(from?.paper).toBeGreaterThan(30)
    expect(from?.shortest).toBeGreaterThan(120)
  })

  test('of that winter trees tell what happened: minutes that grow with the wood, work opened again, finds that ended', async () => {
    const [thin, thick] = await db.asOwner(
      `select percentile_cont(0.5) within group (order by v.seconds) as median
       from public.visits v join public.trees t on t.orchard_id = v.orchard_id and t.no = v.tree_no
       join public.rounds r on r.id = v.round_id
       where r.closed_at is not null and v.result = 'done' and (t.trunk_cm < 10 or t.trunk_cm > 20)
       group by t.trunk_cm > 20 order by t.trunk_cm > 20`
    )
    expect(Number(thick?.median)).toBeGreaterThan(1.5 * Number(thin?.median))

    const [told] = await db.asOwner(
      `select (select count(*)::integer from public.looked_over where result = 'passed') as passed,
        (select count(*)::integer from public.looked_over where result = 'reopened') as reopened,
        (select count(*)::integer from public.brush_hauled h join public.rounds r on r.id = h.round_id where r.closed_at is not null) as hauled,
        (select array_agg(distinct state order by state) from public.flags where ended_at is not null) as ended,
        (select count(*)::integer from public.visits where note is not null) as notes`
    )
    expect(told?.passed).toBeGreaterThan(15)
    expect(told?.reopened).toBeGreaterThan(1)
    expect(told?.hauled).toBeGreaterThan(60)
    expect(told?.ended).toEqual(['cleared', 'withdrawn'])
    expect(told?.notes).toBeGreaterThan(2)
  })

  test('the sky was looked at just now, and the hours to come begin today', async () => {
    const { weather, shifts } = seen
    const today = Object.values(shifts).find(({ state }) => state === 'open')?.date ?? ''
    const lead = await openLink(db, 'lead')
    const forecast = (await mustRead(lead.call, 'read_forecast', {
      p_orchard: lead.orchardId,
    })) as {
      hours: [string][]
    }

    expect(Math.abs(Date.parse(weather.latest?.measuredAt ?? '') - now.getTime())).toBeLessThan(
      1000
    )
    expect(weather.latest).toMatchObject({ canopy: 'dry', thunder: false })
    expect(dayIn('America/Chicago', new Date(forecast.hours[0]?.[0] ?? ''))).toBe(today)
    expect(forecast.hours.length).toBe(120)
    // Nobody is sent out of the trees by it.
    expect(seen.toLeave).toEqual({})
  })

  test('the volunteer of the link is ready to claim, the newcomer lacks what comes after arriving', async () => {
    const volunteer = await openLink(db, 'volunteer')
    const newcomer = await openLink(db, 'newcomer')

    expect(missingOfPerson(await snapshotOf(volunteer), volunteer.personId)).toEqual([])
    const lacks = missingOfPerson(await snapshotOf(newcomer), newcomer.personId)
    expect(lacks.map(({ code }) => code)).toEqual([
      'consent_missing',
      'briefing_not_given',
      'briefing_not_signed',
      'equipment_not_checked',
      'no_tool_in_hand',
    ])
  })

  test('the shift’s join link makes a new person, who is in at once', async () => {
    const seat = await openLink(db, 'join', 'Somebody New')

    const state = await snapshotOf(seat)

    expect(state.people[seat.personId]).toEqual({ role: 'volunteer', admitted: true })
  })

  test('each start prints other links, and those of the last start are over', async () => {
    const before = await linksAtStart(db.engine)
    const after = await linksAtStart(db.engine)

    expect(before.map(({ seat }) => seat)).toEqual([
      'manager',
      'lead',
      'volunteer',
      'newcomer',
      'join',
    ])
    const old = wayInOf(`http://orchard.test${before[0]?.path}`)?.code ?? ''
    const call = await signInInside(db.engine)()
    expect(await redeem(call, old, null)).toEqual({ state: 'refused', code: 'code_expired' })
    expect(after[0]?.path).not.toBe(before[0]?.path)
  })
})

describe.each(engines)('an empty database on $name', ({ open }) => {
  test('offers the set-up link and nothing else', async () => {
    const db = await open()

    expect((await linksAtStart(db.engine)).map(({ seat }) => seat)).toEqual(['set_up'])
    await db.close()
  })
})

// Loaded in each of the year's rounds, since species that are off or not in the round change who finds a tree.
describe.each(engines.slice(0, 1))('the demo of another season', ({ open }) => {
  test.each([
    { day: '2027-01-20T03:00:00Z', kind: 'winter', season: 2026, date: '2027-01-19' },
    { day: '2027-04-20T18:00:00Z', kind: 'training', season: 2027, date: '2027-04-20' },
    { day: '2027-07-20T18:00:00Z', kind: 'summer', season: 2027, date: '2027-07-20' },
    { day: '2027-10-03T18:00:00Z', kind: 'after_harvest', season: 2027, date: '2027-10-03' },
  ])(
    'on $day it is $kind, and there is work',
    async ({ day, kind, season, date }) => {
      const db = await open()
      await loadDemo(db.engine, new Date(day), { lastWinter: false })

      const state = await snapshotOf(await openLink(db, 'lead'))

      expect(Object.values(state.rounds)).toMatchObject([{ kind, season }])
      expect(openShift(state)?.date).toBe(date)
      expect(Object.keys(state.work).length).toBeGreaterThan(20)
      await db.close()
    },
    60_000
  )
})

test.each([
  { today: '2026-11-30', winter: 2025 },
  { today: '2027-03-31', winter: 2025 },
  { today: '2027-04-01', winter: 2026 },
])('on $today the last winter that is over began in $winter', ({ today, winter }) => {
  expect(lastWinter(today)).toBe(winter)
})
