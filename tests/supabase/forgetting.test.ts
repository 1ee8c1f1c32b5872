/** Somebody is forgotten: the name and what was typed go, everywhere and for good; what they did stays. */

import { randomUUID } from 'node:crypto'
import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { backUp } from '../../supabase/local/keep/backup'
import { nextBackupFile } from '../../supabase/local/keep/backups'
import { backupCommand } from '../../supabase/local/keep/commands'
import { carryForgotten } from '../../supabase/local/keep/forgotten'
import { openData, restoreData } from '../../supabase/local/keep/open-data'
import { engines, type TestDatabase } from '../support/engines'
import {
  codesOf,
  crewOfThree,
  faultOf,
  lastEvent,
  type Person,
  readyCrew,
} from '../support/orchard'

const name = 'Perpetua Unlike'

describe.each(engines)('forgetting on $name', ({ open }) => {
  let db: TestDatabase
  beforeAll(async () => {
    db = await open()
  })
  afterAll(() => db.close())

  /** Every row of every table of ours that has the text in it. */
  async function whereItStands(text: string): Promise<string[]> {
    const tables = await db.asOwner<{ table: string }>(
      `select c.relname as "table" from pg_catalog.pg_class c where c.relnamespace = 'public'::regnamespace and c.relkind = 'r'`
    )
    const found: string[] = []
    for (const { table } of tables) {
      const [row] = await db.asOwner<{ rows: number }>(
        `select count(*)::integer as rows from public."${table}" t where strpos(to_jsonb(t)::text, $1) > 0`,
        [text]
      )
      if (row && row.rows > 0) found.push(table)
    }
    return found.sort()
  }

  async function leavesTraces(lead: Person): Promise<Person> {
    const per = await lead.adds(name, { phone: '555 0199' })
    await per.must('give_consent', { textVersion: 1 })
    await lead.for(per).must('enter_work', {
      tree: 3,
      at: new Date().toISOString(),
      share: 40,
      note: `${name}: the east side is left`,
    })
    const { command: call } = await per.must('call_for_help', {
      kind: 'injury',
      note: `${name} cut`,
    })
    await lead.must('end_call', { call, outcome: `${name} rests` })
    await lead.must('write_incident', { kind: 'injury', call, note: 'a cut thumb' })
    await lead.must('write_incident', { kind: 'near_miss', note: `${name} fell, says Ann` })
    await per.must('flag_tree', {
      tree: 9,
      kind: 'disease',
      sign: 'gum',
      severity: 'low',
      note: `${name} saw gum at the fork`,
    })
    return per
  }

  test('the name is nowhere any more but on the flag that stands, and then not there either', async () => {
    const { orchard, lead } = await readyCrew(db)
    const per = await leavesTraces(lead)
    const { command: flag } = await per.must('flag_tree', {
      tree: 10,
      kind: 'disease',
      sign: 'canker',
      severity: 'high',
      note: name,
    })
    await lead.must('withdraw_flag', { flag })
    expect(await whereItStands(name)).toEqual(
      expect.arrayContaining(['calls', 'flags', 'incidents', 'people', 'visits'])
    )

    await orchard.manager.must('forget_person', { subject: per.id })

    expect(await whereItStands(name)).toEqual(['flags'])
    expect(await whereItStands('555 0199')).toEqual([])
    expect(await db.asOwner("select note from incidents where note like '%fell%'")).toEqual([
      { note: '… fell, says Ann' },
    ])
    expect(await db.asOwner('select note from flags where id = $1', [flag])).toEqual([
      { note: null },
    ])
    const [{ open: standing } = { open: '' }] = await db.asOwner<{ open: string }>(
      'select id as open from flags where raised_by = $1 and ended_at is null',
      [per.id]
    )
    await lead.must('withdraw_flag', { flag: standing })
    await db.asOwner('select private.tidy()')
    expect(await whereItStands(name)).toEqual([])

    // Somebody's work stays somebody's work.
    expect(
      await db.asOwner('select person_id, result, share from visits where person_id = $1', [per.id])
    ).toEqual([{ person_id: per.id, result: 'begun', share: 40 }])
    expect(await lead.read('names', { people: [per.id] })).toEqual({})
    expect(await lead.read('snapshot', { person: lead.id })).not.toMatchObject({
      people: { [per.id]: expect.anything() },
    })
  })

  test('why they left a tree out is read until its round is closed', async () => {
    const { orchard, lead } = await crewOfThree(db)
    const { manager } = orchard
    const reason = `${name} says: grafted last week`
    await lead.must('leave_out_trees', { trees: [5], reason })

    await manager.must('forget_person', { subject: lead.id })
    expect(await manager.read('tree_notes', { tree: 5 })).toMatchObject([{ note: reason }])
    await manager.must('close_round', { round: orchard.round })
    await db.asOwner('select private.tidy()')

    expect(await whereItStands(reason)).toEqual([])
  })

  test('what their phone hands in afterwards counts, and its words go once it is accepted', async () => {
    const { orchard, lead } = await readyCrew(db)
    const per = await lead.adds(name)
    await lead.for(per).must('enter_attendance', { arrivedAt: new Date().toISOString() })
    await per.must('leave')
    await orchard.manager.must('forget_person', { subject: per.id })

    const { command: handIn } = await per.must('hand_in', {
      work: [{ name: 'release_tree', args: { tree: 6, share: 50, note: `${name} was here` } }],
    })
    expect(await whereItStands(`${name} was here`)).toEqual(['hand_ins'])
    await lead.must('accept_hand_in', { handIn })
    await db.asOwner('select private.tidy()')

    expect(await whereItStands(`${name} was here`)).toEqual([])
    expect(await db.asOwner('select result from visits where person_id = $1', [per.id])).toEqual([
      { result: 'begun' },
    ])
  })

  test('phones hear whom to drop, and the forgotten one’s phone is out', async () => {
    const { orchard, ann } = await crewOfThree(db)

    await orchard.manager.must('forget_person', { subject: ann.id })

    expect(await lastEvent(orchard)).toMatchObject({
      kind: 'person_forgotten',
      body: { person: ann.id, channel: 2 },
      leadBody: null,
    })
    expect(faultOf(await ann.send('arrive'))).toBe('403 not_allowed')
  })

  test('who is needed by name is refused with everything that is in the way', async () => {
    const { orchard, lead, ann } = await readyCrew(db)
    const child = await lead.adds('Kit', { ageBand: 'minor', guardian: ann.id })
    await ann.must('claim_tree', { tree: 2 })
    await ann.must('call_for_help', { kind: 'question' })
    const forget = (subject: { id: string }) =>
      orchard.manager.send('forget_person', { subject: subject.id })

    const answer = await forget(ann)

    expect(codesOf(answer)).toEqual([
      'still_here',
      'still_at_tree',
      'still_has_tools',
      'call_open',
      'answers_for',
    ])
    expect(answer.body.refused?.at(-1)?.detail).toEqual({ person: ann.id, people: [child.id] })
    expect(await orchard.manager.read('before_forgetting', { subject: ann.id })).toMatchObject({
      inTheWay: answer.body.refused,
      shifts: 1,
    })
    expect(codesOf(await forget(orchard.manager))).toEqual(['not_yourself', 'last_manager'])
    expect(await db.asOwner('select name from people where id = $1', [ann.id])).toEqual([
      { name: 'Ann' },
    ])
  })

  test('only a manager forgets, also of who left; once is for good', async () => {
    const { orchard, lead, bo } = await crewOfThree(db)
    const elsewhere = await crewOfThree(db)
    await lead.must('remove_person', { subject: bo.id })

    expect(faultOf(await lead.send('forget_person', { subject: bo.id }))).toBe('403 not_allowed')
    expect(faultOf(await orchard.manager.send('forget_person', { subject: elsewhere.bo.id }))).toBe(
      '404 no_such_person'
    )
    expect(await orchard.manager.read('people_who_left')).toMatchObject([
      { person: bo.id, name: 'Bo', role: 'volunteer' },
    ])
    await orchard.manager.must('forget_person', { subject: bo.id })

    expect(await orchard.manager.read('people_who_left')).toEqual([])
    expect(
      codesOf(await orchard.manager.send('forget_person', { subject: bo.id }, randomUUID()))
    ).toEqual(['forgotten_before'])
    expect(await db.asOwner('select name from people where id = $1', [elsewhere.bo.id])).toEqual([
      { name: 'Bo' },
    ])
  })
})

