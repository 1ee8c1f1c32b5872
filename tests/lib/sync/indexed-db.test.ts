import 'fake-indexeddb/auto'

import { beforeEach, describe, expect, test } from 'vitest'

import { commandOf } from '@/lib/events/commands'
import { leaseLocks, uuidOf } from '@/lib/sync/browser'
import { indexedDbStorage } from '@/lib/sync/indexed-db'
import { ownerKey } from '@/lib/sync/owner'
import type { Kept, Storage } from '@/lib/sync/ports'

import { ann, idOf, later } from '../events/a-state'
import { fakeClock } from './fakes/clock'
import { plainRandom } from './fakes/device'

let storage: Storage
let databases = 0

beforeEach(() => {
  storage = indexedDbStorage(`test ${++databases}`)
})

function fresh(owner: string, tree = 1): Omit<Kept, 'seq'> {
  const whose = { id: idOf(`${owner} ${tree}`), orchardId: idOf('orchard'), personId: ann }
  // One of the commands.
  const command = commandOf('undo_tree', { tree }, whose) as Kept['command']
  return { owner, command, at: later, state: 'unsent', answer: null, fault: null, answeredAt: null }
}

describe('commands', () => {
  test('come back in the order in which they were made, each owner’s own', async () => {
    for (const tree of [5, 3, 4]) await storage.add(fresh('ann', tree))
    await storage.add(fresh('bo'))

    const kept = await storage.all('ann')

    expect(kept.map(({ command }) => command.args)).toEqual([{ tree: 5 }, { tree: 3 }, { tree: 4 }])
  })

  test('outlive the page', async () => {
    await storage.add(fresh('ann'))

    expect(await indexedDbStorage(`test ${databases}`).all('ann')).toHaveLength(1)
  })

  test('that were put away do not come back with a late change', async () => {
    const kept = await storage.add(fresh('ann'))
    await storage.remove([kept.seq])
    await storage.change({ ...kept, state: 'sent' })

    expect(await storage.all('ann')).toEqual([])
  })

  test('keep their place when they change', async () => {
    const first = await storage.add(fresh('ann', 1))
    await storage.add(fresh('ann', 2))
    await storage.change({ ...first, state: 'sent' })

    expect((await storage.all('ann')).map(({ state }) => state)).toEqual(['sent', 'unsent'])
  })
})

test('a draft with a picture comes back as it was', async () => {
  const draft = { note: 'Crack above the fork', photo: new Uint8Array([255, 216, 255]) }
  await storage.write('draft|ann|flag 12', draft)

  expect(await storage.read('draft|ann|flag 12')).toEqual(draft)
  await storage.drop('draft|ann|flag 12')
  expect(await storage.read('draft|ann|flag 12')).toBeUndefined()
})

test('nobody’s things are under another’s key', () => {
  const own = { backend: 'https://a', orchardId: 'o', userId: 'u', personId: 'p' }
  const keys = [
    own,
    { ...own, backend: 'https://b' },
    { ...own, orchardId: 'o2' },
    { ...own, userId: 'u2' },
    { ...own, personId: 'p2' },
  ].map(ownerKey)

  expect(new Set(keys).size).toBe(keys.length)
})

describe('the lease, where the browser has no locks', () => {
  test('is held by one, and by the next when it runs out', async () => {
    expect(await storage.lease('send', 'first', 0, 6_000)).toBe(true)
    expect(await storage.lease('send', 'second', 5_999, 6_000)).toBe(false)
    expect(await storage.lease('send', 'first', 5_999, 6_000)).toBe(true)
    expect(await storage.lease('send', 'second', 11_999, 6_000)).toBe(true)
    expect(await storage.lease('send', 'first', 12_000, 6_000)).toBe(false)
  })

  test('makes one page lead, and the other when the first goes or falls asleep', async () => {
    const clock = fakeClock()
    const page = (name: string) => {
      const locks = leaseLocks({ storage, clock, random: plainRandom(name) })
      const end = new AbortController()
      const log: string[] = []
      locks.lead(
        'outbox',
        (over) => {
          log.push('leads')
          over.addEventListener('abort', () => log.push('over'))
        },
        end.signal
      )
      return { log, close: () => end.abort() }
    }
    const first = page('first')
    await clock.pass(100)
    const second = page('second')
    await clock.pass(10_000)
    expect([first.log, second.log]).toEqual([['leads'], []])

    first.close()
    await clock.pass(3_000)

    expect([first.log, second.log]).toEqual([['leads', 'over'], ['leads']])
  })
})

test('an id made from random bytes is a uuid of version 4', () => {
  expect(uuidOf(new Uint8Array(16))).toBe('00000000-0000-4000-8000-000000000000')
  expect(uuidOf(new Uint8Array(16).fill(255))).toBe('ffffffff-ffff-4fff-bfff-ffffffffffff')
})
