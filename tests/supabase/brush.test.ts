import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import { codesOf, lastEvent, makeReady, type Person, readyCrew } from '../support/orchard'

/** Trees 1 to 20 are row 1 of block 1, 21 to 40 row 2. */
const row1 = { block: 1, row: 1 }
const row2 = { block: 1, row: 2 }

describe.each(engines)('hauling brush on $name', ({ open }) => {
  let db: TestDatabase
  beforeAll(async () => {
    db = await open()
  })
  afterAll(() => db.close())

  const prune = async (person: Person, ...trees: number[]) => {
    for (const tree of trees) {
      const { command: claim } = await person.must('claim_tree', { tree })
      await person.must('finish_tree', { tree, claim })
    }
  }
  const brushOf = async (person: Person) => {
    const told = await person.read('snapshot', { person: person.id })
    return told as { hauled: number[]; brushGoes: Record<string, string>; claims: object }
  }
  const crewWithWood = async () => {
    const crew = await readyCrew(db)
    await prune(crew.ann, 3, 4, 5)
    return crew
  }
  const hazard = { kind: 'arborist', sign: 'crack', severity: 'high' }

  test('a row is taken, hauled and given back: the claim is over and its trees are cleared', async () => {
    const { orchard, ann, bo } = await crewWithWood()

    const { command: claim } = await bo.must('take_brush', { ...row1, helpers: [ann.id] })
    expect(await lastEvent(orchard)).toMatchObject({
      kind: 'brush_taken',
      body: { claim, row: row1, kind: 'brush', people: { [bo.id]: 'holder', [ann.id]: 'helper' } },
    })
    await ann.must('finish_brush', { claim, trees: [3, 4] })

    expect((await lastEvent(orchard)).body).toEqual({ claimsEnded: [claim], hauled: [3, 4] })
    expect(await brushOf(bo)).toMatchObject({ hauled: [3, 4], claims: {} })
    await ann.must('claim_tree', { tree: 7 })
    expect(codesOf(await bo.send('take_brush', row1))).toEqual([])
  })

  test('where nothing lies there is nothing to haul, and wood lies again when a tree is worked on anew', async () => {
    const { ann, bo, lead } = await crewWithWood()
    expect(codesOf(await bo.send('take_brush', row2))).toEqual(['nothing_to_haul'])
    const { command: claim } = await bo.must('take_brush', row1)
    await bo.must('finish_brush', { claim, trees: [3, 4, 5, 9] })
    expect(await brushOf(bo)).toMatchObject({ hauled: [3, 5] })
    expect(codesOf(await bo.send('take_brush', row1))).toEqual(['nothing_to_haul'])

    await lead.must('look_over', { tree: 4, result: 'reopened', reason: 'stubs_left' })
    await prune(ann, 4)

    expect(await brushOf(bo)).toMatchObject({ hauled: [3, 3, 5, 5] })
    await bo.must('take_brush', row1)
  })

  test('no pruner is asked, but everything that makes a person ready is', async () => {
    const { lead } = await crewWithWood()
    const di = await lead.adds('Di')

    expect(codesOf(await di.send('take_brush', row1))).toEqual([
      'not_arrived',
      'consent_missing',
      'briefing_not_given',
      'briefing_not_signed',
      'equipment_not_checked',
    ])
    await di.must('arrive')
    await di.must('give_consent', { textVersion: 1 })
    await lead.must('give_briefing', { people: [di.id] })
    await di.must('sign_briefing', { version: 1, language: 'en', how: 'heard' })
    await di.must('check_equipment', { failedItems: [] })
    await di.must('start_break')
    expect(codesOf(await di.send('take_brush', row1))).toEqual(['on_break'])
    await di.must('end_break')
    await di.must('take_brush', row1)
  })

  test('a child hauls while their adult is here, a visitor never', async () => {
    const { lead, ann } = await crewWithWood()
    const kit = await lead.must('add_person', { name: 'Kit', ageBand: 'minor', guardian: ann.id })
    const child = lead.for({ id: String(kit.body.person) })
    await child.must('give_consent', { textVersion: 1, by: ann.id })
    await child.must('arrive')
    await lead.must('give_briefing', { people: [child.id] })
    await child.must('sign_briefing', { version: 1, language: 'en', how: 'read_to_me' })
    await child.must('check_equipment', { failedItems: [] })
    const guest = await lead.adds('Val', { role: 'visitor' })

    expect(codesOf(await guest.send('take_brush', row1))).toContain('visitors_do_not_prune')
    const { command: claim } = await child.must('take_brush', row1)
    await child.must('finish_brush', { claim, trees: [] })
    await db.asOwner(
      'update attendances set left_at = now() where person_id = $1 and left_at is null',
      [ann.id]
    )
    expect(codesOf(await child.send('take_brush', row1))).toEqual(['adult_missing'])
  })

  test('wood near a hazard stays: the row is taken for the rest, and not at all when only such wood lies', async () => {
    const { lead, bo } = await crewWithWood()
    await lead.must('flag_tree', { tree: 6, ...hazard, keepOutM: 6 })
    const { command: claim } = await bo.must('take_brush', row1)
    await bo.must('finish_brush', { claim, trees: [3, 4] })

    const refused = await bo.send('take_brush', row1)

    expect(refused.body.refused).toEqual([{ code: 'inside_keep_out', detail: { tree: 6 } }])
  })

  test('a hazard flagged while people haul brings them out; what they hauled still comes in', async () => {
    const { orchard, lead, ann, bo } = await crewWithWood()
    const { command: claim } = await bo.must('take_brush', row1)
    const { command: flag } = await lead.must('flag_tree', { tree: 4, ...hazard, keepOutM: 12 })
    expect((await lastEvent(orchard)).body).toMatchObject({ claimsEnded: [claim] })

    expect(codesOf(await ann.send('join_tree', { claim }))).toEqual(['claim_over'])
    await bo.must('finish_brush', { claim, trees: [3] })
    expect((await lastEvent(orchard)).body).toEqual({ hauled: [3] })
    await bo.must('answer_keep_out', { flag })

    expect(codesOf(await bo.send('take_brush', row1))).toEqual(['inside_keep_out'])
  })

  test('under a stop nobody takes or joins a row, and what was hauled is taken in', async () => {
    const { orchard, lead, ann, bo } = await crewWithWood()
    const { command: claim } = await bo.must('take_brush', row1)
    const { command: stop } = await lead.must('stop_work', { block: 1 })

    expect(codesOf(await ann.send('take_brush', row2))).toContain('stopped')
    expect(codesOf(await ann.send('join_tree', { claim }))).toEqual(['stopped'])
    expect(codesOf(await bo.send('hand_over', { claim, to: ann.id }))).toEqual(['stopped'])
    await bo.must('finish_brush', { claim, trees: [3] })
    expect((await lastEvent(orchard)).body).toMatchObject({ hauled: [3] })

    await lead.must('resume_work', { stop })
    expect(codesOf(await bo.send('take_brush', row1))).toEqual(['stop_not_answered'])
  })

  test('who hauls takes no tree, no break and does not leave, and hears which row it is', async () => {
    const { bo } = await crewWithWood()
    const { command: claim } = await bo.must('take_brush', row1)

    const claiming = await bo.send('claim_tree', { tree: 9 })
    const resting = await bo.send('start_break')
    const leaving = await bo.send('leave')

    for (const reply of [claiming, resting, leaving]) {
      expect(reply.body.refused?.[0]).toEqual({
        code: 'holds_another',
        detail: { claim, row: row1 },
      })
    }
  })

  test('a briefing that changes to "come down" is signed before the next row, and hauling is not undone by it', async () => {
    const { lead, ann, bo, shift } = await crewWithWood()
    const { command: claim } = await bo.must('take_brush', row1)
    await lead.must('write_briefing', { shift, topics: [{ code: 'wind' }], change: 'come_down' })

    expect(codesOf(await ann.send('join_tree', { claim }))).toContain('briefing_not_signed')
    await bo.must('finish_brush', { claim, trees: [3] })

    expect(codesOf(await bo.send('take_brush', row1))).toContain('briefing_not_signed')
  })

  test('helpers go, the holder hands over; who was never there gives nothing back', async () => {
    const { lead, ann, bo } = await crewWithWood()
    const { command: claim } = await bo.must('take_brush', row1)
    await ann.must('join_tree', { claim })

    expect(codesOf(await bo.send('leave_tree', { claim }))).toEqual(['holder_hands_over'])
    await bo.must('hand_over', { claim, to: ann.id })
    expect(codesOf(await lead.send('finish_brush', { claim, trees: [] }))).toEqual(['not_in_claim'])
    await ann.must('finish_brush', { claim, trees: [3, 4, 5] })
  })

  test('a lead ends the claim of a row, and what its person hauled still comes in', async () => {
    const { orchard, lead, bo } = await crewWithWood()
    const { command: claim } = await bo.must('take_brush', row1)
    await lead.must('end_claim', { claim, howReached: 'by voice' })
    expect((await lastEvent(orchard)).body).toEqual({ claimsEnded: [claim] })

    await bo.must('finish_brush', { claim, trees: [3, 4, 5] })

    expect((await lastEvent(orchard)).body).toEqual({ hauled: [3, 4, 5] })
  })

  test('somebody removed puts the row down, a helper only goes', async () => {
    const { orchard, lead, ann, bo } = await crewWithWood()
    const { command: claim } = await bo.must('take_brush', { ...row1, helpers: [ann.id] })

    await lead.must('remove_person', { subject: ann.id })
    expect((await lastEvent(orchard)).body).toMatchObject({ claimsLeft: [[claim, ann.id]] })
    await lead.must('remove_person', { subject: bo.id })

    expect((await lastEvent(orchard)).body).toMatchObject({ claimsEnded: [claim] })
    expect((await lastEvent(orchard)).body).not.toHaveProperty('work')
  })

  test('closing the shift asks why for a row in hand, and puts it down without touching any tree', async () => {
    const { orchard, lead, ann, bo } = await crewWithWood()
    const { command: claim } = await bo.must('take_brush', row1)
    const people = Object.fromEntries([lead, ann, bo].map(({ id }) => [id, 'went home']))
    const tools = await db.asOwner<{ no: number }>('select no from tools where orchard_id = $1', [
      orchard.id,
    ])
    const why = {
      people,
      tools: Object.fromEntries(tools.map(({ no }) => [no, 'in the shed'])),
      claims: {},
    }

    const refused = await lead.send('close_shift', { why })
    await lead.must('close_shift', { why: { ...why, claims: { [claim]: 'dusk' } } })

    expect(refused.body.refused).toMatchObject([
      { code: 'trees_held', detail: { claims: [claim] } },
    ])
    expect((await lastEvent(orchard)).body).toMatchObject({ claimsEnded: [claim] })
    expect((await lastEvent(orchard)).body).not.toHaveProperty('work')
    await bo.must('finish_brush', { claim, trees: [3] })
    expect((await lastEvent(orchard)).body).toEqual({ hauled: [3] })
  })

  test('trees of another row, and claims of a tree, are malformed', async () => {
    const { ann, bo } = await crewWithWood()
    const { command: claim } = await bo.must('take_brush', row1)
    const { command: tree } = await ann.must('claim_tree', { tree: 9 })

    const others = await bo.send('finish_brush', { claim, trees: [21] })
    const ofATree = await ann.send('finish_brush', { claim: tree, trees: [] })
    const nowhere = await ann.send('take_brush', { block: 1, row: 77 })

    expect([others.status, ofATree.status]).toEqual([400, 400])
    expect([nowhere.status, nowhere.body.details]).toEqual([404, 'no_such_row'])
  })

  test('a lead says where the wood goes, what is hauled and what still lies; nobody else does', async () => {
    const { lead, bo } = await crewWithWood()
    const directed = { block: 1, rows: [1, 2], goes: 'burn' }

    await lead.must('direct_brush', directed)
    await lead.must('direct_brush', { block: 1, rows: [2], goes: null })
    await lead.must('mark_brush', { trees: [3, 4, 5, 20], hauled: true })
    await lead.must('mark_brush', { trees: [4], hauled: false })

    expect(await brushOf(bo)).toMatchObject({ hauled: [3, 3, 5, 5], brushGoes: { '1:1': 'burn' } })
    expect((await bo.send('direct_brush', directed)).status).toBe(403)
    expect((await bo.send('mark_brush', { trees: [3], hauled: true })).status).toBe(403)
  })

  test('brush carried from one tree clears that tree', async () => {
    const { orchard, bo } = await crewWithWood()
    const { command: claim } = await bo.must('claim_tree', { tree: 4, kind: 'brush' })

    await bo.must('finish_tree', { tree: 4, claim })

    expect((await lastEvent(orchard)).body).toEqual({ tree: 4, claimsEnded: [claim], hauled: [4] })
  })

  test('two take one row in the same moment: one has it, the other hears who', async () => {
    const { lead, ann, bo } = await crewWithWood()
    await lead.must('leave')
    await makeReady(lead, lead)

    for (let round = 0; round < 20; round++) {
      const replies = await Promise.all([ann, bo].map((one) => one.send('take_brush', row1)))
      const [first, second] = replies[0]?.body.n !== undefined ? replies : replies.toReversed()
      expect(second?.body.refused).toMatchObject([{ code: 'row_held', detail: { row: row1 } }])
      const holder = replies[0] === first ? ann : bo
      await holder.must('finish_brush', { claim: first?.command, trees: [] })
    }
  })
})