describe('forgetting and an older backup', () => {
  const folder = mkdtempSync(join(tmpdir(), 'rowcall-test-'))
  afterAll(() => rmSync(folder, { recursive: true, force: true }))

  test('whoever was forgotten since is forgotten again, also on another machine to which the backup was carried', async () => {
    const where = { dataFolder: join(folder, 'here'), databaseUrl: null }
    const [orchard, kept, gone] = [randomUUID(), randomUUID(), randomUUID()]
    const people = `select id::text, name, forgotten_at is not null as forgotten from people order by name nulls last`
    const file = join(folder, 'before.jsonl.gz')
    const first = await openData(where)
    await first.engine.script(`
      insert into orchards (id, name, time_zone, created_at) values ('${orchard}', 'Quillerbeck', 'UTC', now());
      insert into orchard_heads (orchard_id) values ('${orchard}');
      insert into people (id, orchard_id, name, role, added_at)
      values ('${kept}', '${orchard}', 'Kept', 'manager', now()), ('${gone}', '${orchard}', '${name}', 'volunteer', now())`)
    await backUp(first.engine, file)
    await first.engine.query(`select private.forget(p, now()) from people p where id = '${gone}'`)
    await first.close()

    await restoreData({ ...where, file })

    const restored = await openData(where)
    const after = [
      { id: kept, name: 'Kept', forgotten: false },
      { id: gone, name: null, forgotten: true },
    ]
    expect(await restored.engine.query(people)).toEqual(after)
    await restored.close()

    const old = nextBackupFile(where.dataFolder, 'nightly', new Date(Date.now() - 86_400_000))
    writeFileSync(old, '')
    await backupCommand(where)
    expect(existsSync(old)).toBe(true)
    await backupCommand(where, '--forget')
    expect(existsSync(old)).toBe(false)

    const there = join(folder, 'there')
    mkdirSync(join(folder, 'carried'))
    cpSync(file, join(folder, 'carried', 'before.jsonl.gz'))
    carryForgotten(join(folder, 'carried', 'before.jsonl.gz'), where.dataFolder)
    await restoreData({
      dataFolder: there,
      databaseUrl: null,
      file: join(folder, 'carried', 'before.jsonl.gz'),
    })
    const another = await openData({ dataFolder: there, databaseUrl: null })
    expect(await another.engine.query(people)).toEqual(after)
    await another.close()
  }, 120_000)
})
