import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import { faultOf, type Orchard, type Person, readyCrew } from '../support/orchard'

type OnePerson = { person: string } & Record<
  'hereS' | 'breakS' | 'done' | 'begun' | 'helped' | 'alsoWorked' | 'fromPaper',
  number
>
type Answered = { person: string; answer: string; byLead: boolean }
type RecordRead = {
  people: OnePerson[]
  blocks: { block: number; done: number; begun: number }[]
  stops: { stop: string; answers: Answered[] }[]
}
type Told = {
  at: string
  kind: string
  person: string
  by: string
  body: Record<string, unknown>
}

describe.each(engines)('the record of a shift on $name', ({ open }) => {
  let db: TestDatabase
  beforeAll(async () => {
    db = await open()
  })
  afterAll(() => db.close())

  test('a whole day adds up to what its events say, by person and by block', async () => {
    const crew = await readyCrew(db)
    const { orchard, lead, ann, bo, shift } = crew
    await aDay(crew)

    const record = (await lead.read('shift_record', { shift })) as RecordRead
    const folded = fold(await eventsOf(orchard))

    expect(record.people.length).toBeGreaterThanOrEqual(3)
    for (const one of record.people) {
      const { stays, breaks, trees } = folded.of(one.person)
      expect(one.hereS, 'hours').toBeCloseTo(stays, -1)
      expect(one.breakS, 'breaks').toBeCloseTo(breaks, -1)
      expect({ done: one.done, begun: one.begun }, one.person).toEqual(trees)
    }
    const sum = (key: 'done' | 'begun') => record.people.reduce((all, one) => all + one[key], 0)
    expect(record.blocks).toEqual([{ block: 1, done: sum('done'), begun: sum('begun') }])
    expect(sum('done')).toBe(5)
    const of = (person: Person) => record.people.find((one) => one.person === person.id)
    expect(of(bo)).toMatchObject({ helped: 1, alsoWorked: 1 })
    expect(of(ann)).toMatchObject({ fromPaper: 1 })
    expect(
      record.stops[0]?.answers.map(({ person, answer, byLead }) => [person, answer, byLead])
    ).toEqual(folded.answers)
  })

  test('hours from paper count like all others, and a break ends with its stay at the latest', async () => {
    const { lead, shift } = await readyCrew(db)
    const cy = await lead.adds('Cy')
    const at = (clock: string) => `2026-11-24T${clock}:00.000Z`
    await lead.for(cy).must('enter_attendance', {
      arrivedAt: at('08:00'),
      breaks: [[at('10:00'), at('10:15')]],
      leftAt: at('12:00'),
    })
    await lead.for(cy).must('enter_attendance', { arrivedAt: at('13:00'), leftAt: at('14:30') })
    await db.asOwner(
      `insert into breaks (id, attendance_id, from_at) select gen_random_uuid(), id, $2 from attendances where person_id = $1 and arrived_at = $3`,
      [cy.id, at('14:00'), at('13:00')]
    )

    const record = (await lead.read('shift_record', { shift })) as RecordRead

    expect(record.people.find(({ person }) => person === cy.id)).toMatchObject({
      stays: [
        [at('08:00'), at('12:00')],
        [at('13:00'), at('14:30')],
      ],
      hereS: 5.5 * 3600,
      breakS: 45 * 60,
      done: 0,
    })
  })

  test('nobody but leads reads it, and the closed shift stays readable without its id', async () => {
    const { lead, ann, shift } = await readyCrew(db)

    expect(await lead.read('shift_record', {})).toMatchObject({ shift, state: 'open' })
    const volunteers = await db.as(ann.userId, 'shift_record', { p_orchard: ann.orchardId })
    expect(faultOf({ status: volunteers.status, body: volunteers.body as never })).toBe(
      '403 not_allowed'
    )
  })

  async function eventsOf({ id }: Orchard): Promise<Told[]> {
    return db.asOwner(
      `select at, kind, person_id as person, by_person_id as by, coalesce(body, '{}') as body
       from public.events where orchard_id = $1 order by n`,
      [id]
    )
  }
})

