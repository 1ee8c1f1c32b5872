import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import {
  codesOf,
  crewOfThree,
  lastEvent,
  makeReady,
  openShift,
  readyCrew,
} from '../support/orchard'

describe.each(engines)('claiming a tree on $name', ({ open }) => {
  let db: TestDatabase
  beforeAll(async () => {
    db = await open()
  })
  afterAll(() => db.close())

  const openClaims = (orchard: string, tree: number) =>
    db.asOwner<{ count: number }>(
      'select count(*)::integer as count from claims where orchard_id = $1 and tree_no = $2 and ended_at is null',
      [orchard, tree]
    )

  test('a person who is ready holds the tree, and everybody hears of it', async () => {
    const { orchard, ann } = await readyCrew(db)

    const answer = await ann.send('claim_tree', { tree: 3 })

    expect(answer.body).toEqual({ n: expect.any(Number) })
    expect(await lastEvent(orchard)).toMatchObject({
      kind: 'tree_claimed',
      person: ann.id,
      body: { claim: answer.command, tree: 3, people: { [ann.id]: 'holder' }, ladder: false },
      leadBody: null,
    })
  })

  test('who lacks everything is told everything', async () => {
    const { orchard, lead, ann } = await crewOfThree(db)
    await openShift({ orchard, lead })

    const answer = await ann.send('claim_tree', { tree: 3 })

    expect(codesOf(answer)).toEqual([
      'not_arrived',
      'consent_missing',
      'briefing_not_given',
      'briefing_not_signed',
      'equipment_not_checked',
      'no_tool_in_hand',
      'not_marked',
    ])
    expect(await openClaims(orchard.id, 3)).toEqual([{ count: 0 }])
  })

  test('without an open shift nothing can be claimed', async () => {
    const { ann } = await crewOfThree(db)
    expect(codesOf(await ann.send('claim_tree', { tree: 3 }))).toEqual(['shift_not_open'])
  })

  test('a tree that somebody holds is refused, and the answer names another in the same row', async () => {
    const { orchard, ann, bo } = await readyCrew(db)
    await ann.must('claim_tree', { tree: 3 })

    const answer = await bo.send('claim_tree', { tree: 3 })

    expect(answer.body.refused).toEqual([
      { code: 'tree_held', detail: { tree: 3, person: ann.id } },
    ])
    expect(answer.body.next).toEqual({ tree: 2, why: 'same_row' })
    expect(await openClaims(orchard.id, 3)).toEqual([{ count: 1 }])
  })

  test('who was second is sent to a tree dealt to them before any nearer one', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    await lead.must('deal_trees', { trees: [30], to: [bo.id] })
    await ann.must('claim_tree', { tree: 3 })

    const answer = await bo.send('claim_tree', { tree: 3 })

    expect(answer.body.next).toEqual({ tree: 30, why: 'dealt' })
  })

  test('nobody holds two trees', async () => {
    const { ann } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })

    const answer = await ann.send('claim_tree', { tree: 4 })

    expect(answer.body.refused).toEqual([{ code: 'holds_another', detail: { claim, tree: 3 } }])
  })

  test('the same command again gets the first answer and changes nothing', async () => {
    const { orchard, ann } = await readyCrew(db)
    const first = await ann.send('claim_tree', { tree: 3 })
    const before = await lastEvent(orchard)

    const again = await ann.send('claim_tree', { tree: 3 }, first.command)

    expect(again.body).toEqual(first.body)
    expect(await lastEvent(orchard)).toEqual(before)
  })

  test('a refusal is stored too: sent again after it became possible, it is still refused', async () => {
    const { ann, bo } = await readyCrew(db)
    await ann.must('claim_tree', { tree: 3 })
    const refused = await bo.send('claim_tree', { tree: 3 })
    await ann.must('finish_tree', { tree: 3, claim: (await claimOf(ann.id)).id })

    expect((await bo.send('claim_tree', { tree: 3 }, refused.command)).body).toEqual(refused.body)
  })

  test('another body under the same id is an error', async () => {
    const { ann } = await readyCrew(db)
    const { command } = await ann.send('claim_tree', { tree: 3 })

    const other = await ann.send('claim_tree', { tree: 4 }, command)

    expect([other.status, other.body.details]).toEqual([409, 'command_id_used'])
  })

  test('a dealt tree is refused to others and its deal ends when it is claimed', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    await lead.must('deal_trees', { trees: [12], to: [ann.id] })

    const others = await bo.send('claim_tree', { tree: 12 })
    await ann.must('claim_tree', { tree: 12 })

    expect(codesOf(others)).toEqual(['dealt_to_another'])
    expect(await lastEvent(orchard)).toMatchObject({ body: { dealsEnded: [12] } })
  })

  test('a tree of a species that is off today is refused with the reason', async () => {
    const { lead, ann } = await readyCrew(db)
    await lead.must('set_off_today', { what: 'apple', reason: 'rain' })

    const answer = await ann.send('claim_tree', { tree: 3 })

    expect(answer.body.refused).toEqual([
      { code: 'species_off', detail: { species: 'apple', reason: 'rain' } },
    ])
  })

  test('without "prunes alone" a tree is open once its big cuts are marked', async () => {
    const { lead, ann } = await readyCrew(db)
    await lead.must('end_skill', { subject: ann.id, skill: 'prunes_alone' })
    const before = await ann.send('claim_tree', { tree: 3 })

    await lead.must('mark_big_cuts', { tree: 3 })

    expect(codesOf(before)).toEqual(['not_marked'])
    await ann.must('claim_tree', { tree: 3 })
  })

  test('an expired skill counts no more', async () => {
    const { lead, ann } = await readyCrew(db)
    await lead.must('end_skill', { subject: ann.id, skill: 'prunes_alone' })
    await lead.must('grant_skill', {
      subject: ann.id,
      skill: 'prunes_alone',
      until: '2026-11-23',
    })

    expect(codesOf(await ann.send('claim_tree', { tree: 3 }))).toEqual(['not_marked'])
  })

  test('ladder work asks for skill, ladder, known height and two people, and says all four', async () => {
    const { orchard, ann } = await readyCrew(db)
    await db.asOwner('update trees set height_cm = null where orchard_id = $1 and no = 3', [
      orchard.id,
    ])

    const answer = await ann.send('claim_tree', { tree: 3, ladder: true })

    expect(codesOf(answer)).toEqual([
      'height_unknown',
      'skill_missing',
      'no_ladder_in_hand',
      'two_people_needed',
    ])
  })

  test('no ladder work beside a held tree, unless the lead dealt it', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    await db.asOwner('update trees set asks_saw = true where orchard_id = $1 and no = 3', [
      orchard.id,
    ])
    await lead.must('grant_skill', { subject: ann.id, skill: 'hand_saw' })
    const { body } = await lead.must('add_tool', { label: 'Saw 1', kind: 'saw' })
    await ann.must('take_tool', { tool: body.tool, failedItems: [] })
    await ann.must('claim_tree', { tree: 3, buddy: bo.id })

    const beside = await bo.send('claim_tree', { tree: 4 })
    await lead.must('deal_trees', { trees: [4], to: [bo.id] })

    expect(beside.body.refused).toEqual([{ code: 'works_next_to_it', detail: { tree: 3 } }])
    await bo.must('claim_tree', { tree: 4 })
  })

  test('a minor claims only with their adult there, and nothing that asks for a ladder', async () => {
    const { orchard, lead } = await readyCrew(db)
    const parent = await lead.adds('Pat')
    const child = await lead.adds('Kit', { ageBand: 'minor', guardian: parent.id })
    const { body } = await lead.must('add_tool', { label: 'Pruner 9', kind: 'pruner' })
    await lead.for(child).must('give_consent', { by: parent.id, textVersion: 1 })
    await child.must('arrive')
    await lead.must('give_briefing', { people: [child.id] })
    await child.must('sign_briefing', { version: 1, language: 'en', how: 'heard' })
    await child.must('check_equipment', { failedItems: [] })
    await child.must('take_tool', { tool: body.tool, failedItems: [] })
    await lead.must('mark_big_cuts', { tree: 3 })
    await lead.must('mark_big_cuts', { tree: 5 })
    await db.asOwner('update trees set height_cm = 400 where orchard_id = $1 and no = 5', [
      orchard.id,
    ])

    const alone = await child.send('claim_tree', { tree: 3 })
    await lead.for(parent).must('arrive')
    const tall = await child.send('claim_tree', { tree: 5 })

    expect(codesOf(alone)).toEqual(['adult_missing'])
    expect(codesOf(tall)).toEqual(['minor_ladder_saw'])
    await child.must('claim_tree', { tree: 3 })
  })

  test('a helper who is not ready keeps the claim from being made', async () => {
    const { lead, ann } = await readyCrew(db)
    const cy = await lead.adds('Cy')

    const answer = await ann.send('claim_tree', { tree: 3, helpers: [cy.id] })

    expect(answer.body.refused).toMatchObject([
      { code: 'helper_not_ready', detail: { person: cy.id } },
    ])
  })

  test('under a stop nothing is claimed; after it each answers first, but not who came later', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    const stop = await ann.must('stop_work')
    const during = await bo.send('claim_tree', { tree: 3 })
    await lead.must('resume_work', { stop: stop.command })

    const after = await bo.send('claim_tree', { tree: 3 })
    const cy = await lead.adds('Cy')
    await makeReady(lead, cy)

    expect(codesOf(during)).toEqual(['stopped'])
    expect(codesOf(after)).toEqual(['stop_not_answered'])
    await cy.must('claim_tree', { tree: 30 })
    await bo.must('answer_stop', { stop: stop.command })
    await bo.must('claim_tree', { tree: 3 })
  })

  test('a new version of the briefing is signed before the next tree', async () => {
    const { lead, ann, shift } = await readyCrew(db)
    await lead.must('write_briefing', {
      shift,
      topics: [{ code: 'wind' }],
      change: 'before_next_tree',
    })

    const before = await ann.send('claim_tree', { tree: 3 })
    await ann.must('sign_briefing', { version: 2, language: 'es', how: 'read' })

    expect(before.body.refused).toEqual([{ code: 'briefing_not_signed', detail: { version: 2 } }])
    await ann.must('claim_tree', { tree: 3 })
  })

  test('a person on a break, with a failed tool or an unclean one, is told so', async () => {
    const { lead, ann } = await readyCrew(db)
    const { body } = await lead.must('add_tool', { label: 'Lopper 1', kind: 'lopper' })
    await ann.must('take_tool', { tool: body.tool, failedItems: [] })
    await lead.must('fail_tool', { tool: body.tool, failedItems: ['handle'] })
    await ann.must('start_break')

    expect(codesOf(await ann.send('claim_tree', { tree: 3 }))).toEqual(['on_break', 'tool_failed'])
  })

  test('trees that are gone, left out, not in the round or done are each refused as what they are', async () => {
    const { orchard, ann } = await readyCrew(db)
    const change = (sql: string) => db.asOwner(sql, [orchard.id])
    await change("update trees set life = 'dead' where orchard_id = $1 and no = 21")
    await change(
      "update trees set species = 'fig', cultivar_no = null where orchard_id = $1 and no = 22"
    )
    await change(`insert into tree_work (orchard_id, round_id, tree_no, state, changed_at)
      select $1, id, 23, 'done', now() from rounds where orchard_id = $1`)
    await change(`insert into tree_work (orchard_id, round_id, tree_no, state, changed_at)
      select $1, id, 24, 'left_out', now() from rounds where orchard_id = $1`)

    const codes = []
    for (const tree of [21, 22, 23, 24]) codes.push(codesOf(await ann.send('claim_tree', { tree })))

    expect(codes).toEqual([
      ['tree_not_standing'],
      ['tree_not_in_round'],
      ['tree_done'],
      ['tree_left_out'],
    ])
  })

  test('a number that no tree has is an error, not a refusal', async () => {
    const { ann } = await readyCrew(db)
    const answer = await ann.send('claim_tree', { tree: 4711 })
    expect([answer.status, answer.body.details]).toEqual([404, 'no_such_tree'])
  })

  async function claimOf(person: string) {
    const [claim] = await db.asOwner<{ id: string }>(
      `select c.id from claims c join claim_people p on p.claim_id = c.id
       where p.person_id = $1 and c.ended_at is null`,
      [person]
    )
    if (!claim) throw new Error('This person holds nothing.')
    return claim
  }

  test('a volunteer hears that a helper is not ready, and only a lead hears of consent and age', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    const kid = await lead.adds('Kid', { ageBand: 'minor', guardian: bo.id })
    await kid.must('arrive')

    const told = await ann.send('claim_tree', { tree: 3, helpers: [kid.id] })
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })
    const handing = await ann.send('hand_over', { claim, to: kid.id })
    const byLead = await lead.for(ann).send('hand_over', { claim, to: kid.id, howReached: 'Spoke' })

    expect(told.body.refused).toEqual([{ code: 'helper_not_ready', detail: { person: kid.id } }])
    for (const code of ['consent_missing', 'skill_missing', 'not_marked', 'equipment_not_checked'])
      expect(codesOf(handing)).not.toContain(code)
    expect(codesOf(handing)).toContain('helper_not_ready')
    expect(codesOf(byLead)).toContain('consent_missing')
  })

  test('that a helper is too young for a saw is told as not ready', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    const kid = await lead.adds('Kid', { ageBand: 'minor', guardian: bo.id })
    await lead.for(kid).must('give_consent', { textVersion: 1, by: bo.id })
    await kid.must('arrive')
    await lead.must('give_briefing', { people: [kid.id] })
    await kid.must('sign_briefing', { version: 1, language: 'en', how: 'heard' })
    await kid.must('check_equipment', { failedItems: [] })
    await db.asOwner('update trees set height_cm = 400 where orchard_id = $1 and no = 3', [
      orchard.id,
    ])

    const told = await ann.send('claim_tree', { tree: 3, helpers: [kid.id] })
    const byLead = await lead.for(ann).send('claim_tree', { tree: 3, helpers: [kid.id] })

    expect(told.body.refused).toEqual([{ code: 'helper_not_ready', detail: { person: kid.id } }])
    expect(codesOf(byLead)).toEqual(['minor_ladder_saw'])
  })

  test('only pruning takes a ladder: nothing else is asked whether it may', async () => {
    const { ann } = await readyCrew(db)

    const tried = await ann.send('claim_tree', { tree: 3, kind: 'other', ladder: true })

    expect([tried.status, tried.body.details]).toEqual([400, 'malformed'])
  })
})
