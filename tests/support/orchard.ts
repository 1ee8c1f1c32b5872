/**
 * An orchard with people in it, for tests that tell a story:
 *
 *   const { orchard, lead, ann, bo } = await readyCrew(db)
 *   await lead.must('deal_trees', { trees: [12], to: [ann.id] })
 *   expect(codesOf(await bo.send('claim_tree', { tree: 12 }))).toEqual(['dealt_to_another'])
 */

import { createHash, randomUUID } from 'node:crypto'

import type { Row } from '../../supabase/local/engine/engine'
import type { TestDatabase } from './engines'

export type Refusal = { code: string; detail?: Record<string, unknown> }
export type Reply = {
  status: number
  /** The id this command was sent under. */
  command: string
  body: { n?: number; refused?: Refusal[]; code?: string; details?: string } & Record<
    string,
    unknown
  >
}

export type Orchard = { id: string; database: TestDatabase; manager: Person; round: string }

/** Somebody with a phone of their own, or whoever's phone acts for them. */
export class Person {
  constructor(
    readonly database: TestDatabase,
    readonly orchardId: string,
    readonly id: string,
    readonly userId: string
  ) {}

  /** Arguments are named as in the table of commands, in camel case, without the p_. */
  async send(name: string, args: Row = {}, command: string = randomUUID()): Promise<Reply> {
    const whose = { p_orchard: this.orchardId, p_person: this.id, p_command: command }
    const reply = await this.database.as(this.userId, name, { ...whose, ...parametersOf(args) })
    return { status: reply.status, body: reply.body as Reply['body'], command }
  }

  /** The same for a step of the story that is not what the test is about. */
  async must(name: string, args: Row = {}): Promise<Reply> {
    const reply = await this.send(name, args)
    if (reply.status === 200 && reply.body.n !== undefined) return reply
    throw new Error(`${name} was not accepted: ${reply.status} ${JSON.stringify(reply.body)}`)
  }

  async read(name: string, args: Row = {}): Promise<unknown> {
    const whose = { p_orchard: this.orchardId, ...parametersOf(args) }
    return (await this.database.as(this.userId, name, whose)).body
  }

  /** This person's phone, acting for somebody else. */
  for(other: { id: string }): Person {
    return new Person(this.database, this.orchardId, other.id, this.userId)
  }

  /** Somebody added by this lead, who signs in by a device link. */
  async adds(name: string, args: Row = {}): Promise<Person> {
    const added = await this.must('add_person', { name, ...args })
    const userId = await this.database.newUser()
    const person = new Person(this.database, this.orchardId, String(added.body.person), userId)
    const code = newCode()
    await this.must('make_invite', {
      kind: 'device',
      subject: person.id,
      codeHash: sha256(code),
    })
    await sendAs(this.database, userId, 'redeem', { code })
    return person
  }
}

/** For who is nobody here yet: create_orchard and redeem. */
export async function sendAs(
  database: TestDatabase,
  userId: string,
  name: string,
  args: Row,
  command: string = randomUUID()
): Promise<Reply> {
  const reply = await database.as(userId, name, { p_command: command, ...parametersOf(args) })
  return { status: reply.status, body: reply.body as Reply['body'], command }
}

export async function newOrchard(database: TestDatabase): Promise<Orchard> {
  const userId = await database.newUser()
  const code = newCode()
  await database.asOwner('select private.make_setup_code($1)', [sha256(code)])
  const { body } = await sendAs(database, userId, 'create_orchard', {
    code,
    name: 'Three Wells',
    personName: 'Mo',
    timeZone: 'Etc/UTC',
    language: 'en',
    units: 'metric',
  })
  const manager = new Person(database, String(body.orchard), String(body.person), userId)
  const { command: round } = await manager.must('open_round', {
    kind: 'winter',
    season: 2026,
    species: ['apple', 'cherry'],
    from: '2026-11-01',
    to: '2027-03-31',
  })
  await manager.must('bring_in_trees', twoRowsOfApples)
  return { id: manager.orchardId, database, manager, round }
}

