import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import { codesOf, lastEvent, readyCrew } from '../support/orchard'

describe.each(engines)('working at a tree on $name', ({ open }) => {
  let db: TestDatabase
  beforeAll(async () => {
    db = await open()
  })
  afterAll(() => db.close())

  const workOn = (orchard: string, tree: number) =>
    db.asOwner('select state, share from tree_work where orchard_id = $1 and tree_no = $2', [
      orchard,
      tree,
    ])
  const everyToolOf = async (orchard: string) => {
    const tools = await db.asOwner<{ no: number }>('select no from tools where orchard_id = $1', [
      orchard,
    ])
    return Object.fromEntries(tools.map(({ no }) => [no, 'in the shed']))
  }
  const visitsTo = (orchard: string, tree: number) =>
    db.asOwner(
      'select result, came_in_late as late, seconds from visits where orchard_id = $1 and tree_no = $2 order by at',
      [orchard, tree]
    )

  test('finishing makes the tree done, ends the claim, and only leads hear the minutes', async () => {
    const { orchard, ann } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })

    await ann.must('finish_tree', { tree: 3, claim, elapsedS: 0 })

    expect(await workOn(orchard.id, 3)).toEqual([{ state: 'done', share: null }])
    expect(await lastEvent(orchard)).toMatchObject({
      kind: 'tree_finished',
      body: { tree: 3, work: [[3, 'done', null]], claimsEnded: [claim] },
      leadBody: { seconds: 0 },
      own: true,
    })
  })

  test('a device that claims more minutes than passed, or a time in the future, is clamped', async () => {
    const { ann } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })

    await ann.must('finish_tree', { tree: 3, claim, elapsedS: 999999, at: '2031-01-01T00:00:00Z' })

    const [visit] = await db.asOwner(
      'select seconds < 60 as short, at <= clock_timestamp() as past from visits where claim_id = $1',
      [claim]
    )
    expect(visit).toEqual({ short: true, past: true })
  })

  test('half done is kept with its share, and whoever goes on finds it', async () => {
    const { orchard, ann, bo } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })

    await ann.must('release_tree', { tree: 3, claim, share: 50, note: 'The top is left.' })

    expect(await workOn(orchard.id, 3)).toEqual([{ state: 'begun', share: 50 }])
    expect(JSON.stringify(await lastEvent(orchard))).not.toContain('The top is left.')
    await bo.must('claim_tree', { tree: 3 })
    expect(await bo.read('tree_notes', { tree: 3 })).toMatchObject([{ note: 'The top is left.' }])
  })

  test('brush carried away leaves the tree as pruned as it was', async () => {
    const { orchard, ann } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3, kind: 'brush' })

    await ann.must('finish_tree', { tree: 3, claim })

    expect(await workOn(orchard.id, 3)).toEqual([])
    expect((await lastEvent(orchard)).body).toEqual({ tree: 3, claimsEnded: [claim] })
  })

  test('a tree given back without having been begun is as it was', async () => {
    const { orchard, ann } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })

    await ann.must('release_tree', { tree: 3, claim })

    expect(await workOn(orchard.id, 3)).toEqual([])
    expect(await visitsTo(orchard.id, 3)).toEqual([])
  })

  test('a finish under a stop is accepted: the work is done', async () => {
    const { orchard, ann, bo } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })
    await bo.must('stop_work')

    await ann.must('finish_tree', { tree: 3, claim })

    expect(await workOn(orchard.id, 3)).toMatchObject([{ state: 'done' }])
  })

  test('a finish that comes after a lead ended the claim and another finished it is kept as also worked on', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })
    await lead.must('end_claim', { claim, howReached: 'by voice' })
    const { command: second } = await bo.must('claim_tree', { tree: 3 })
    await bo.must('finish_tree', { tree: 3, claim: second })

    const answer = await ann.must('finish_tree', { tree: 3, claim })

    expect(answer.body.kept).toBe('also_worked')
    expect((await visitsTo(orchard.id, 3)).map((visit) => visit.result).sort()).toEqual([
      'also_worked',
      'done',
    ])
  })

  test('a finish that comes after the shift closed is done, and on the late list', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })
    const why = {
      people: { [lead.id]: 'here', [ann.id]: 'phone is dead', [bo.id]: 'went home' },
      claims: { [claim]: 'phone is dead' },
      tools: await everyToolOf(orchard.id),
    }
    await lead.must('close_shift', { why })

    const answer = await ann.must('finish_tree', { tree: 3, claim })

    expect(answer.body.kept).toBe('late')
    expect(await workOn(orchard.id, 3)).toMatchObject([{ state: 'done' }])
    expect(await visitsTo(orchard.id, 3)).toMatchObject([
      { result: 'begun', late: false },
      { result: 'done', late: true },
    ])
  })

  test('a tree dealt before and begun without signal comes in as done', async () => {
    const { orchard, lead, ann } = await readyCrew(db)
    await lead.must('deal_trees', { trees: [7], to: [ann.id] })

    const answer = await ann.must('finish_tree', { tree: 7, begunAt: new Date().toISOString() })

    expect(answer.body.kept).toBeUndefined()
    expect(await workOn(orchard.id, 7)).toMatchObject([{ state: 'done' }])
    expect(await lastEvent(orchard)).toMatchObject({ body: { dealsEnded: [7] } })
  })

  test('a tree that was never dealt to me comes in as also worked on', async () => {
    const { orchard, ann } = await readyCrew(db)

    const answer = await ann.must('finish_tree', { tree: 7, begunAt: new Date().toISOString() })

    expect(answer.body.kept).toBe('also_worked')
    expect(await workOn(orchard.id, 7)).toEqual([])
  })

  test('after a tree flagged for disease the tools are not clean until someone says so', async () => {
    const { orchard, lead, ann } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })
    await ann.must('flag_tree', { tree: 3, kind: 'disease', sign: 'gum', severity: 'low' })
    await ann.must('finish_tree', { tree: 3, claim })
    const [tool] = await db.asOwner<{ no: number }>(
      'select tool_no as no from tool_holdings where person_id = $1 and returned_at is null',
      [ann.id]
    )

    const next = await ann.send('claim_tree', { tree: 4 })
    await ann.must('clean_tool', { tools: [tool?.no] })

    expect(await lastEvent(orchard)).toMatchObject({ kind: 'tools_cleaned' })
    expect(next.body.refused).toEqual([{ code: 'tool_not_clean', detail: { tool: tool?.no } }])
    expect(codesOf(await lead.send('claim_tree', { tree: 3 }))).toContain('tree_done')
    await ann.must('claim_tree', { tree: 4 })
  })

  test('undo gives the tree back to who finished it, once', async () => {
    const { orchard, ann } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })
    await ann.must('finish_tree', { tree: 3, claim })

    await ann.must('undo_tree', { tree: 3 })

    expect(await workOn(orchard.id, 3)).toEqual([])
    expect(await lastEvent(orchard)).toMatchObject({
      kind: 'tree_undone',
      body: { claim, people: { [ann.id]: 'holder' }, work: [[3, 'unpruned', null]] },
    })
    await ann.must('finish_tree', { tree: 3, claim })
  })

  test('undo is refused to others, after ten minutes, and while somebody holds the tree', async () => {
    const { ann, bo } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })
    await ann.must('release_tree', { tree: 3, claim, share: 25 })

    const others = await bo.send('undo_tree', { tree: 3 })
    const { command: second } = await bo.must('claim_tree', { tree: 3 })
    const held = await ann.send('undo_tree', { tree: 3 })
    await bo.must('release_tree', { tree: 3, claim: second })
    await db.asOwner(
      "update claims set ended_at = ended_at - interval '11 minutes' where id = $1",
      [claim]
    )

    expect(codesOf(others)).toEqual(['nothing_to_undo'])
    expect(codesOf(held)).toEqual(['tree_held'])
    expect(codesOf(await ann.send('undo_tree', { tree: 3 }))).toEqual(['too_late_to_undo'])
  })

  test('helpers come and go; the holder hands over and does not just leave', async () => {
    const { orchard, ann, bo } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })
    await bo.must('join_tree', { claim, part: 'helper' })

    const leaving = await ann.send('leave_tree', { claim })
    await ann.must('hand_over', { claim, to: bo.id })

    expect(codesOf(leaving)).toEqual(['holder_hands_over'])
    expect(await lastEvent(orchard)).toMatchObject({ body: { claim, to: bo.id, from: ann.id } })
    await bo.must('finish_tree', { tree: 3, claim })
  })

  test('only a lead ends the claim of somebody else, and says how they were reached', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })

    const volunteer = await bo.send('end_claim', { claim, howReached: 'by voice' })
    const silent = await lead.send('end_claim', { claim, howReached: '' })

    expect(volunteer.status).toBe(403)
    expect([silent.status, silent.body.details]).toEqual([400, 'malformed'])
    await lead.must('end_claim', { claim, howReached: 'by radio', share: 50 })
  })

  test('what a lead wrote about somebody when closing the shift is not read by volunteers', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })
    await lead.must('close_shift', {
      why: {
        people: { [lead.id]: 'here', [ann.id]: 'driven to a doctor', [bo.id]: 'went home' },
        claims: { [claim]: 'driven to a doctor' },
        tools: await everyToolOf(orchard.id),
      },
    })

    expect(await bo.read('tree_notes', { tree: 3 })).toEqual([])
  })

  test('a dealt tree begun without signal comes in as done though its person holds another by now', async () => {
    const { orchard, lead, ann } = await readyCrew(db)
    await lead.must('deal_trees', { trees: [7], to: [ann.id] })
    const begunAt = new Date().toISOString()
    const { command: claim } = await ann.must('claim_tree', { tree: 9 })

    const answer = await ann.must('finish_tree', { tree: 7, begunAt })

    expect(answer.body.kept).toBeUndefined()
    expect(await workOn(orchard.id, 7)).toMatchObject([{ state: 'done' }])
    await ann.must('finish_tree', { tree: 9, claim })
  })

  test('undo puts nobody to work in a block that is stopped, or inside a keep-out', async () => {
    const { lead, ann } = await readyCrew(db)
    const finish = async (tree: number) => {
      const { command: claim } = await ann.must('claim_tree', { tree })
      await ann.must('finish_tree', { tree, claim })
    }
    await finish(3)
    const { command: stop } = await lead.must('stop_work', { block: 1 })

    const stopped = await ann.send('undo_tree', { tree: 3 })
    await lead.must('resume_work', { stop })
    await ann.must('answer_stop', { stop, answer: 'resumed' })
    await lead.must('flag_tree', {
      tree: 4,
      kind: 'arborist',
      sign: 'crack',
      severity: 'high',
      keepOutM: 6,
    })

    expect(codesOf(stopped)).toEqual(['stopped'])
    expect(codesOf(await ann.send('undo_tree', { tree: 3 }))).toEqual(['inside_keep_out'])
  })

  test('undo brings back the same people in the same parts', async () => {
    const { orchard, ann, bo } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3, helpers: [bo.id] })
    await bo.must('finish_tree', { tree: 3, claim })

    await bo.must('undo_tree', { tree: 3 })

    expect((await lastEvent(orchard)).body).toMatchObject({
      people: { [ann.id]: 'holder', [bo.id]: 'helper' },
    })
  })

  test('undo leaves helpers where they are by now, and never takes the holder from another tree', async () => {
    const { orchard, ann, bo } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3, helpers: [bo.id] })
    await ann.must('finish_tree', { tree: 3, claim })
    const { command: second } = await bo.must('claim_tree', { tree: 4 })

    await ann.must('undo_tree', { tree: 3 })
    expect((await lastEvent(orchard)).body).toMatchObject({ people: { [ann.id]: 'holder' } })

    await bo.must('finish_tree', { tree: 4, claim: second })
    await bo.must('join_tree', { claim })
    await bo.must('finish_tree', { tree: 3, claim })
    await ann.must('claim_tree', { tree: 5 })
    expect(codesOf(await bo.send('undo_tree', { tree: 3 }))).toEqual(['helper_not_ready'])
  })

  test('undo leaves nobody alone with a saw, on a break, or at a tree dealt to another since', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    await db.asOwner('update trees set asks_saw = true where orchard_id = $1 and no = 3', [
      orchard.id,
    ])
    const saw = await lead.must('add_tool', { label: 'S1', kind: 'saw' })
    await ann.must('take_tool', { tool: saw.body.tool, failedItems: [] })
    await lead.must('grant_skill', { subject: ann.id, skill: 'hand_saw' })
    const { command: claim } = await ann.must('claim_tree', { tree: 3, helpers: [bo.id] })
    await ann.must('release_tree', { tree: 3, claim, share: 50 })
    await bo.must('start_break')

    const alone = await ann.send('undo_tree', { tree: 3 })
    await ann.must('start_break')
    const resting = await ann.send('undo_tree', { tree: 3 })
    await ann.must('end_break')
    await bo.must('end_break')
    await lead.must('deal_trees', { trees: [3], to: [bo.id] })

    expect(codesOf(alone)).toEqual(['two_people_needed'])
    expect(codesOf(resting)).toEqual(['on_break', 'two_people_needed'])
    expect(codesOf(await ann.send('undo_tree', { tree: 3 }))).toEqual(['too_late_to_undo'])
  })

  test('a device whose clock is late may undo as long as anybody else', async () => {
    const { ann } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })
    await db.asOwner("update claims set opened_at = opened_at - interval '2 hours' where id = $1", [
      claim,
    ])
    const at = new Date(Date.now() - 3600_000).toISOString()
    await ann.must('finish_tree', { tree: 3, claim, at })

    await ann.must('undo_tree', { tree: 3 })
  })

  test('nobody joins a tree in a block that is stopped, nor one whose claim a keep-out has ended', async () => {
    const { lead, ann, bo } = await readyCrew(db)
    const { command: claim } = await ann.must('claim_tree', { tree: 3 })
    const { command: stop } = await lead.must('stop_work', { block: 1 })

    const joining = await bo.send('join_tree', { claim })
    const taking = await ann.send('hand_over', { claim, to: bo.id })
    await lead.must('resume_work', { stop })
    await bo.must('answer_stop', { stop, answer: 'resumed' })
    await lead.must('flag_tree', {
      tree: 4,
      kind: 'arborist',
      sign: 'crack',
      severity: 'high',
      keepOutM: 6,
    })

    expect(codesOf(joining)).toEqual(['stopped'])
    expect(codesOf(taking)).toEqual(['stopped'])
    expect(codesOf(await bo.send('join_tree', { claim }))).toEqual(['claim_over'])
    expect(codesOf(await ann.send('hand_over', { claim, to: bo.id }))).toEqual(['claim_over'])
  })

  test('however work on a diseased tree ends, its tools are not clean', async () => {
    const { orchard, lead, ann, bo } = await readyCrew(db)
    const sick = { kind: 'disease', sign: 'gum', severity: 'low' }
    const toolOf = async (person: { id: string }) => {
      const [tool] = await db.asOwner<{ no: number; clean: boolean }>(
        `select t.no, t.clean from tools t join tool_holdings h on h.orchard_id = t.orchard_id and h.tool_no = t.no
         where h.person_id = $1 and h.returned_at is null`,
        [person.id]
      )
      return tool
    }
    const cleanAgain = () =>
      db.asOwner('update tools set clean = true where orchard_id = $1', [orchard.id])

    const { command: claim } = await ann.must('claim_tree', { tree: 3 })
    await ann.must('flag_tree', { tree: 3, ...sick })
    await ann.must('hand_over', { claim, to: bo.id })
    expect([await toolOf(ann), (await lastEvent(orchard)).body]).toMatchObject([
      { clean: false },
      { dirty: [(await toolOf(ann))?.no] },
    ])

    await cleanAgain()
    await ann.must('join_tree', { claim })
    await ann.must('leave_tree', { claim })
    expect(await toolOf(ann)).toMatchObject({ clean: false })

    await cleanAgain()
    const inHand = await toolOf(bo)
    await bo.must('return_tool', { tool: inHand?.no })
    expect((await lastEvent(orchard)).body).toMatchObject({ dirty: [inHand?.no] })
    await bo.must('take_tool', { tool: inHand?.no, failedItems: [] })

    await cleanAgain()
    const hazard = { tree: 3, kind: 'arborist', sign: 'crack', severity: 'high' }
    await bo.must('flag_tree', { ...hazard, keepOutM: 0 })
    expect(await toolOf(bo)).toMatchObject({ clean: false })

    await cleanAgain()
    await ann.must('claim_tree', { tree: 5 })
    await ann.must('flag_tree', { tree: 5, ...sick })
    const left = await toolOf(ann)
    await lead.must('remove_person', { subject: ann.id })
    expect((await lastEvent(orchard)).body).toMatchObject({ dirty: [left?.no] })
  })
})
