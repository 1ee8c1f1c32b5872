import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import type { State } from '@/lib/events/state'
import { engines, type TestDatabase } from '../support/engines'
import { codesOf, lastEvent, makeReady, type Person, readyCrew } from '../support/orchard'

describe.each(engines)('looking over on $name', ({ open }) => {
  let db: TestDatabase
  beforeAll(async () => {
    db = await open()
  })
  afterAll(() => db.close())

  const finish = async (person: Person, tree: number, more = {}) => {
    const { command: claim } = await person.must('claim_tree', { tree, ...more })
    await person.must('finish_tree', { tree, claim })
  }
  const stateOf = async (person: Person) =>
    (await person.read('snapshot', { person: person.id })) as Omit<State, 'lookedOver'> & {
      lookedOver: { passed: number[]; reopened: [number, string][] }
    }
  const stubs = { result: 'reopened', reason: 'stubs_left' }

  test('a passed tree is known to leads and to who worked on it, and to nobody else', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    await finish(ann, 3)

    await lead.must('look_over', { tree: 3, result: 'passed' })

    expect(await lastEvent(orchard)).toMatchObject({
      kind: 'tree_looked_over',
      body: null,
      leadBody: { tree: 3, result: 'passed' },
    })
    expect((await stateOf(lead)).lookedOver).toEqual({ passed: [3, 3], reopened: [] })
    expect((await stateOf(ann)).lookedOver).toEqual({ passed: [3, 3], reopened: [] })
    expect((await stateOf(bo)).lookedOver).toEqual({ passed: [], reopened: [] })
  })

  test('a reopened tree is begun, goes back to who finished it, and the reason goes only to them and to leads', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    await finish(ann, 3)

    await lead.must('look_over', { tree: 3, ...stubs, note: 'Two on the east side.' })

    const event = await lastEvent(orchard)
    expect(event).toMatchObject({
      body: { tree: 3, to: [ann.id], work: [[3, 'begun', null]] },
      leadBody: { tree: 3, ...stubs },
    })
    expect(JSON.stringify(event)).not.toContain('Two on the east side.')
    const told = async (person: Person) => {
      const { epoch } = await stateOf(person)
      const asked = { person: person.id, epoch, n: Number(event.n) - 1 }
      const { events } = (await person.read('events_after', asked)) as { events: object[] }
      return events[0]
    }
    expect(await told(ann)).toMatchObject({ leadBody: { reason: 'stubs_left' } })
    expect(await told(bo)).not.toHaveProperty('leadBody')
    expect((await stateOf(ann)).lookedOver.reopened).toEqual([
      [3, 'stubs_left', lead.id, expect.any(String)],
    ])
    expect((await stateOf(bo)).lookedOver.reopened).toEqual([])
    expect(await bo.read('tree_notes', { tree: 3 })).toMatchObject([
      { kind: 'begun', note: 'Two on the east side.' },
    ])
    expect(codesOf(await bo.send('claim_tree', { tree: 3 }))).toContain('dealt_to_another')
    await ann.must('claim_tree', { tree: 3 })
  })

  test('nobody looks over a tree they worked on, as holder, helper or learner, not even by another lead', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    const second = await orchard.manager.adds('Noor', { role: 'lead' })
    await lead.must('leave')
    await makeReady(lead, lead)
    await makeReady(lead, second)
    await finish(ann, 3, { helpers: [lead.id] })
    const { command: claim } = await ann.must('claim_tree', { tree: 4 })
    await second.must('join_tree', { claim, part: 'learner' })
    await second.must('leave_tree', { claim })
    await ann.must('finish_tree', { tree: 4, claim })

    const helper = await lead.send('look_over', { tree: 3, result: 'passed' })
    const learner = await second.send('look_over', { tree: 4, ...stubs })
    const inTheirName = await second.for(lead).send('look_over', { tree: 3, result: 'passed' })
    const volunteer = await bo.send('look_over', { tree: 3, result: 'passed' })

    expect(codesOf(helper)).toEqual(['worked_on_it'])
    expect(codesOf(learner)).toEqual(['worked_on_it'])
    expect(codesOf(inTheirName)).toEqual(['worked_on_it'])
    expect(volunteer.status).toBe(403)
    await lead.must('look_over', { tree: 4, result: 'passed' })
  })

  test('who gave a tree back as it was, or hauled its brush, may look it over', async () => {
    const { lead, ann } = await readyCrew(db)
    await lead.must('leave')
    await makeReady(lead, lead)
    const { command: claim } = await lead.must('claim_tree', { tree: 3 })
    await lead.must('release_tree', { tree: 3, claim })
    await finish(ann, 3)
    await finish(lead, 3, { kind: 'brush' })

    await lead.must('look_over', { tree: 3, result: 'passed' })
  })

  test('only what is done is looked over, and a reason is one of the list', async () => {
    const { lead, ann } = await readyCrew(db)
    const untouched = await lead.send('look_over', { tree: 5, result: 'passed' })
    await finish(ann, 3)

    const wrong = await lead.send('look_over', { tree: 3, result: 'reopened', reason: 'ugly' })
    const silent = await lead.send('look_over', { tree: 3, result: 'reopened' })
    await lead.must('look_over', { tree: 3, ...stubs })
    const again = await lead.send('look_over', { tree: 3, ...stubs })

    expect(codesOf(untouched)).toEqual(['tree_not_done'])
    expect([wrong.status, silent.status]).toEqual([400, 400])
    expect(codesOf(again)).toEqual(['tree_not_done'])
  })

  test('a reopened tree is free when who finished it has gone home, and passes after it is done again', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    await finish(ann, 3)
    const [tool] = await db.asOwner<{ no: number }>(
      'select tool_no as no from tool_holdings where person_id = $1 and returned_at is null',
      [ann.id]
    )
    await ann.must('return_tool', { tool: tool?.no })
    await ann.must('leave')

    await lead.must('look_over', { tree: 3, ...stubs })
    expect((await lastEvent(orchard)).body).toEqual({ tree: 3, work: [[3, 'begun', null]] })
    await finish(bo, 3)
    await lead.must('look_over', { tree: 3, result: 'passed' })

    expect((await stateOf(ann)).lookedOver).toEqual({ passed: [3, 3], reopened: [] })
    expect((await stateOf(bo)).lookedOver).toEqual({ passed: [3, 3], reopened: [] })
  })

  test('the helper who tapped does not get the tree back: it goes to who held it', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3, helpers: [bo.id] })
    await bo.must('finish_tree', { tree: 3, claim })

    await lead.must('look_over', { tree: 3, ...stubs })

    expect((await lastEvent(orchard)).body).toMatchObject({ to: [ann.id] })
  })

  test('after it was looked over nobody takes the finish back', async () => {
    const { lead, ann } = await readyCrew(db)
    await finish(ann, 3)
    await lead.must('look_over', { tree: 3, result: 'passed' })

    expect(codesOf(await ann.send('undo_tree', { tree: 3 }))).toEqual(['too_late_to_undo'])
  })

  test('the list has what is done and not passed, by whom, and how many of theirs were looked over', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    await finish(ann, 3)
    await finish(ann, 4, { helpers: [bo.id] })
    await finish(bo, 5)
    await lead.must('look_over', { tree: 3, result: 'passed' })
    await lead.must('look_over', { tree: 5, ...stubs })

    const list = (await lead.read('trees_to_look_over')) as {
      trees: { tree: number; people: string[] }[]
      people: Record<string, { lookedOver: number }>
    }

    expect(list.trees.map(({ tree }) => tree)).toEqual([4])
    expect(list.trees[0]?.people.toSorted()).toEqual([ann.id, bo.id].sort())
    expect(list.people[ann.id]).toMatchObject({ lookedOver: 1 })
    expect(list.people[bo.id]).toMatchObject({ lookedOver: 1 })
  })
})
