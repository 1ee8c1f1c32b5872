/** The sun, and what is refused without it. */

import { expect, test } from 'vitest'

import { sunHeightDeg } from '@/lib/domain/safety/sun'
import type { TestDatabase } from '../support/engines'
import { codesOf, lastEvent, type Orchard, readyCrew } from '../support/orchard'
import { type Hour, longitudeAt } from '../support/sun-place'
import { withLadder } from './with-ladder'

/** Told in the file of weather, whose databases are open already. */
export function darkness(db: () => TestDatabase): void {
  test('is reckoned as on the phone, wherever and whenever', async () => {
    const times = [1_069_788_630_000, 1_790_000_000_000, 1_795_651_200_000, Date.now()]
    for (const ms of times) {
      for (const [lat, lon] of [
        [39.742476, -105.1786],
        [0, 0],
        [-78, 179.9],
        [90, -180],
        [51.4, 0],
      ]) {
        const place = { lat: lat ?? 0, lon: lon ?? 0 }
        const [row] = await db().asOwner(
          'select private.sun_height($1, $2, $3::timestamptz) as height',
          [place.lat, place.lon, new Date(ms).toISOString()]
        )
        expect(Number(row?.height)).toBeCloseTo(sunHeightDeg(place, ms), 6)
      }
    }
  })

  test('refuses trees, brush and undoing; it is not known where nobody knows the place', async () => {
    const { orchard, ann, bo } = await readyCrew(db())
    expect(codesOf(await bo.send('claim_tree', { tree: 9 }))).toEqual([])
    await bo.must('finish_tree', { tree: 9, claim: await claimOf(orchard), elapsedS: 60 })
    await placed(orchard, 'midnight')

    expect(codesOf(await ann.send('claim_tree', { tree: 5 }))).toEqual(['dark'])
    expect(codesOf(await ann.send('take_brush', { block: 1, row: 1 }))).toContain('dark')
    expect(codesOf(await bo.send('undo_tree', { tree: 9 }))).toContain('dark')
    await placed(orchard, 'noon')
    expect(codesOf(await ann.send('claim_tree', { tree: 5 }))).toEqual([])
  })

  test('is lifted by a lead who has lamps, for the ground alone; what they say is kept', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db())
    const wish = await withLadder(lead, ann, bo)
    await placed(orchard, 'midnight')

    await lead.must('make_exception', { what: 'dark', because: 'lamps', note: 'Three masts' })

    expect(await lastEvent(orchard)).toMatchObject({
      body: { what: 'dark', lifts: ['dark'], because: 'lamps' },
    })
    expect((await ann.send('claim_tree', { tree: 5, ...wish })).body.refused).toEqual([
      { code: 'ladders_off', detail: { reason: 'light' } },
    ])
    const { command: claim } = await ann.must('claim_tree', { tree: 5 })
    await lead.must('end_exception', { what: 'dark' })
    expect(await lastEvent(orchard)).toMatchObject({
      body: { toLeave: { [ann.id]: { claim, tree: 5, why: 'dark' } } },
    })
  })

  test('is none where the place is wrong and it is day: then ladders go up, too', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db())
    const wish = await withLadder(lead, ann, bo)
    await placed(orchard, 'midnight')
    const refused = await lead.send('make_exception', { what: 'dark', because: 'young_tree' })
    expect(refused.status).toBe(400)

    await lead.must('make_exception', { what: 'dark', because: 'day_here' })

    expect(codesOf(await ann.send('claim_tree', { tree: 5, ...wish }))).toEqual([])
  })

  test('is day no longer where a lead says lamps instead: who is on a ladder is told', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db())
    const wish = await withLadder(lead, ann, bo)
    await placed(orchard, 'midnight')
    await lead.must('make_exception', { what: 'dark', because: 'day_here' })
    const { command: claim } = await ann.must('claim_tree', { tree: 5, ...wish })

    await lead.must('make_exception', { what: 'dark', because: 'lamps' })

    expect(await lastEvent(orchard)).toMatchObject({
      kind: 'exception_made',
      body: { toLeave: { [ann.id]: { claim, tree: 5, why: 'ladders_off' } } },
    })
  })

  test('takes ladders down before it falls, and leaves the ground', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db())
    const wish = await withLadder(lead, ann, bo)
    await placed(orchard, 'sunset in 20 minutes')

    expect((await ann.send('claim_tree', { tree: 5, ...wish })).body.refused).toEqual([
      { code: 'ladders_off', detail: { reason: 'light' } },
    ])
    await orchard.manager.must('change_orchard', { houseRules: { light_minutes: 10 } })
    expect(codesOf(await ann.send('claim_tree', { tree: 5, ...wish }))).toEqual([])
  })
}

/** By where the orchard is, since the hour is what it is. */
async function placed({ id, database }: Orchard, hour: Hour): Promise<void> {
  const lon = longitudeAt(hour, Date.now())
  await database.asOwner(
    'update blocks set first_lat_e7 = 0, first_lon_e7 = $2 where orchard_id = $1',
    [id, Math.round(lon * 1e7)]
  )
}

async function claimOf({ id, database }: Orchard): Promise<string> {
  const [row] = await database.asOwner(
    'select id from claims where orchard_id = $1 and ended_at is null',
    [id]
  )
  return String(row?.id)
}
