/** Things that happen in the same instant: the orchard's lock puts them in an order, and one of them is first. */

import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import { type Crew, codesOf, readyCrew } from '../support/orchard'
import { inEitherOrder, together } from '../support/together'

const rounds = 200

describe.each(engines)('races on $name', ({ open }) => {
  let database: TestDatabase
  let crew: Crew
  beforeAll(async () => {
    database = await open()
    crew = await readyCrew(database)
  }, 60_000)
  afterAll(() => database.close())

  test(`two people claim one tree: in ${rounds} rounds exactly one holds it, and the other hears the next`, async () => {
    const { ann, bo } = crew
    const won = { ann: 0, bo: 0 }

    for (let round = 0; round < rounds; round++) {
      const tree = 1 + (round % 40)

      const [byAnn, byBo] = await inEitherOrder(database, crew.orchard.id, round, [
        () => ann.send('claim_tree', { tree }),
        () => bo.send('claim_tree', { tree }),
      ])

      const annHolds = byAnn.body.n !== undefined
      const [winner, loser] = annHolds ? [byAnn, byBo] : [byBo, byAnn]
      expect(winner.body).toEqual({ n: expect.any(Number) })
      expect(codesOf(loser)).toEqual(['tree_held'])
      expect(loser.body.next).toEqual({ tree: expect.any(Number), why: expect.any(String) })
      expect((loser.body.next as { tree: number }).tree).not.toBe(tree)
      expect(await holdersOf(tree)).toEqual([(annHolds ? ann : bo).id])

      won[annHolds ? 'ann' : 'bo'] += 1
      await (annHolds ? ann : bo).must('release_tree', { tree, claim: winner.command })
    }

    // Both were first at times, so it was a race.
    expect(Math.min(won.ann, won.bo)).toBeGreaterThan(rounds / 10)
  }, 60_000)

  test('a command that arrives twice at once happens once, and both hear the same answer', async () => {
    const { ann } = crew

    for (let round = 0; round < 20; round++) {
      const command = crypto.randomUUID()
      const claim = () => ann.send('claim_tree', { tree: 7 }, command)
      const [first, second] = await together(database, crew.orchard.id, [claim, claim])

      expect(first.body.n).toEqual(expect.any(Number))
      expect(second.body).toEqual(first.body)
      expect(await holdersOf(7)).toEqual([ann.id])
      await ann.must('release_tree', { tree: 7, claim: command })
    }
  }, 60_000)

  async function holdersOf(tree: number): Promise<unknown[]> {
    const rows = await database.asOwner(
      `select cp.person_id from public.claims c join public.claim_people cp on cp.claim_id = c.id
       where c.orchard_id = $1 and c.tree_no = $2 and c.ended_at is null and cp.to_at is null`,
      [crew.orchard.id, tree]
    )
    return rows.map(({ person_id }) => person_id)
  }
})
