import statistics from 'jstat'
import { describe, expect, test } from 'vitest'

import { choleskyOf, solveBoth } from '@/lib/domain/planning/cholesky'
import { chiSquare, normal, sumOfTrees } from '@/lib/domain/planning/draws'
import {
  learnMinutes,
  type MinutesOfKind,
  meanMinutesOf,
  minutesOf,
} from '@/lib/domain/planning/minutes-per-tree'
import { shareAtTrees, shareOfBreaks } from '@/lib/domain/planning/share-at-trees'
import type { Kind, TreeTime } from '@/lib/domain/planning/tree-times'
import { brushShare, usualMinutes } from '@/lib/domain/planning/usual-minutes'
import { chanceFrom } from '@/lib/util/chance'

import { liveThrough, someKinds, someTruth } from './a-day'

const apple: Kind = { species: 'apple', size: 'medium' }
const plum: Kind = { species: 'plum', size: 'medium' }

function learned(times: readonly TreeTime[], unfinished: readonly TreeTime[] = []) {
  return learnMinutes(times, { unfinished, kinds: [apple, plum], day: 'today' })
}

function took(kind: Kind, ...minutes: number[]): TreeTime[] {
  return minutes.map((one) => ({ ...kind, shift: 'today', minutes: one }))
}

function known(answer: MinutesOfKind) {
  if (answer.state !== 'known') throw new Error(`Only ${answer.trees} trees`)
  return answer
}

describe('usual minutes', () => {
  // New Hampshire Agricultural Experiment Station, Bulletin 257, Woodworth and Potter 1931: 567 hours for 1,000
  // mature trees; one man about 800 trees in about 450 hours; brush about a third of pruning.
  test('are those of the bulletin', () => {
    expect(usualMinutes.medium).toBeCloseTo(34.02, 2)
    expect((450 * 60) / usualMinutes.medium).toBeCloseTo(793.7, 1)
    expect(Math.abs((450 * 60) / usualMinutes.medium / 800 - 1)).toBeLessThan(0.01)
    expect(usualMinutes.medium * brushShare).toBeCloseTo(11.34, 2)
  })
})

describe('minutesOf', () => {
  test('says "not enough yet" until five trees are done', () => {
    expect(minutesOf(learned(took(apple, 50, 55, 60, 65)), apple, 'today')).toEqual({
      state: 'not_enough',
      trees: 4,
      needed: 5,
    })
  })

  test('is what was measured once much was measured', () => {
    const many = Array.from({ length: 200 }, (_, at) => 40 + (at % 21))

    const { minutes, from, to, trees } = known(
      minutesOf(learned(took(apple, ...many)), apple, 'today')
    )

    expect(minutes).toBeGreaterThan(48)
    expect(minutes).toBeLessThan(51)
    expect([from < minutes, to > minutes, trees]).toEqual([true, true, 200])
  })

  test('of few trees lies between what is usual and what they took', () => {
    const quick = learned([...took(apple, ...Array(30).fill(60)), ...took(plum, 20, 20, 20)])

    const { minutes } = known(minutesOf(quick, plum, 'today'))

    expect(minutes).toBeGreaterThan(22)
    expect(minutes).toBeLessThan(50)
  })

  test('of a kind without trees follows the pace of the others, less surely', () => {
    const slow = learned(took(apple, ...Array(40).fill(90)))
    const [apples, plums] = [apple, plum].map((kind) => known(minutesOf(slow, kind, 'today')))

    expect(plums?.minutes).toBeGreaterThan(70)
    expect(plums?.trees).toBe(0)
    const width = (one?: { from: number; to: number }) =>
      Math.log((one?.to ?? 1) / (one?.from ?? 1))
    expect(width(plums)).toBeGreaterThan(2 * width(apples))
  })

  test('a phone forgotten overnight hardly moves it', () => {
    const day = Array.from({ length: 20 }, (_, at) => 45 + at)
    const plain = known(minutesOf(learned(took(apple, ...day)), apple, 'today'))
    const forgotten = known(minutesOf(learned(took(apple, ...day, 15 * 60)), apple, 'today'))

    expect(forgotten.minutes / plain.minutes).toBeLessThan(1.06)
    // The average of the same would be three quarters higher.
    expect(forgotten.minutes / plain.minutes).toBeGreaterThanOrEqual(1)
  })

  test('trees that take longer than so far count as that', () => {
    const done = took(apple, 20, 22, 24, 26, 28, 30)
    const alone = known(minutesOf(learned(done), apple, 'today'))
    const withLong = known(minutesOf(learned(done, took(apple, 55, 60, 58, 62)), apple, 'today'))
    const withNew = known(minutesOf(learned(done, took(apple, 1, 1, 1, 1)), apple, 'today'))

    expect(withLong.minutes).toBeGreaterThan(alone.minutes * 1.15)
    expect(withNew.minutes / alone.minutes).toBeCloseTo(1, 2)
  })

  test('the truth lies within it eight times out of ten', () => {
    const chance = chanceFrom(30)
    const held = Array.from({ length: 150 }, () => {
      const truth = someTruth(chance)
      const plan = { people: 10, trees: 160, minutes: 420, seenAfter: 240 }
      const { ahead } = liveThrough(truth, plan, chance)
      return someKinds.map((kind) => {
        const told = minutesOf(ahead.learned, kind, 'today')
        const minutes = truth.minutesOf(kind)
        return told.state === 'known' && told.from <= minutes && minutes <= told.to
      })
    }).flat()

    const share = held.filter(Boolean).length / held.length
    expect(share).toBeGreaterThan(0.75)
    expect(share).toBeLessThan(0.85)
  })

  test('the mean is above the middle, as of anything log-normal', () => {
    const seen = learned(took(apple, ...Array(50).fill(50)))

    expect(meanMinutesOf(seen, apple, 'today')).toBeGreaterThan(
      known(minutesOf(seen, apple, 'today')).minutes
    )
  })
})

