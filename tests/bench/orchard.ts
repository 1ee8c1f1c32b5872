/** An orchard of any size with any number of people who are ready for a tree, made by the commands that people send. */

import { createHash, randomUUID } from 'node:crypto'

import { Phone, type Values } from './phone'

export type BenchOrchard = { manager: Phone; shift: string; round: string }

const placesARow = 50

export async function foundOrchard(
  stranger: Phone,
  setUpCode: string,
  trees: number
): Promise<BenchOrchard> {
  const { body } = await stranger.call('create_orchard', {
    p_code: setUpCode,
    p_command: randomUUID(),
    p_name: 'Bench',
    p_person_name: 'Mo',
    p_time_zone: 'Etc/UTC',
    p_language: 'en',
    p_units: 'metric',
  })
  const manager = stranger.as(String(body.orchard), String(body.person))
  // Ten thousand trees are more than one call may carry.
  for (let from = 0; from < trees; from += 2500)
    await manager.must('bring_in_trees', inventoryOf(from, Math.min(trees, from + 2500)))
  const { id: round } = await manager.must('open_round', {
    p_kind: 'winter',
    p_season: 2026,
    p_species: ['apple', 'pear'],
    p_from: '2026-11-01',
    p_to: '2027-03-31',
  })
  const now = Date.now()
  const { id: shift } = await manager.must('schedule_shift', {
    p_round: round,
    p_date: new Date(now).toISOString().slice(0, 10),
    p_starts_at: new Date(now - 3600_000).toISOString(),
    p_ends_at: new Date(now + 4 * 3600_000).toISOString(),
    p_signal: 'horn',
  })
  await manager.must('write_briefing', {
    p_shift: shift,
    p_topics: [{ code: 'tools' }],
    p_change: 'first',
  })
  await manager.must('open_shift', { p_shift: shift, p_off: {} })
  return { manager, shift, round }
}

/** A code with which many may join this shift. */
export async function joinCode({ manager, shift }: BenchOrchard): Promise<string> {
  const code = randomUUID() + randomUUID()
  await manager.must('make_invite', {
    p_kind: 'join',
    p_role: 'volunteer',
    p_shift: shift,
    p_code_hash: sha256(code),
    p_hours: 12,
  })
  return code
}

/** People with a login each, for whom nothing is missing before a claim. */
export async function readyPeople(orchard: BenchOrchard, count: number): Promise<Phone[]> {
  const { manager } = orchard
  const code = await joinCode(orchard)
  const people: Phone[] = []
  for (let made = 0; made < count; made++) {
    const stranger = await Phone.signUp(manager.address, manager.anonKey)
    const person = await stranger.redeem(code, `Person ${made}`)
    const { body } = await manager.must('add_tool', { p_label: `P${made}`, p_kind: 'pruner' })
    await person.must('give_consent', { p_text_version: 1 })
    await person.must('arrive')
    await person.must('sign_briefing', { p_version: 1, p_language: 'en', p_how: 'heard' })
    await person.must('check_equipment', { p_failed_items: [] })
    await person.must('take_tool', { p_tool: body.tool, p_failed_items: [] })
    await manager.must('grant_skill', { p_subject: person.person, p_skill: 'prunes_alone' })
    people.push(person)
  }
  await manager.must('give_briefing', { p_people: people.map(({ person }) => person) })
  return people
}

function inventoryOf(from: number, to: number): Values {
  const trees = Array.from({ length: to - from }, (_, index) => {
    const at = from + index
    return {
      block: 'A',
      row: 1 + Math.floor(at / placesARow),
      place: 1 + (at % placesARow),
      species: at % 3 === 0 ? 'pear' : 'apple',
      cultivar: at % 3 === 0 ? 'Long Pear' : 'Old Keeper',
      planted: 1990 + (at % 30),
      heightCm: 200 + (at % 50),
      trunkMm: 100 + 10 * (at % 15),
      latE7: 380_000_000 + Math.round((at % placesARow) * 450 + Math.sin(at) * 20),
      lonE7: lonE7AtNoon() + Math.round(Math.floor(at / placesARow) * 680 + Math.cos(at) * 20),
    }
  })
  const isFirst = from === 0
  return {
    p_blocks: isFirst ? [{ code: 'A', name: 'Long Piece', rowSpacingM: 6, treeSpacingM: 5 }] : [],
    p_cultivars: isFirst
      ? [
          { species: 'apple', name: 'Old Keeper', habit: 'spur' },
          { species: 'pear', name: 'Long Pear', habit: 'spur' },
        ]
      : [],
    p_trees: trees,
  }
}

/** Where the sun stands high whenever the bench runs: without light nobody takes a tree. */
function lonE7AtNoon(): number {
  return (11.5 - new Date().getUTCHours()) * 150_000_000
}

function sha256(text: string): string {
  return createHash('sha256').update(text).digest('hex')
}