/** Trees 1 to 40, low enough to be pruned from the ground: two rows of twenty in one block. */
const twoRowsOfApples = {
  blocks: [{ code: 'A', name: 'Long Piece', rowSpacingM: 6, treeSpacingM: 5 }],
  cultivars: [{ species: 'apple', name: 'Old Keeper' }],
  trees: Array.from({ length: 40 }, (_, index) => ({
    block: 'A',
    row: 1 + Math.floor(index / 20),
    place: 1 + (index % 20),
    species: 'apple',
    cultivar: 'Old Keeper',
    heightCm: 220,
  })),
}

export type Crew = { orchard: Orchard; lead: Person; ann: Person; bo: Person }

export async function crewOfThree(database: TestDatabase): Promise<Crew> {
  const orchard = await newOrchard(database)
  const lead = await orchard.manager.adds('Lee', { role: 'lead' })
  const ann = await lead.adds('Ann')
  const bo = await lead.adds('Bo')
  return { orchard, lead, ann, bo }
}

/** Briefing written and shift open; nobody has arrived yet. The id of the shift. */
export async function openShift({ orchard, lead }: Pick<Crew, 'orchard' | 'lead'>) {
  const { command: shift } = await lead.must('schedule_shift', {
    round: orchard.round,
    date: '2026-11-24',
    startsAt: '2026-11-24T08:00:00.000Z',
    endsAt: '2026-11-24T15:00:00.000Z',
  })
  await lead.must('write_briefing', { shift, topics: [{ code: 'ladders' }] })
  await lead.must('open_shift', { shift })
  return shift
}

/** Everything that a claim asks of this person: after it, nothing is missing. */
export async function makeReady(lead: Person, person: Person): Promise<void> {
  const label = `P${Math.floor(Math.random() * 1e6)}`
  const { body } = await lead.must('add_tool', { label, kind: 'pruner' })
  await person.must('give_consent', { textVersion: 1 })
  await person.must('arrive')
  await lead.must('give_briefing', { people: [person.id] })
  await person.must('sign_briefing', { version: 1, language: 'en', how: 'heard' })
  await person.must('check_equipment', { failedItems: [] })
  await person.must('take_tool', { tool: body.tool, failedItems: [] })
  const skill = { subject: person.id, skill: 'prunes_alone' }
  if (person.id !== lead.id) await lead.must('grant_skill', skill)
}

/** The crew in an open shift; Ann and Bo are ready for a tree, the lead has arrived. */
export async function readyCrew(database: TestDatabase): Promise<Crew & { shift: string }> {
  const crew = await crewOfThree(database)
  const shift = await openShift(crew)
  await crew.lead.must('arrive')
  await makeReady(crew.lead, crew.ann)
  await makeReady(crew.lead, crew.bo)
  return { ...crew, shift }
}

export function codesOf({ body }: Pick<Reply, 'body'>): string[] {
  return (body.refused ?? []).map(({ code }) => code)
}

/** "403 not_allowed" for what is not answered at all. */
export function faultOf({ status, body }: Pick<Reply, 'status' | 'body'>): string {
  return status === 200 ? 'answered' : `${status} ${body.details}`
}

/** The newest event, as the table has it. */
export async function lastEvent({ id, database }: Orchard): Promise<Row> {
  const sql = `
    select n, person_id as person, by_person_id as by, kind, body, lead_body as "leadBody", own
    from public.events where orchard_id = $1 order by n desc limit 1`
  const [event] = await database.asOwner(sql, [id])
  if (!event) throw new Error('Nothing has happened yet.')
  return event
}

export function newCode(): string {
  return randomUUID()
}

export function sha256(text: string): string {
  return createHash('sha256').update(text).digest('hex')
}

function parametersOf(args: Row): Row {
  return Object.fromEntries(
    Object.entries(args).map(([name, value]) => [
      `p_${name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`)}`,
      value,
    ])
  )
}