describe('chance', () => {
  const shares = [0.1, 0.5, 0.9]
  const drawn = (draw: () => number) => {
    const inOrder = Array.from({ length: 20_000 }, draw).toSorted((a, b) => a - b)
    return shares.map((share) => inOrder[Math.round(share * 20_000)] ?? 0)
  }

  // jstat knows where the distributions lie.
  test('normal values lie where they should', () => {
    const chance = chanceFrom(3)
    for (const [at, value] of drawn(() => normal(chance)).entries()) {
      expect(value).toBeCloseTo(statistics.jStat.normal.inv(shares[at] ?? 0, 0, 1), 1)
    }
  })

  test.each([5, 12, 60])('so do chi-square values of %i degrees', (degrees) => {
    const chance = chanceFrom(4)
    for (const [at, value] of drawn(() => chiSquare(degrees, chance)).entries()) {
      const should = statistics.jStat.chisquare.inv(shares[at] ?? 0, degrees)
      expect(Math.abs(value / should - 1)).toBeLessThan(0.04)
    }
  })

  test('many trees added at once are as many drawn one by one', () => {
    const chance = chanceFrom(5)
    const sums = (count: number, times: number) =>
      Array.from({ length: 2000 }, () => {
        let sum = 0
        for (let at = 0; at < times; at++) sum += sumOfTrees(count, 3.5, 0.5, chance)
        return sum
      })
    const average = (values: number[]) => values.reduce((sum, one) => sum + one, 0) / values.length
    const spread = (values: number[]) =>
      Math.sqrt(average(values.map((one) => (one - average(values)) ** 2)))
    const [atOnce, oneByOne] = [sums(80, 1), sums(20, 4)]

    expect(average(atOnce) / average(oneByOne)).toBeCloseTo(1, 1)
    expect(spread(atOnce) / spread(oneByOne)).toBeCloseTo(1, 0.9)
  })
})

test('a system of equations is solved: Hilbert’s, whose solution is known', () => {
  const hilbert = [0, 1, 2, 3].map((row) => [0, 1, 2, 3].map((at) => 1 / (row + at + 1)))
  const ones = hilbert.map((row) => row.reduce((sum, value) => sum + value, 0))

  for (const value of solveBoth(choleskyOf(hilbert), ones)) expect(value).toBeCloseTo(1, 8)
})

describe('the share of the time', () => {
  test('at trees is as was seen once enough was seen, and never more than all', () => {
    expect(shareAtTrees(0, 0).share).toBeCloseTo(0.7)
    expect(shareAtTrees(50 * 60, 100 * 60).share).toBeCloseTo(0.508, 3)
    expect(shareAtTrees(500, 100).share).toBe(1)
    expect(shareAtTrees(50, 100).spread).toBeGreaterThan(shareAtTrees(500, 1000).spread)
  })

  test('of breaks begins with ten minutes in two hours', () => {
    expect(shareOfBreaks(0, 0)).toBeCloseTo(10 / 120)
    expect(shareOfBreaks(30 * 10, 30 * 60)).toBeCloseTo(0.157, 2)
  })
})
