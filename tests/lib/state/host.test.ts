/** Two phones on the real host, over real sockets: what the fakes of the other tests promise. */

import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import WebSocket from 'ws'

import { openBackend } from '@/lib/data/backend'
import type { ArgsOf, CommandName } from '@/lib/events/commands'
import { newCode } from '@/lib/state/code'
import * as inside from '@/lib/state/inside'
import { myTree } from '@/lib/state/me'
import { nameOf } from '@/lib/state/people'
import { myReadiness } from '@/lib/state/readiness'
import { openRowcall, type Rowcall } from '@/lib/state/rowcall'
import type { View } from '@/lib/state/view'
import { browserClock, browserRandom } from '@/lib/sync/browser'

import { openHost, type RunningHost } from '../../supabase/local/open-host'
import { engines, type TestDatabase } from '../../support/engines'
import { memoryBells, memoryLocks, memoryStorage } from '../sync/fakes/device'

const [pglite] = engines
if (!pglite) throw new Error('no engine')

describe('a crew of two on the real host', () => {
  let database: TestDatabase
  let running: RunningHost
  let manager: Rowcall
  let cy: Rowcall

  beforeAll(async () => {
    database = await pglite.open()
    running = await openHost(database.engine)
    manager = openPhone(running)
    cy = openPhone(running)
  }, 60_000)

  afterAll(async () => {
    manager.close()
    cy.close()
    await running.host.close()
    await database.close()
  })

  test('a set-up code makes the first manager', async () => {
    const { code, codeHash } = newCode()
    await database.engine.query(`select private.make_setup_code($1)`, [codeHash])

    const sent = await manager.createOrchard({
      code,
      name: 'Three Wells',
      personName: 'Mar',
      timeZone: 'Europe/Madrid',
      language: 'en',
      units: 'metric',
    })

    expect(sent.state).toBe('accepted')
    const view = await until(manager, ({ phase, names }) => phase === 'in' && isSome(names))
    expect(view).toMatchObject({ state: { me: { role: 'manager' } }, me: { personName: 'Mar' } })
    expect(nameOf(view, view.me?.personId ?? '')).toBe('Mar')
  })

  test('the day is set up, and the sheet of trees is on the phone', async () => {
    await ask(manager, 'bring_in_trees', {
      blocks: [{ code: 'S', name: 'South', rowSpacingM: 5, treeSpacingM: 4 }],
      cultivars: [{ species: 'apple', name: 'Reineta', habit: 'spur' }],
      trees: [1, 2, 3].map((place) => ({
        block: 'S',
        row: 1,
        place,
        species: 'apple',
        heightCm: 220,
      })),
    })
    const year = new Date().getUTCFullYear()
    const round = await ask(manager, 'open_round', {
      kind: 'winter',
      season: year,
      species: ['apple'],
      from: `${year}-01-01`,
      to: `${year}-12-31`,
    })
    const shift = await ask(manager, 'schedule_shift', {
      round: round.id,
      date: new Date().toISOString().slice(0, 10),
      startsAt: new Date().toISOString(),
      endsAt: new Date(Date.now() + 6 * 3600_000).toISOString(),
      signal: 'horn',
    })
    await ask(manager, 'write_briefing', {
      shift: shift.id,
      topics: [{ code: 'ladders' }],
      change: 'first',
    })
    await ask(manager, 'open_shift', { shift: shift.id })
    await ask(manager, 'add_tool', { label: 'P1', kind: 'pruner' })

    const view = await until(
      manager,
      ({ ground, state }) => ground.trees.size === 3 && isSome(state?.tools)
    )
    expect(view.ground.trees.get(3)).toMatchObject({ block: 1, row: 1, place: 3, species: 'apple' })
    expect(view.state?.shifts[shift.id]?.state).toBe('open')
  })

  test('a link brings somebody in, who is told everything that is missing', async () => {
    const { code, codeHash } = newCode()
    await ask(manager, 'make_invite', { kind: 'join', codeHash })

    const seen = await cy.lookAtInvite(code)
    expect(seen).toMatchObject({ ok: true, value: { orchardName: 'Three Wells', kind: 'join' } })
    expect((await cy.redeem({ code, name: 'Cy', ageBand: 'adult' })).state).toBe('accepted')

    const view = await until(cy, ({ phase, ground }) => phase === 'in' && ground.trees.size === 3)
    expect(myReadiness(view).map(({ code }) => code)).toEqual([
      'not_arrived',
      'consent_missing',
      'briefing_not_given',
      'briefing_not_signed',
      'equipment_not_checked',
      'no_tool_in_hand',
    ])
    const refused = await send(cy, 'claim_tree', { tree: 1 })
    expect(refused).toMatchObject({ state: 'refused' })
    if (refused.state !== 'refused') return
    expect(refused.refused.map(({ code }) => code)).toEqual(
      expect.arrayContaining(myReadiness(view).map(({ code }) => code))
    )
    await until(manager, (there) => nameOf(there, idOf(view)) === 'Cy')
  })

  test('ready, claimed and finished, each seen on the other phone', async () => {
    const me = idOf(cy.view())
    for (const kept of [
      await send(cy, 'arrive', {}),
      await send(cy, 'give_consent', { textVersion: 1 }),
      await send(cy, 'check_equipment', {}),
      await send(cy, 'take_tool', { tool: 1 }),
      await send(cy, 'sign_briefing', { version: 1, language: 'en', how: 'heard' }),
    ]) {
      expect(kept.state).toBe('kept')
    }
    await until(manager, ({ state }) => state?.attendance[me] !== undefined)
    await send(manager, 'give_briefing', { people: [me] })
    await until(manager, ({ unsent }) => unsent.length === 0)
    // Without the skill to prune alone, a marked tree.
    await send(manager, 'mark_big_cuts', { tree: 2 })
    await until(cy, (view) => myReadiness(view).length === 0 && view.state?.marked[2] !== undefined)

    const claimed = await ask(cy, 'claim_tree', { tree: 2 })
    const held = await until(cy, (view) => myTree(view).state === 'held')
    expect(myTree(held)).toMatchObject({ claimId: claimed.id, tree: 2, isHolder: true })
    await until(manager, ({ state }) => state?.claims[claimed.id]?.people[me] === 'holder')

    const work = (await cy.session())?.workArgs(2)
    if (!work) throw new Error('nobody')
    await send(cy, 'finish_tree', work)
    expect(cy.view().state?.work[2]?.state).toBe('done')
    await until(manager, ({ state }) => state?.work[2]?.state === 'done')
    await until(cy, ({ unsent, confirmed }) => unsent.length === 0 && isSome(confirmed?.work))
  })

  test('after a restart of the host the phones find back by themselves', async () => {
    const { port } = running
    await running.host.close()
    const sent = await send(cy, 'start_break', {})
    expect(sent.state).toBe('kept')
    running = await openHost(database.engine, { port })

    const me = idOf(cy.view())
    await until(manager, ({ state }) => state?.attendance[me]?.state === 'break')
  }, 60_000)

  test('somebody who is put out is out, and the channel goes on for the others', async () => {
    const me = idOf(cy.view())
    await until(cy, ({ unsent }) => unsent.length === 0)
    await send(cy, 'return_tool', { tool: 1 })
    await until(cy, ({ unsent }) => unsent.length === 0)
    await ask(manager, 'remove_person', { subject: me })
    await until(manager, ({ state }) => state?.people[me] === undefined)

    cy.retry()
    await until(cy, ({ phase }) => phase === 'out')
    await ask(manager, 'add_tool', { label: 'P2', kind: 'pruner' })
    await until(manager, ({ state }) => state?.tools[2] !== undefined)
  }, 60_000)
})

