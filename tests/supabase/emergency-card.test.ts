/** The emergency card: read apart, since names and telephone numbers may stand in it. */

import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import type { State } from '@/lib/events/state'
import { engines, type TestDatabase } from '../support/engines'
import { crewOfThree, faultOf, lastEvent, type Person } from '../support/orchard'

const call = 'Inés +34 600 11 22 33'

describe.each(engines)('the emergency card on $name', ({ open }) => {
  let database: TestDatabase
  beforeAll(async () => {
    database = await open()
  }, 60_000)
  afterAll(() => database.close())

  const snapshotOf = async (person: Person) =>
    (await person.read('snapshot', { person: person.id })) as State

  test('events and snapshots carry its version, members read its words', async () => {
    const { orchard, ann } = await crewOfThree(database)
    expect((await snapshotOf(ann)).orchard.emergencyVersion).toBe(0)

    await orchard.manager.must('change_orchard', { emergency: { number: '112', call } })
    await orchard.manager.must('change_orchard', { emergency: { hospital: 'Mill Road' } })

    expect((await lastEvent(orchard)).body).toEqual({ emergencyVersion: 2 })
    const state = await snapshotOf(ann)
    expect(state.orchard.emergencyVersion).toBe(2)
    expect(await ann.read('emergency_card')).toEqual({
      version: 2,
      epoch: state.epoch,
      card: { number: '112', call, hospital: 'Mill Road' },
    })
    expect(JSON.stringify(state)).not.toContain('Inés')
    expect(
      await database.asOwner(
        `select kind from public.events where orchard_id = $1 and concat(body, lead_body) ~ 'Inés|600 11'`,
        [orchard.id]
      )
    ).toEqual([])
  })

  test('a change of anything else leaves its version', async () => {
    const { orchard } = await crewOfThree(database)
    await orchard.manager.must('change_orchard', { units: 'us' })

    expect((await lastEvent(orchard)).body).toEqual({ units: 'us' })
  })

  test('nobody from outside reads it, and only its own lines can be written', async () => {
    const { orchard, ann } = await crewOfThree(database)
    const stranger = await crewOfThree(database)

    expect(
      await database.as(stranger.ann.userId, 'emergency_card', { p_orchard: orchard.id })
    ).toMatchObject({ status: 403, body: { details: 'not_allowed' } })
    await database.asOwner('update public.people set admitted_at = null where id = $1', [ann.id])
    expect(await ann.read('emergency_card')).toMatchObject({ details: 'not_admitted' })
    expect(
      faultOf(await orchard.manager.send('change_orchard', { emergency: { weather: 'fine' } }))
    ).toBe('400 malformed')
  })
})
