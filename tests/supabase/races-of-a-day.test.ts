/** What leads and crew do in the same instant: whichever order the lock finds, the day stays whole. */

import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import {
  type Crew,
  codesOf,
  faultOf,
  makeReady,
  openShift,
  type Reply,
  readyCrew,
} from '../support/orchard'
import { inEitherOrder } from '../support/together'

const rounds = 20
const limitMs = 60_000

describe.each(engines)('a day on $name', ({ open }) => {
  let database: TestDatabase
  beforeAll(async () => {
    database = await open()
  }, limitMs)
  afterAll(() => database.close())

  describe('with the crew ready', () => {
    let crew: Crew
    beforeEach(async () => {
      crew = await readyCrew(database)
    }, limitMs)

    test(
      'a stop and a claim: the claim came before it or is refused, and nothing is claimed after it',
      async () => {
        const { lead, ann, bo } = crew
        await lead.must('leave')
        const outcomes = new Set<string>()

        for (let round = 0; round < rounds; round++) {
          const tree = 1 + round
          const [stopped, claimed] = await race(crew, round, [
            () => bo.send('stop_work'),
            () => ann.send('claim_tree', { tree }),
          ])

          expect(stopped.body.n).toEqual(expect.any(Number))
          if (claimed.body.n === undefined) expect(codesOf(claimed)).toEqual(['stopped'])
          else expect(claimed.body.n).toBeLessThan(Number(stopped.body.n))
          outcomes.add(claimed.body.n === undefined ? 'refused' : 'claimed first')

          const stop = stopped.command
          await lead.must('resume_work', { stop })
          for (const person of [ann, bo]) await person.must('answer_stop', { stop })
          if (claimed.body.n !== undefined) {
            await ann.must('release_tree', { tree, claim: claimed.command })
          }
        }

        expect([...outcomes].sort()).toEqual(['claimed first', 'refused'])
      },
      limitMs
    )

    test(
      'two leads deal one tree: it is dealt once, to whoever was dealt it last',
      async () => {
        const { orchard, lead, ann, bo } = crew

        for (let round = 0; round < rounds; round++) {
          const tree = 1 + round
          const [toAnn, toBo] = await race(crew, round, [
            () => lead.send('deal_trees', { trees: [tree], to: [ann.id] }),
            () => orchard.manager.send('deal_trees', { trees: [tree], to: [bo.id] }),
          ])

          const last = Number(toAnn.body.n) > Number(toBo.body.n) ? ann : bo
          expect(await dealsOf(crew, tree)).toEqual([{ people: [last.id] }])
          const other = last === ann ? bo : ann
          expect(codesOf(await other.send('claim_tree', { tree }))).toEqual(['dealt_to_another'])
        }
      },
      limitMs
    )

    test(
      'somebody is removed while they finish: the tree is done, or begun and theirs no more',
      async () => {
        const { lead } = crew
        const outcomes = new Set<string>()

        for (let round = 0; round < rounds; round++) {
          const tree = 1 + round
          const cy = await lead.adds('Cy')
          await makeReady(lead, cy)
          const { command: claim } = await cy.must('claim_tree', { tree })

          const [removed, finished] = await race(crew, round, [
            () => lead.send('remove_person', { subject: cy.id }),
            () => cy.send('finish_tree', { tree, claim }),
          ])

          expect(removed.body.n).toEqual(expect.any(Number))
          const isDone = finished.body.n !== undefined
          if (!isDone) expect(faultOf(finished)).toBe('403 not_allowed')
          expect(await workOf(crew, tree)).toMatchObject([{ state: isDone ? 'done' : 'begun' }])
          expect(await openClaimsOf(crew, tree)).toEqual([])
          outcomes.add(isDone ? 'done' : 'begun')
        }

        expect([...outcomes].sort()).toEqual(['begun', 'done'])
      },
      limitMs
    )
  })

  test(
    'the shift closes while a tree is handed back: it is put down once, as far as its holder says',
    async () => {
      const crew = await readyCrew(database)
      const { lead, ann, bo } = crew
      const outcomes = new Set<string>()

      for (let round = 0; round < 10; round++) {
        const tree = 1 + round
        if (round > 0) {
          await openShift(crew)
          for (const person of [ann, bo]) await makeReady(lead, person)
        }
        const { command: claim } = await ann.must('claim_tree', { tree })
        const why = {
          people: Object.fromEntries(
            [lead, ann, bo].map(({ id }) => [id, 'went home in the dark'])
          ),
          claims: { [claim]: 'it got dark' },
          tools: Object.fromEntries(
            (await toolsOut(crew)).map((no) => [no, 'comes back tomorrow'])
          ),
        }

        const [closed, released] = await race(crew, round, [
          () => lead.send('close_shift', { why }),
          () => ann.send('release_tree', { tree, claim, share: 60 }),
        ])

        expect(closed.body.n).toEqual(expect.any(Number))
        expect(released.body.n).toEqual(expect.any(Number))
        outcomes.add(
          Number(closed.body.n) < Number(released.body.n) ? 'closed first' : 'given back'
        )
        expect(await openClaimsOf(crew, tree)).toEqual([])
        expect(await workOf(crew, tree)).toEqual([{ state: 'begun', share: 60 }])
      }

      expect([...outcomes].sort()).toEqual(['closed first', 'given back'])
    },
    2 * limitMs
  )
})

type Call = () => Promise<Reply>

function race({ orchard }: Crew, round: number, calls: [Call, Call]): Promise<[Reply, Reply]> {
  return inEitherOrder(orchard.database, orchard.id, round, calls)
}

function workOf({ orchard }: Crew, tree: number) {
  return orchard.database.asOwner(
    'select state, share from public.tree_work where orchard_id = $1 and tree_no = $2',
    [orchard.id, tree]
  )
}

function dealsOf({ orchard }: Crew, tree: number) {
  return orchard.database.asOwner(
    'select people from public.deals where orchard_id = $1 and tree_no = $2 and ended_at is null',
    [orchard.id, tree]
  )
}

function openClaimsOf({ orchard }: Crew, tree: number) {
  return orchard.database.asOwner(
    'select id from public.claims where orchard_id = $1 and tree_no = $2 and ended_at is null',
    [orchard.id, tree]
  )
}

async function toolsOut({ orchard }: Crew): Promise<number[]> {
  const rows = await orchard.database.asOwner<{ no: number }>(
    'select tool_no as no from public.tool_holdings where orchard_id = $1 and returned_at is null',
    [orchard.id]
  )
  return rows.map(({ no }) => no)
}