/** Trees finished alone, in a pair, undone, half done, by two, from paper; a break, a stop, a close with a tree held. */
async function aDay({ lead, ann, bo }: { lead: Person; ann: Person; bo: Person }): Promise<void> {
  const finish = async (who: Person, tree: number, helpers: string[] = []) => {
    const { command: claim } = await who.must('claim_tree', { tree, helpers })
    await who.must('finish_tree', { tree, claim })
    return claim
  }
  await finish(ann, 1)
  await finish(ann, 2, [bo.id])
  await ann.must('undo_tree', { tree: 2 })
  const [{ claim }] = (await ann.database.asOwner(
    'select id as claim from claims where orchard_id = $1 and ended_at is null',
    [ann.orchardId]
  )) as [{ claim: string }]
  await ann.must('finish_tree', { tree: 2, claim })
  await finish(bo, 3)
  await bo.must('finish_tree', { tree: 9, begunAt: new Date().toISOString() })

  const { command: half } = await ann.must('claim_tree', { tree: 4 })
  await ann.must('release_tree', { tree: 4, claim: half, share: 40 })
  await finish(bo, 4)
  const { command: again } = await ann.must('claim_tree', { tree: 5 })
  await ann.must('release_tree', { tree: 5, claim: again, share: 70 })

  await bo.must('start_break')
  await bo.must('end_break')
  const { command: stop } = await ann.must('stop_work')
  await ann.must('answer_stop', { stop })
  await lead.for(bo).must('answer_stop', { stop })
  await lead.must('resume_work', { stop })
  for (const who of [ann, bo]) await who.must('answer_stop', { stop })

  await lead.for(ann).must('enter_work', { tree: 20, at: new Date().toISOString() })
  await bo.must('claim_tree', { tree: 6 })
  await lead.must('close_shift', { why: await whysFor(lead) })
}

async function whysFor(lead: Person): Promise<Record<string, Record<string, string>>> {
  const ids = async (sql: string) => {
    const rows = await lead.database.asOwner<{ id: string }>(sql, [lead.orchardId])
    return Object.fromEntries(rows.map(({ id }) => [id, 'went home']))
  }
  return {
    people: await ids(
      'select person_id as id from attendances where orchard_id = $1 and left_at is null'
    ),
    claims: await ids('select id from claims where orchard_id = $1 and ended_at is null'),
    tools: await ids(
      'select tool_no as id from tool_holdings where orchard_id = $1 and returned_at is null'
    ),
  }
}

/** The same numbers from nothing but the events: who is here since when, who has done which tree. */
function fold(events: Told[]) {
  const here = new Map<string, { arrived: number; rest: number | null }>()
  const stays = new Map<string, number>()
  const breaks = new Map<string, number>()
  const trees = new Map<number, { person: string; state: string }>()
  const held = new Map<string, { person: string; tree: number }>()
  const answers: [string, string, boolean][] = []
  const add = (to: Map<string, number>, person: string, ms: number) =>
    to.set(person, (to.get(person) ?? 0) + ms / 1000)

  for (const { at, kind, person, by, body } of events) {
    const now = Date.parse(String(body.at ?? new Date(at).toISOString()))
    const there = here.get(person)
    if (kind === 'person_arrived') here.set(person, { arrived: now, rest: null })
    if (kind === 'break_started' && there) there.rest = now
    if (kind === 'break_ended' && there?.rest) add(breaks, person, now - there.rest)
    for (const left of (body.left ?? []) as string[]) {
      const gone = here.get(left)
      if (gone) add(stays, left, now - gone.arrived)
      here.delete(left)
    }
    if (kind === 'tree_claimed' || kind === 'tree_undone') {
      held.set(String(body.claim), { person: holderIn(body), tree: Number(body.tree) })
      if (kind === 'tree_undone') trees.delete(Number(body.tree))
    }
    for (const [tree, state] of (body.work ?? []) as [number, string][]) {
      if (state === 'unpruned' || trees.get(tree)?.state === 'done') continue
      const holder = [...held.values()].find((one) => one.tree === tree)?.person
      const by = kind === 'shift_closed' ? (holder ?? person) : person
      trees.set(tree, { person: by, state })
    }
    if (kind === 'stop_answered') {
      const { answer, person: who } = body as { answer: string; person: string }
      answers.push([who, answer, by !== who])
    }
    for (const claim of (body.claimsEnded ?? []) as string[]) held.delete(claim)
  }
  return {
    answers,
    of: (person: string) => ({
      stays: stays.get(person) ?? 0,
      breaks: breaks.get(person) ?? 0,
      trees: {
        done: [...trees.values()].filter((t) => t.person === person && t.state === 'done').length,
        begun: [...trees.values()].filter((t) => t.person === person && t.state === 'begun').length,
      },
    }),
  }
}

function holderIn({ people }: Record<string, unknown>): string {
  const parts = Object.entries((people ?? {}) as Record<string, string>)
  return parts.find(([, part]) => part === 'holder')?.[0] ?? ''
}
