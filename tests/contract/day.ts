/** A day of a crew, as the referee has it and as each phone has it. */

import { randomUUID } from 'node:crypto'
import { expect } from 'vitest'
import type { Refusal } from '@/lib/events/answer'
import { type Command, type CommandName, commandOf } from '@/lib/events/commands'
import type { Ground } from '@/lib/events/ground'
import { dealRules, missingForClaim } from '@/lib/events/missing'
import { missingForRow } from '@/lib/events/missing-row'
import { foldPredicted, predict } from '@/lib/events/predict'
import type { State } from '@/lib/events/state'
import type { TestDatabase } from '../support/engines'
import {
  makeReady,
  newCode,
  type Person,
  type Reply,
  readyCrew,
  sendAs,
  sha256,
} from '../support/orchard'
import type { Hour } from '../support/sun-place'
import { Draw } from './draw'
import { allSorts, groundIn, placeAt } from './ground'
import { drawMove } from './moves'
import { catchUp, type Phone, snapshotOf } from './phone'

type Compared = {
  before: State
  after: State
  command: Command
  reply: Reply
  /** Of somebody whom this phone serves besides its own person. */
  isShared: boolean
}

export class Day {
  readonly accepted: CommandName[] = []
  /** How often there was something to compare. */
  readonly counted = { predicted: 0, refusedOnPhone: 0, folded: 0, fetchedAgain: 0 }
  private readonly story: string[] = []
  private readonly cameUp = new Map<unknown, number>()
  private constructor(
    private phones: readonly Phone[],
    private readonly ground: Ground
  ) {}

  /** Ann's phone also serves Kit, a child; Dee, who is ready, has none. */
  static async begin(database: TestDatabase, hour: Hour | null): Promise<Day> {
    const { orchard, lead, ann, bo, shift } = await readyCrew(database)
    const kit = await lead.must('add_person', { name: 'Kit', ageBand: 'minor', guardian: ann.id })
    const code = newCode()
    const subject = String(kit.body.person)
    await lead.must('make_invite', { kind: 'device', subject, codeHash: sha256(code) })
    await sendAs(database, ann.userId, 'redeem', { code })
    const dee = await lead.must('add_person', { name: 'Dee' })
    await makeReady(lead, lead.for({ id: String(dee.body.person) }))
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
    const place = placeAt(hour)
    const day = new Day(phones, groundIn(place))
    day.story.push(`It is ${hour ?? 'nobody knows when'} there.`)
    const ids = [...Object.values(people).map(({ id }) => id), subject, dee.body.person]
    for (const id of [...ids, orchard.round, shift]) day.notice(id)
    await orchard.manager.must('bring_in_trees', allSorts(place))
    await day.everybodyCatchesUp()
    return day
  }

  /** Somebody sends something, for themselves or for another, and every phone hears of it. */
  async step(numbers: readonly number[]): Promise<void> {
    const draw = new Draw(numbers, this.cameUp)
    const phone = draw.of(this.phones)
    const whole = this.phones[0]?.state
    if (!phone || !whole) return
    if (draw.chance(25)) return this.lend(phone, draw)
    const isLead = ['lead', 'manager'].includes(phone.state.me.role)
    const acted = isLead ? Object.keys(whole.people) : phone.serves
    const personId = (draw.chance(isLead ? 2 : 4) && draw.of(acted)) || phone.person.id
    const move = drawMove({ state: whole, personId, draw, isLead })
    if (!move) return

    const { id: me, orchardId } = phone.person
    const whose = { id: randomUUID(), orchardId, personId }
    // The name and its arguments were drawn together.
    const command = commandOf(move.name, move.args as never, whose) as Command
    this.notice(command.id)
    const before = phone.state
    const isShared = personId !== me && phone.serves.includes(personId)
    const reply = await phone.person
      .for({ id: personId })
      .send(command.name, command.args as Record<string, unknown>, command.id)
    this.tell(`${phone.name}${personId === me ? '' : ' for another'}`, command, reply)

    await this.inTheStory(async () => {
      expectKnownAnswer(reply)
      await this.everybodyCatchesUp()
      if (reply.status === 200)
        this.compare({ before, after: phone.state, command, reply, isShared })
    })
    if (reply.body.n !== undefined) this.accepted.push(command.name)
  }

  /** Whom a phone serves changes: by a link to somebody, old or new, or by the end of a login. */
  private async lend(phone: Phone, draw: Draw): Promise<void> {
    const [manager] = this.phones
    const ending = draw.of(phone.serves)
    if (!manager) return
    if (ending && draw.chance(3)) {
      const reply = await phone.person.for({ id: ending }).send('end_login', { login: null })
      phone.serves = phone.serves.filter((id) => id !== ending)
      this.story.push(`${phone.name} ends a login → ${JSON.stringify(reply.body)}`)
    } else {
      const code = newCode()
      const { command: invite } = await manager.person.send('make_invite', {
        kind: draw.of(['join', 'device']),
        role: 'volunteer',
        subject: draw.of(Object.keys(manager.state.people)),
        codeHash: sha256(code),
      })
      const who = { code, name: 'Nia', ageBand: draw.of(['adult', 'minor']) }
      const { body } = await sendAs(manager.person.database, phone.person.userId, 'redeem', who)
      const served = String(body.person)
      this.notice(served)
      if (body.n !== undefined && served !== phone.person.id) phone.serves.push(served)
      this.story.push(`${phone.name} redeems → ${JSON.stringify(body)}`)
      if (draw.chance(2)) await manager.person.send('end_invite', { invite })
    }
    await this.inTheStory(() => this.everybodyCatchesUp())
  }

