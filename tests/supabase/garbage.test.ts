/** Whatever a client sends in any argument of any door, it gets an answer or a coded error, never a fault. */

import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { engines, type TestDatabase } from '../support/engines'
import { doors } from './doors'
import { advance, buildScene, type Name, type Scene } from './scene'

const garbage: Record<string, unknown[]> = {
  text: [null, '', ' ', 'x'.repeat(100_000), 'a\u0001b', "'; drop table people", '🍒', '\u202e'],
  integer: [null, -1, 0, 2147483647, -2147483648],
  bigint: [null, -1, '9223372036854775807'],
  numeric: [null, -1, '1e1000', 'NaN', 'Infinity'],
  boolean: [null],
  uuid: [null, '00000000-0000-0000-0000-000000000000'],
  date: [null, 'infinity', '-infinity', '0001-01-01', '5874897-12-31'],
  'timestamp with time zone': [null, 'infinity', '-infinity', '294276-12-31T23:59:59Z'],
  jsonb: [null, {}, [], 5, 'x', [null], { a: { b: null } }, [[[]]], ['x'.repeat(300_000)]],
  'text[]': [null, [], [null], ['x'.repeat(10_000)], Array.from({ length: 3000 }, () => 'a')],
  'integer[]': [null, [], [null], [-1], Array.from({ length: 5000 }, (_, n) => n)],
  'uuid[]': [null, [], [null], [randomUUID()], Array.from({ length: 2000 }, () => randomUUID())],
}

/** After these the next value would find nobody there, or nothing in hand. */
const endsSomething = new Set([
  'end_login',
  'remove_person',
  'forget_person',
  'change_person',
  'close_round',
  'close_shift',
  'cancel_shift',
  'arrive',
  'start_break',
  'end_break',
  'leave',
  'take_tool',
  'return_tool',
  'claim_tree',
  'join_tree',
  'leave_tree',
  'hand_in',
  'hand_over',
  'release_tree',
  'finish_tree',
  'end_claim',
])

/** Ids that every command begins with are given, so that what comes after them is reached. */
const leading = ['p_orchard', 'p_command', 'p_person']

describe.each(engines)('garbage on $name', ({ open }) => {
  let database: TestDatabase
  let parameters: Map<string, [name: string, type: string][]>
  let reads: ReadonlySet<string>
  /** For doors that only read: they leave it as it is. */
  let sceneToRead: Scene

  beforeAll(async () => {
    database = await open()
    parameters = await parametersOf(database)
    reads = await readsOf(database)
    sceneToRead = await openScene(database)
  }, 60_000)
  afterAll(() => database.close())

  test.each(Object.keys(doors))('%s', async (door) => {
    const own = parameters.get(door) ?? []
    const faults: string[] = []
    const asked: number[] = []
    let scene = reads.has(door) ? sceneToRead : await openScene(database)

    for (const use of doors[door] ?? []) {
      const whose: Name =
        use.right === 'manager' ? 'manager' : use.right === 'lead' ? 'lead' : (use.whose ?? 'ann')
      for (const [name, type] of own) {
        const values = garbage[type]
        if (!values) throw new Error(`No garbage for ${type}.`)
        for (const value of values) {
          const args = { ...leadingOf(scene, own, whose), ...use.args(scene), [name]: value }
          const { status, body } = await database.as(scene.user[whose], door, args)
          asked.push(status)
          if (endsSomething.has(door) && isAccepted(body)) scene = await openScene(database)
          const coded = status < 500 && (status === 200 || isCoded(body))
          if (!coded) faults.push(`${name} = ${short(value)}: ${status} ${short(body)}`)
        }
      }
    }

    expect(faults).toEqual([])
    expect(asked.length > 0 || own.length === 0).toBe(true)
  })

  function leadingOf(scene: Scene, own: [string, string][], whose: Name): Record<string, unknown> {
    const values = {
      p_orchard: scene.orchard,
      p_command: randomUUID(),
      p_person: scene.person[whose],
    }
    return Object.fromEntries(
      Object.entries(values).filter(
        ([name]) => leading.includes(name) && own.some(([has]) => has === name)
      )
    )
  }
})

async function openScene(database: TestDatabase): Promise<Scene> {
  const scene = await buildScene(database)
  for (const stage of ['scheduled', 'open'] as const) await advance(database, scene, stage)
  return scene
}

function isAccepted(body: unknown): boolean {
  return typeof body === 'object' && body !== null && 'n' in body
}

/** Ours carry a word. The host answers for what cannot be read as its type, and for an id that another orchard has. */
function isCoded(body: unknown): boolean {
  const { details, code } = (body ?? {}) as { details?: unknown; code?: unknown }
  return /^[a-z_]+$/.test(String(details)) || /^22|^23505/.test(String(code))
}

function short(value: unknown): string {
  return (JSON.stringify(value) ?? '').slice(0, 160)
}

/** PostgreSQL itself lets them write nothing. */
async function readsOf(database: TestDatabase): Promise<ReadonlySet<string>> {
  const rows = await database.asOwner<{ door: string }>(
    `select proname as door from pg_proc where pronamespace = 'public'::regnamespace and provolatile <> 'v'`
  )
  return new Set(rows.map(({ door }) => door))
}

async function parametersOf(database: TestDatabase) {
  const rows = await database.asOwner<{ door: string; name: string; type: string }>(`
    select p.proname as door, a.name, format_type(a.type, null) as type
    from pg_proc p, unnest(p.proargnames, string_to_array(p.proargtypes::text, ' ')::oid[]) with ordinality as a (name, type, n)
    where p.pronamespace = 'public'::regnamespace and a.type is not null
    order by p.proname, a.n`)
  const byDoor = new Map<string, [string, string][]>()
  for (const { door, name, type } of rows) {
    byDoor.set(door, [...(byDoor.get(door) ?? []), [name, type]])
  }
  return byDoor
}
