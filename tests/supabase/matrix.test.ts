/** Every door, tried by everybody, in every state of the shift, in one's own orchard and in another. */

import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import { attemptAll, prepareAttempts, type Signature, signaturesOf, tablesOf } from './attempt'
import { callersOf } from './callers'
import type { Use } from './door'
import { doors } from './doors'
import { advance, buildScene, type Scene, stages } from './scene'

const uses = Object.entries(doors).flatMap(([door, list]) =>
  list.map((use) => ({ door, use, name: use.as ? `${door} ${use.as}` : door }))
)

describe.each(engines)('doors on $name', ({ open }) => {
  let database: TestDatabase
  let scene: Scene
  let elsewhere: Scene
  let stranger: string
  let signatures: Map<string, Signature>
  beforeAll(async () => {
    database = await open()
    scene = await buildScene(database)
    elsewhere = await buildScene(database)
    stranger = await database.newUser()
    signatures = await signaturesOf(database)
    await prepareAttempts(database)
  }, 60_000)
  afterAll(() => database.close())

  test('every function has a row', () => {
    expect(Object.keys(doors).sort()).toEqual([...signatures.keys()].sort())
  })

  test('every door opens for somebody at some time, so that being turned away means something', () => {
    const closed = Object.entries(doors).filter(
      ([, list]) => !list.some(({ outcome }) => Object.values(outcome).includes('ok'))
    )
    expect(closed).toEqual([])
  })

  describe.each(stages.map((stage) => ({ stage })))('shift: $stage', ({ stage }) => {
    let before: Record<string, string>
    beforeAll(async () => {
      await advance(database, scene, stage)
      await advance(database, elsewhere, stage)
      before = await tablesOf(database)
    }, 60_000)

    test.each(uses)('$name', async ({ door, use }) => {
      const signature = signatureOf(door)
      const callers = callersOf({ use, stage, scene, elsewhere, stranger })

      const tried = await attemptAll(
        database,
        door,
        signature,
        callers.map(({ user, orchard, person }) => ({
          user,
          args: {
            p_orchard: orchard,
            p_command: randomUUID(),
            p_person: person,
            ...use.args(scene),
          },
        }))
      )

      const came = callers.map(({ who }, i) => `${who}: ${tried[i]?.outcome}`)
      expect(came).toEqual(callers.map(({ who, outcome }) => `${who}: ${outcome}`))
      const changed = tried.map(({ tables }) => differing(before, tables))
      expect(changed).toEqual(
        tried.map(({ outcome, tables }) => mayChange(door, outcome, differing(before, tables)))
      )
    })

    test.each(uses.filter(({ use }) => namesThings(use)))(
      "$name with another orchard's ids changes nothing",
      async ({ door, use }) => {
        const signature = signatureOf(door)
        const mine = use.right === 'manager' ? 'manager' : 'lead'

        const [tried] = await attemptAll(database, door, signature, [
          {
            user: scene.user[mine],
            args: {
              p_orchard: scene.orchard,
              p_command: randomUUID(),
              p_person: scene.person[use.whose ?? mine],
              ...use.args(elsewhere),
            },
          },
        ])

        expect(tried?.outcome).not.toBe('ok')
        expect(without('command_answers', differing(before, tried?.tables ?? {}))).toEqual([])
      }
    )
  })

  function signatureOf(door: string): Signature {
    const signature = signatures.get(door)
    if (!signature) throw new Error(`There is no function ${door}.`)
    return signature
  }

  /** Whether the arguments carry ids that belong to this orchard. */
  function namesThings({ right, args, anyIds }: Use): boolean {
    const isOfAnOrchard = right !== 'anybody' && right !== 'gone' && right !== 'own' && !anyIds
    return isOfAnOrchard && /[0-9a-f]{8}-[0-9a-f]{4}-/.test(JSON.stringify(args(sample)))
  }

  /** What a call may have changed: nothing when it was turned away, its answer when it was refused. */
  function mayChange(door: string, outcome: string, changed: string[]): string[] {
    if (/^\d/.test(outcome)) return []
    if (outcome.startsWith('refused')) return changed.filter((table) => table === 'command_answers')
    if (door === 'heartbeat') return ['logins']
    if (signatureOf(door).isRead) return []
    // Not of an orchard yet, and then an orchard as it was: no event tells of it.
    if (door === 'put_archive_part') return ['archive_parts']
    if (door === 'bring_in_orchard') return changed.filter((table) => table !== 'events')
    // One event, one number, one stored answer, and whatever it is about.
    return [...new Set([...changed, 'command_answers', 'events', 'orchard_heads'])].sort()
  }
})

const anyId = '00000000-0000-4000-8000-000000000000'
const everyId: unknown = new Proxy(
  {},
  { get: (_, key) => (key === Symbol.toPrimitive || key === 'toJSON' ? () => anyId : everyId) }
)
const sample = everyId as Scene

function differing(before: Record<string, string>, after: Record<string, string>): string[] {
  return Object.keys(before)
    .filter((table) => before[table] !== after[table])
    .sort()
}

function without(table: string, tables: string[]): string[] {
  return tables.filter((each) => each !== table)
}
