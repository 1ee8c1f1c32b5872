import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import { readyCrew } from '../support/orchard'

describe.each(engines)('what goes after its time on $name', ({ open }) => {
  let db: TestDatabase
  beforeAll(async () => {
    db = await open()
  })
  afterAll(() => db.close())

  test('a sign-up without a person goes after a day, one with a person stays', async () => {
    const { ann } = await readyCrew(db)
    const passerBy = await db.newUser()
    const fresh = await db.newUser()
    await db.asOwner(
      "update auth.users set created_at = now() - interval '25 hours' where id in ($1, $2)",
      [passerBy, ann.userId]
    )

    await db.asOwner('select private.tidy()')

    const left = await db.asOwner<{ id: string }>(
      'select id from auth.users where id in ($1, $2, $3)',
      [passerBy, fresh, ann.userId]
    )
    expect(left.map(({ id }) => id).sort()).toEqual([fresh, ann.userId].sort())
  })

  test('an answer is kept for ninety days and then forgotten', async () => {
    const { orchard, ann } = await readyCrew(db)
    const old = await ann.must('claim_tree', { tree: 3 })
    const young = await ann.must('release_tree', { tree: 3, claim: old.command })
    const age = (days: number, command: string) =>
      db.asOwner(
        'update command_answers set at = now() - make_interval(days => $1) where command_id = $2',
        [days, command]
      )
    await age(91, old.command)
    await age(89, young.command)

    await db.asOwner('select private.tidy()')

    const kept = await db.asOwner<{ command: string }>(
      'select command_id as command from command_answers where orchard_id = $1 and command_id in ($2, $3)',
      [orchard.id, old.command, young.command]
    )
    expect(kept).toEqual([{ command: young.command }])
  })
})