function openPhone({ url, tokens }: RunningHost): Rowcall {
  const kept = new Map<string, string>()
  const backend = openBackend(
    { url, anonKey: tokens.anonKey },
    {
      realtime: { transport: WebSocket as never, heartbeatIntervalMs: 1_000 },
      auth: {
        autoRefreshToken: false,
        persistSession: true,
        storage: {
          getItem: (key) => kept.get(key) ?? null,
          setItem: (key, value) => void kept.set(key, value),
          removeItem: (key) => void kept.delete(key),
        },
      },
    }
  )
  return openRowcall({
    backend,
    inside: async () => inside,
    storage: memoryStorage(),
    clock: browserClock,
    random: browserRandom,
    locks: memoryLocks(),
    bellOf: memoryBells(),
  })
}

async function send<Name extends CommandName>(phone: Rowcall, name: Name, args: ArgsOf<Name>) {
  const session = await phone.session()
  if (!session) throw new Error('nobody is chosen')
  return session.send(name, args)
}

/** Only the referee decides, and it says yes. */
async function ask<Name extends CommandName>(phone: Rowcall, name: Name, args: ArgsOf<Name>) {
  const sent = await send(phone, name, args)
  expect(sent).toMatchObject({ state: 'accepted' })
  return sent
}

function until(phone: Rowcall, isSo: (view: View) => boolean, limitMs = 20_000): Promise<View> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => {
      stop()
      reject(new Error(`It never came to be. Last seen: ${JSON.stringify(phone.view().state)}`))
    }, limitMs)
    const stop = phone.subscribe(look)
    look()

    function look() {
      if (!isSo(phone.view())) return
      clearTimeout(timer)
      queueMicrotask(() => stop())
      resolve(phone.view())
    }
  })
}

function idOf(view: View): string {
  return view.me?.personId ?? ''
}

function isSome(record: object | undefined): boolean {
  return Object.keys(record ?? {}).length > 0
}
