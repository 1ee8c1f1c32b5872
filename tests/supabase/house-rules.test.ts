import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { houseRules } from '@/lib/domain/safety/house-rules'
import { engines, type TestDatabase } from '../support/engines'
import { newOrchard } from '../support/orchard'

/** Asked by another screen, or by none. */
const notOnTheScreen = ['consent_version']

describe.each(engines)('house rules on $name', ({ open }) => {
  let db: TestDatabase
  beforeAll(async () => {
    db = await open()
  })
  afterAll(() => db.close())

  test('the screen knows the same rules, what is usual and their ranges', async () => {
    const [row] = await db.asOwner(
      `select jsonb_object_agg(key, jsonb_build_array(value, (private.house_rule_range(key))[1], (private.house_rule_range(key))[2])) as rules
       from jsonb_each(private.default_house_rules())`
    )

    const onScreen = houseRules.map(({ key, usual, least, most }) => [key, [usual, least, most]])
    const known = Object.entries(row?.rules as Record<string, unknown>)
    expect(Object.fromEntries(known.filter(([key]) => !notOnTheScreen.includes(key)))).toEqual(
      Object.fromEntries(onScreen)
    )
  })

  test.each([
    [{ limb_cm: 8 }, 200],
    [{ limb_cm: 10.5 }, 400],
    [{ keep_out_m: 1 }, 400],
    [{ withdraw_minutes: 0 }, 200],
    [{ overhead_apart_m: 'six' }, 400],
    [{ made_up: 5 }, 400],
  ])('%j is answered with %s', async (rules, status) => {
    const { manager } = await newOrchard(db)

    const reply = await manager.send('change_orchard', { houseRules: rules })

    expect(reply.status).toBe(status)
  })
})
