/**
 * TypeScript and SQL say the same: random days of a crew, and after every step, for everybody,
 * (a) folding the events gives what a new snapshot says, (b) what was predicted and accepted is what
 * happened, (c) what is refused on the phone is refused by the referee.
 */

import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'

import { commandArgs } from '@/lib/events/command-args'
import { engines, type TestDatabase } from '../support/engines'
import { Day } from './day'
import { hours } from './ground'
import { moves } from './moves'

// New days at each run at a desk; in CI the same ones, so that it judges the change and not the luck of the day.
const seed = Number(process.env.ROWCALL_SEED ?? (process.env.CI ? 275397432 : Date.now() % 2 ** 31))
const steps = 70
const days = 16

// Every number as likely as any other, or everybody would always do the first thing.
const hour = fc.constantFrom(...hours)
const step = fc.array(fc.noBias(fc.nat(999_983)), { minLength: 12, maxLength: 12 })

/** Sent by the days themselves, or before there is an orchard. */
const elsewhere = [
  ...['create_orchard', 'bring_in_orchard', 'redeem'],
  ...['end_login', 'end_invite', 'hand_in', 'accept_hand_in'],
]

test('every command of the catalogue is drawn, or sent by each day itself', () => {
  const all = Object.keys(commandArgs)

  expect([...Object.keys(moves), ...elsewhere].toSorted()).toEqual(all.toSorted())
})

describe.each(engines)('contract on $name', ({ open }) => {
  let database: TestDatabase
  beforeAll(async () => {
    database = await open()
  }, 60_000)
  afterAll(() => database.close())

  test(`fold, prediction and referee agree (ROWCALL_SEED=${seed})`, async () => {
    const accepted = new Set<string>()
    const counted = { predicted: 0, refusedOnPhone: 0, folded: 0, fetchedAgain: 0 }

    await fc.assert(
      fc.asyncProperty(
        hour,
        fc.array(step, { minLength: steps, maxLength: steps }),
        async (when, numbers) => {
          const day = await Day.begin(database, when)
          for (const each of numbers) await day.step(each)
          for (const name of day.accepted) accepted.add(name)
          for (const each of keysOf(counted)) counted[each] += day.counted[each]
        }
      ),
      { seed, numRuns: days, endOnFailure: true }
    )

    // Agreement about nothing would be easy.
    console.info(`ROWCALL_SEED=${seed}: ${accepted.size} commands, ${JSON.stringify(counted)}`)
    expect(accepted.size).toBeGreaterThan(20)
    expect(counted.predicted).toBeGreaterThan(100)
    expect(counted.refusedOnPhone).toBeGreaterThan(10)
    expect(counted.folded).toBeGreaterThan(10 * counted.fetchedAgain)
  }, 240_000)
})

function keysOf<Key extends string>(record: Record<Key, unknown>): Key[] {
  // The literals above have these keys and no others.
  return Object.keys(record) as Key[]
}
