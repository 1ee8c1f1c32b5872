import { describe, expect, test } from 'vitest'

import { type Ahead, forecast } from '@/lib/domain/planning/forecast'
import { learnMinutes } from '@/lib/domain/planning/minutes-per-tree'
import type { Kind } from '@/lib/domain/planning/tree-times'
import { chanceFrom } from '@/lib/util/chance'

import { liveThrough, someTruth } from './a-day'

const apple: Kind = { species: 'apple', size: 'medium' }

describe('eight times out of ten', () => {
  const chance = chanceFrom(20_261_130)
  const days = Array.from({ length: 240 }, () => {
    const plan = {
      people: 6 + Math.floor(chance() * 8),
      trees: 160,
      minutes: 420,
      seenAfter: 150 + 120 * chance(),
    }
    const { ahead, more, minutesUntilAllDone } = liveThrough(someTruth(chance), plan, chance)
    const told = forecast(ahead, chance)
    return { told, more, minutesUntilAllDone }
  })
  const share = (holds: (day: (typeof days)[number]) => boolean) =>
    days.filter(holds).length / days.length

  test('so many more trees are done by the end as was said', () => {
    const held = share(({ told, more }) => told.trees.from <= more && more <= told.trees.to)

    expect(held).toBeGreaterThanOrEqual(0.75)
    expect(held).toBeLessThanOrEqual(0.85)
  })

  test('all are done when it was said', () => {
    const held = share(
      ({ told: { allDone }, minutesUntilAllDone: took }) =>
        allDone !== null && allDone.from <= took && took <= allDone.to
    )

    expect(held).toBeGreaterThanOrEqual(0.75)
    expect(held).toBeLessThanOrEqual(0.85)
  })

  test('and misses are on both sides', () => {
    expect(share(({ told, more }) => more < told.trees.from)).toBeLessThan(0.17)
    expect(share(({ told, more }) => more > told.trees.to)).toBeLessThan(0.17)
  })
})

const nothingSeen = learnMinutes([], { unfinished: [], kinds: [apple], day: 'today' })

function ahead(over: Partial<Ahead>): Ahead {
  return {
    learned: nothingSeen,
    day: 'today',
    inHand: [],
    waiting: Array.from({ length: 50 }, () => ({ ...apple, minutesSoFar: 0 })),
    people: 6,
    minutesLeft: 240,
    minutesADay: 360,
    shareAtTrees: { share: 0.7, spread: 0.05 },
    ...over,
  }
}

describe('forecast', () => {
  test('says the same for the same seed', () => {
    expect(forecast(ahead({}), chanceFrom(1))).toEqual(forecast(ahead({}), chanceFrom(1)))
  })

  test('without people no tree is done, and nobody knows when all are', () => {
    expect(forecast(ahead({ people: 0 }), chanceFrom(1))).toMatchObject({
      trees: { from: 0, to: 0 },
      allDone: null,
      moreDays: null,
    })
  })

  test('never says more trees than there are', () => {
    const few = ahead({ minutesLeft: 10_000, waiting: ahead({}).waiting.slice(0, 3) })

    expect(forecast(few, chanceFrom(1))).toMatchObject({
      trees: { from: 3, to: 3 },
      moreDays: { from: 0, to: 0 },
    })
  })

  test('whoever has been at a tree for long has less of it left than of a new one', () => {
    const one = { ...ahead({}), waiting: [] }
    const fresh = forecast({ ...one, inHand: [{ ...apple, minutesSoFar: 0 }] }, chanceFrom(1))
    const begun = forecast({ ...one, inHand: [{ ...apple, minutesSoFar: 45 }] }, chanceFrom(1))

    expect(begun.hours.to).toBeLessThan(fresh.hours.to)
  })

  test('a thousand trees are added up, and come to what a few hundred say', () => {
    const trees = (count: number) =>
      Array.from({ length: count }, () => ({ ...apple, minutesSoFar: 0 }))
    const some = forecast(ahead({ waiting: trees(400) }), chanceFrom(1)).hours
    const many = forecast(ahead({ waiting: trees(4000) }), chanceFrom(1)).hours

    expect(many.from / some.from).toBeCloseTo(10, -0.3)
    expect(many.to / some.to).toBeCloseTo(10, -0.3)
  })
})