  private async inTheStory(check: () => Promise<void>): Promise<void> {
    try {
      await check()
    } catch (error) {
      throw new Error(`${this.story.join('\n')}\n${String(error)}`, { cause: error })
    }
  }

  private notice(id: unknown): void {
    if (!this.cameUp.has(id)) this.cameUp.set(id, this.cameUp.size)
  }

  private async everybodyCatchesUp(): Promise<void> {
    const heard = await Promise.all(this.phones.map(catchUp))
    const out = this.phones.filter((_, i) => heard[i] === 'put out')
    this.phones = this.phones.filter((_, i) => heard[i] !== 'put out')
    this.counted.folded += heard.filter((how) => how === 'folded').length
    this.counted.fetchedAgain += heard.filter((how) => how === 'fetched again').length
    for (const { person } of out) {
      expect(this.phones[0]?.state.people).not.toHaveProperty(person.id)
      await this.handsIn(person)
    }
  }

  /** What somebody who was put out had not sent yet: a lead takes it. */
  private async handsIn(person: Person): Promise<void> {
    const work = [{ name: 'finish_tree', args: { tree: 3, claim: null } }]
    const { command: handIn, body } = await person.send('hand_in', { work })
    const reply = await this.phones[0]?.person.send('accept_hand_in', { handIn })
    this.story.push(`Put out: ${JSON.stringify(body)}, accepted: ${JSON.stringify(reply?.body)}`)
    await this.everybodyCatchesUp()
  }

  private compare({ before, after, command, reply: { body }, isShared }: Compared): void {
    const now = new Date().toISOString()
    const { ground } = this
    const prediction = predict(before, command, { now, ground })
    const isRefused = body.refused !== undefined

    if (prediction !== 'asking' && 'refused' in prediction) {
      this.counted.refusedOnPhone += 1
      expect(isRefused, `refused on the phone: ${JSON.stringify(prediction.refused)}`).toBe(true)
    } else if (prediction !== 'asking' && !isRefused) {
      this.counted.predicted += 1
      const predicted = foldPredicted(before, command, now, ground)
      // A lead's phone that is also somebody else's does not know in whose name the referee takes it.
      const unknown = isShared ? ['seenBy'] : []
      expect(timeless(predicted, unknown), 'predicted').toEqual(timeless(after, unknown))
    }
    if (command.name === 'claim_tree') {
      const { tree, buddy, ...wish } = command.args
      const missing = missingForClaim(before, ground, tree, command.personId, {
        ...wish,
        buddy,
        now,
      })
      this.compareMissing(missing, body)
    }
    if (command.name === 'take_brush') {
      const { block, row } = command.args
      const trees = [...ground.trees.values()].filter(
        (one) => one.block === block && one.row === row
      )
      this.compareMissing(
        missingForRow(before, ground, { block, row, trees }, command.personId),
        body
      )
    }
    if (command.name === 'deal_trees') {
      const { refusalsOf } = dealRules(before, ground)
      const known = command.args.trees.flatMap((tree) =>
        refusalsOf(tree).map(({ code }) => `${code} ${code === 'no_round' ? '' : tree}`)
      )
      expect(saidOf(body), 'cannot be dealt, said on the phone').toEqual(
        expect.arrayContaining(known)
      )
    }
  }

  private compareMissing(missing: readonly Refusal[], body: Reply['body']): void {
    const referee = body.refused?.map(({ code }) => code) ?? []
    expect(referee, 'missing on the phone').toEqual(
      expect.arrayContaining(missing.map(({ code }) => code))
    )
  }

  private tell(who: string, { name, args }: Command, { status, body }: Reply): void {
    const said = JSON.stringify(args)
    const heard = status === 200 ? JSON.stringify(body) : `${status} ${body.details}`
    this.story.push(`${who}: ${name} ${said.slice(0, 200)} → ${heard.slice(0, 200)}`)
  }
}

/** Of a refused deal: each reason with each of its trees. */
function saidOf({ refused = [] }: Reply['body']): string[] {
  return refused.flatMap(({ code, detail }) =>
    [detail?.trees ?? ['']].flat().map((tree) => `${code} ${tree}`)
  )
}

/** No fault of the database, and no argument that it does not know. */
function expectKnownAnswer({ status, body }: Reply): void {
  const ours = status === 200 || /^[a-z_]+$/.test(body.details ?? '')
  expect(ours ? '' : `${status} ${JSON.stringify(body)}`).toBe('')
}

/** The referee's clock and number are its own. */
function timeless(state: State, unknown: readonly string[]): unknown {
  const times = [
    ...unknown,
    ...['since', 'restedAt', 'openedAt', 'raisedAt', 'calledAt', 'answeredAt'],
    ...['measuredAt', 'thunderAt', 'wetAt', 'toldAt', 'madeAt'],
  ]
  return JSON.parse(
    JSON.stringify({ ...state, head: 0 }, (key, value) =>
      value !== null && times.includes(key) ? 'then' : value
    )
  )
}
