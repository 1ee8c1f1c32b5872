/** A day of a crew, as the referee has it and as each phone has it. */

import { randomUUID } from 'node:crypto'
import { expect } from 'vitest'

import { type Command, type CommandName, commandOf } from '@/lib/events/commands'
import type { Event } from '@/lib/events/event'
import { missingForClaim } from '@/lib/events/missing'
import { foldPredicted, predict } from '@/lib/events/predict'
import { reduce } from '@/lib/events/reduce'
import { stateOf } from '@/lib/events/snapshot'
import type { State } from '@/lib/events/state'
import type { TestDatabase } from '../support/engines'
import { newCode, type Person, type Reply, readyCrew, sendAs, sha256 } from '../support/orchard'
import { allSorts, ground } from './ground'
import { Draw, drawMove } from './moves'

type Phone = { name: string; person: Person; serves: string[]; state: State; epoch: string }

export class Day {
  readonly accepted: CommandName[] = []
  /** How often there was something to compare. */
  readonly counted = { predicted: 0, refusedOnPhone: 0, folded: 0, fetchedAgain: 0 }
  private readonly story: string[] = []
  private constructor(private phones: readonly Phone[]) {}

  /** Ann's phone also serves Kit, a child; Dee has no phone. */
  static async begin(database: TestDatabase): Promise<Day> {
    const { orchard, lead, ann, bo } = await readyCrew(database)
    await orchard.manager.must('bring_in_trees', allSorts)
    const kit = await lead.must('add_person', { name: 'Kit', ageBand: 'minor', guardian: ann.id })
    const code = newCode()
    const subject = String(kit.body.person)
    await lead.must('make_invite', { kind: 'device', subject, codeHash: sha256(code) })
    await sendAs(database, ann.userId, 'redeem', { code })
    await lead.must('add_person', { name: 'Dee' })
    for (const kind of ['pruner', 'pruner', 'saw', 'ladder']) {
      await lead.must('add_tool', { label: kind, kind })
    }

    const people = { manager: orchard.manager, lead, ann, bo }
    const phones = await Promise.all(
      Object.entries(people).map(async ([name, person]) => {
        const state = await snapshotOf(person)
        return { name, person, serves: name === 'ann' ? [subject] : [], state, epoch: state.epoch }
      })
    )
    return new Day(phones)
  }

  /** Somebody sends something, for themselves or for another, and every phone hears of it. */
  async step(numbers: readonly number[]): Promise<void> {
    const draw = new Draw(numbers)
    const phone = draw.of(this.phones)
    const whole = this.phones[0]?.state
    if (!phone || !whole) return
    const isLead = ['lead', 'manager'].includes(phone.state.me.role)
    const acted = isLead ? Object.keys(whole.people) : phone.serves
    const personId = (draw.chance(isLead ? 2 : 4) && draw.of(acted)) || phone.person.id
    const move = drawMove({ state: whole, personId, draw, isLead })
    if (!move) return

    const { id: me, orchardId } = phone.person
    const whose = { id: randomUUID(), orchardId, personId }
    // The name and its arguments were drawn together.
    const command = commandOf(move.name, move.args as never, whose) as Command
    const before = phone.state
    const reply = await phone.person
      .for({ id: personId })
      .send(command.name, command.args as Record<string, unknown>, command.id)
    this.tell(`${phone.name}${personId === me ? '' : ' for another'}`, command, reply)

    try {
      expectKnownAnswer(reply)
      await this.everybodyCatchesUp()
      if (reply.status === 200) this.compare(before, phone.state, command, reply)
    } catch (error) {
      throw new Error(`${this.story.join('\n')}\n${String(error)}`, { cause: error })
    }
    if (reply.body.n !== undefined) this.accepted.push(command.name)
  }

  private async everybodyCatchesUp(): Promise<void> {
    const heard = await Promise.all(this.phones.map(catchUp))
    const out = this.phones.filter((_, i) => heard[i] === 'put out')
    this.phones = this.phones.filter((_, i) => heard[i] !== 'put out')
    this.counted.folded += heard.filter((how) => how === 'folded').length
    this.counted.fetchedAgain += heard.filter((how) => how === 'fetched again').length
    for (const { person } of out) expect(this.phones[0]?.state.people).not.toHaveProperty(person.id)
  }

  private compare(before: State, after: State, command: Command, { body }: Reply): void {
    const now = new Date().toISOString()
    const prediction = predict(before, command, { now })
    const isRefused = body.refused !== undefined

    if (prediction !== 'asking' && 'refused' in prediction) {
      this.counted.refusedOnPhone += 1
      expect(isRefused, `refused on the phone: ${JSON.stringify(prediction.refused)}`).toBe(true)
    } else if (prediction !== 'asking' && !isRefused) {
      this.counted.predicted += 1
      const predicted = foldPredicted(before, command, now)
      expect(timeless(predicted), 'predicted').toEqual(timeless(after))
    }
    if (command.name === 'claim_tree') {
      const { tree, buddy, ...wish } = command.args
      const missing = missingForClaim(before, ground, tree, command.personId, { ...wish, buddy })
      const referee = body.refused?.map(({ code }) => code) ?? []
      expect(referee, 'missing on the phone').toEqual(
        expect.arrayContaining(missing.map(({ code }) => code))
      )
    }
  }

  private tell(who: string, { name, args }: Command, { status, body }: Reply): void {
    const said = JSON.stringify(args)
    const heard = status === 200 ? JSON.stringify(body) : `${status} ${body.details}`
    this.story.push(`${who}: ${name} ${said.slice(0, 200)} → ${heard.slice(0, 200)}`)
  }
}

type Heard = 'nothing' | 'folded' | 'fetched again' | 'put out'

/** (a), for one phone: what it heard, folded, is what it would be told anew. */
async function catchUp(phone: Phone): Promise<Heard> {
  const told = (await phone.person.read('events_after', {
    person: phone.person.id,
    epoch: phone.epoch,
    n: phone.state.head,
  })) as { events: Event[] } | { details: string }
  if ('details' in told) {
    expect(told.details).toBe('not_allowed')
    return 'put out'
  }

  let state: State | 'fetch again' = phone.state
  for (const event of told.events) {
    state = reduce(state, event)
    if (state === 'fetch again') break
  }
  const anew = await snapshotOf(phone.person)
  phone.state = anew
  if (state === 'fetch again') return 'fetched again'
  expect(state, `folded by ${phone.name}`).toEqual(anew)
  return told.events.length > 0 ? 'folded' : 'nothing'
}

async function snapshotOf(person: Person): Promise<State> {
  const told = await person.read('snapshot', { person: person.id })
  const state = stateOf(told)
  if (!state) throw new Error(`Not a snapshot: ${JSON.stringify(told)}`)
  return state
}

/** No fault of the database, and no argument that it does not know. */
function expectKnownAnswer({ status, body }: Reply): void {
  const ours = status === 200 || /^[a-z_]+$/.test(body.details ?? '')
  expect(ours ? '' : `${status} ${JSON.stringify(body)}`).toBe('')
}

/** The referee's clock and number are its own. */
function timeless(state: State): unknown {
  const times = ['since', 'openedAt', 'raisedAt', 'calledAt']
  return JSON.parse(
    JSON.stringify({ ...state, head: 0 }, (key, value) => (times.includes(key) ? 'then' : value))
  )
}
