/** A briefing changes in the middle of a shift: who must be told again, who signs for it, what was said before. */

import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import type { State } from '@/lib/events/state'
import { engines, type TestDatabase } from '../support/engines'
import { codesOf, lastEvent, type Person, readyCrew } from '../support/orchard'

const topics = [{ code: 'ladders' }, { code: 'own_1', en: 'A hornets’ nest by the well' }]
const signed = (version: number) => ({ version, language: 'en', how: 'read' })

describe.each(engines)('briefings on $name', ({ open }) => {
  let database: TestDatabase
  beforeAll(async () => {
    database = await open()
  }, 60_000)
  afterAll(() => database.close())

  const snapshotOf = async (person: Person) =>
    (await person.read('snapshot', { person: person.id })) as State

  test('before the next tree: signing it is enough, also through a lead', async () => {
    const { lead, ann, bo, shift } = await readyCrew(database)
    await lead.must('write_briefing', { shift, topics, change: 'before_next_tree' })
    expect(codesOf(await ann.send('claim_tree', { tree: 3 }))).toEqual(['briefing_not_signed'])

    await ann.must('sign_briefing', signed(2))
    await lead.for(bo).must('sign_briefing', { ...signed(2), how: 'read_to_me' })

    await ann.must('claim_tree', { tree: 3 })
    await bo.must('claim_tree', { tree: 20 })
  })

  test('come down now: who signs by their own hand has it, for whom a lead signs must also be told', async () => {
    const { lead, ann, bo, shift } = await readyCrew(database)
    await lead.must('write_briefing', { shift, topics, change: 'come_down' })

    await ann.must('sign_briefing', signed(2))
    await lead.for(bo).must('sign_briefing', { ...signed(2), how: 'read_to_me' })

    await ann.must('claim_tree', { tree: 3 })
    expect(codesOf(await bo.send('claim_tree', { tree: 20 }))).toEqual(['briefing_not_given'])
    await lead.must('give_briefing', { people: [bo.id] })
    await bo.must('claim_tree', { tree: 20 })
  })

  test('told alone is not signed, and a later change of words does not undo that one was told', async () => {
    const { lead, ann, shift } = await readyCrew(database)
    await lead.must('write_briefing', { shift, topics, change: 'come_down' })
    await lead.must('give_briefing', { people: [ann.id] })
    expect(codesOf(await ann.send('claim_tree', { tree: 3 }))).toEqual(['briefing_not_signed'])
    await lead.must('write_briefing', { shift, topics, change: 'before_next_tree' })

    await lead.for(ann).must('sign_briefing', { ...signed(3), how: 'read_to_me' })

    await ann.must('claim_tree', { tree: 3 })
  })

  test('who came after the first briefing and was never given any has to be, whatever they sign', async () => {
    const { lead, ann, shift } = await readyCrew(database)
    await lead.must('write_briefing', { shift, topics, change: 'come_down' })
    const cy = await lead.adds('Cy')
    await cy.must('arrive')
    await cy.must('sign_briefing', signed(2))

    expect(codesOf(await cy.send('claim_tree', { tree: 3 }))).toContain('briefing_not_given')
    await lead.must('give_briefing', { people: [cy.id] })
    expect(codesOf(await cy.send('claim_tree', { tree: 3 }))).not.toContain('briefing_not_given')
    expect((await snapshotOf(ann)).briefed[cy.id]).toEqual({ givenVersion: 2, signedVersion: 2 })
  })

  test('whoever is at a tree keeps it, may put it down, and has no other before signing', async () => {
    const { lead, ann, shift } = await readyCrew(database)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })
    await lead.must('write_briefing', { shift, topics, change: 'come_down' })

    expect((await snapshotOf(ann)).claims).toHaveProperty(claim)
    await ann.must('finish_tree', { claim, tree: 3 })
    expect(codesOf(await ann.send('claim_tree', { tree: 4 }))).toEqual([
      'briefing_not_given',
      'briefing_not_signed',
    ])
    await ann.must('sign_briefing', signed(2))
    await ann.must('claim_tree', { tree: 4 })
  })

  test('the snapshot says since which version everybody must be told again, and events say whose hand signed', async () => {
    const { orchard, lead, ann, bo, shift } = await readyCrew(database)
    await lead.must('write_briefing', { shift, topics, change: 'come_down' })
    await lead.must('write_briefing', { shift, topics, change: 'before_next_tree' })

    await ann.must('sign_briefing', signed(3))
    expect((await lastEvent(orchard)).body).toEqual({ version: 3, own: true })
    await lead.for(bo).must('sign_briefing', signed(3))
    expect((await lastEvent(orchard)).body).toEqual({ version: 3 })

    const { shifts, briefed } = await snapshotOf(bo)
    expect(shifts[shift]).toMatchObject({
      briefingVersion: 3,
      briefingChange: 'before_next_tree',
      comeDownVersion: 2,
    })
    expect(briefed[ann.id]).toEqual({ givenVersion: 3, signedVersion: 3 })
    expect(briefed[bo.id]).toEqual({ givenVersion: 1, signedVersion: 3 })

    // A lead signed for them; then they sign by their own hand, which says more.
    await bo.must('sign_briefing', signed(3))
    expect((await snapshotOf(ann)).briefed[bo.id]).toEqual({ givenVersion: 3, signedVersion: 3 })
  })

  test('every version that was ever said can be read again', async () => {
    const { lead, ann, shift } = await readyCrew(database)
    await lead.must('write_briefing', { shift, topics, change: 'come_down' })

    expect(await ann.read('read_briefing', { shift, version: 1 })).toEqual({
      version: 1,
      change: 'first',
      topics: [{ code: 'ladders' }],
    })
    expect(await lead.read('read_briefing', { shift })).toEqual({
      version: 2,
      change: 'come_down',
      topics,
    })
    expect(await lead.read('read_briefing', { shift, version: 9 })).toBeNull()
  })
})
