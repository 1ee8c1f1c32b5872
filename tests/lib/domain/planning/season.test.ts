import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { dryDaysIn, dryShareOf } from '@/lib/domain/planning/dry-days'
import { peopleFor, type SeasonAsked, seasonOf } from '@/lib/domain/planning/season'
import type { Kind } from '@/lib/domain/planning/tree-times'
import { readHourly } from '@/lib/domain/safety/hourly-csv'
import { dryMonthsOf } from '@/lib/domain/safety/species-season'

const apple: Kind = { species: 'apple', size: 'medium' }
const apricot: Kind = { species: 'apricot', size: 'medium' }

function trees(kind: Kind, count: number): Kind[] {
  return Array.from({ length: count }, () => kind)
}

function season(change: Partial<SeasonAsked>) {
  return seasonOf({
    times: [],
    trees: trees(apple, 800),
    months: [12, 1, 2, 3],
    dryMonths: dryMonthsOf({}),
    daysAMonth: 8,
    dryShare: () => 0.5,
    hoursADay: 5,
    shareAtTrees: 1,
    ...change,
  })
}

describe('seasonOf', () => {
  // New Hampshire Agricultural Experiment Station, Bulletin 257, 1931: one man, about 800 trees, about 450 hours.
  test('trained people at the pace of the bulletin take 450 hours for 800 trees', () => {
    const trained = Array.from({ length: 500 }, (_, at) => ({
      ...apple,
      shift: `day ${at % 20}`,
      minutes: 34.02 * (0.8 + 0.4 * ((at % 10) / 9)),
    }))

    const { hours } = season({ times: trained })

    expect(hours.from).toBeLessThan(454)
    expect(hours.to).toBeGreaterThan(454)
    expect(hours.to / hours.from).toBeLessThan(1.8)
  })

  test('walking and tools come on top: of half the time at trees, twice the hours', () => {
    const [all, half] = [season({}), season({ shareAtTrees: 0.5 })]

    expect(half.hours.from).toBeCloseTo(2 * all.hours.from)
    expect(half.species[0]?.hours.to).toBeCloseTo(2 * (all.species[0]?.hours.to ?? 0))
  })

  test('each species has its own months and their dry days', () => {
    const { species, days } = season({ trees: [...trees(apple, 100), ...trees(apricot, 20)] })

    expect(species).toMatchObject([
      { species: 'apple', trees: 100, months: [12, 1, 2, 3], days: 16 },
      { species: 'apricot', trees: 20, months: [7, 8], days: 8 },
    ])
    expect(days).toBe(24)
  })

  test('people are the hours over the days, and more where one species has few days', () => {
    const apples = season({})
    const withApricots = season({ trees: [...trees(apple, 800), ...trees(apricot, 800)] })

    expect(apples.people?.from).toBeCloseTo(apples.hours.from / (16 * 5), 5)
    expect(withApricots.people?.to).toBeGreaterThan((apples.people?.to ?? 0) * 1.5)
  })

  test('says that it does not know where a species has no dry day', () => {
    expect(season({ dryShare: () => 0 }).people).toBeNull()
    expect(season({ trees: [] }).people).toEqual({ from: 0, to: 0 })
  })
})

test('the fewest people for whom everything finds its months: by trying out all of whole hours', () => {
  const months = [1, 2, 3]
  const someWindow = fc.subarray(months, { minLength: 1 })
  const species = fc.array(
    fc.record({ hours: fc.integer({ min: 0, max: 4 }), window: someWindow }),
    {
      minLength: 1,
      maxLength: 3,
    }
  )
  fc.assert(
    fc.property(species, (all) => {
      // Each month has two hours of one person, so that halves of people are whole hours.
      const found = peopleFor(
        all.map(({ hours }) => hours),
        { windows: all.map(({ window }) => window), hoursIn: (some) => some.length * 2 }
      )

      const jobs = all.flatMap(({ hours, window }) => Array.from({ length: hours }, () => window))
      const fits = (perMonth: number) => placed(jobs, new Map(months.map((one) => [one, perMonth])))
      let least = 0
      while (!fits(least)) least++
      expect(Math.ceil(found * 2 - 1e-9) + 0).toBe(least)
    }),
    { numRuns: 60 }
  )
})

function placed(
  [first, ...rest]: readonly (readonly number[])[],
  room: Map<number, number>
): boolean {
  if (!first) return true
  return first.some((month) => {
    const left = room.get(month) ?? 0
    return left > 0 && placed(rest, new Map(room).set(month, left - 1))
  })
}

describe('dry days', () => {
  const hour = (day: number, time: string, rain: string) =>
    `2027-01-${String(day).padStart(2, '0')}T${time},${rain}`
  const rows = (...lines: string[]) =>
    readHourly(['time,rain (mm)', ...lines].join('\n'), { dayFirst: true }).rows

  test('are days without measurable rain while people prune', () => {
    const counted = dryDaysIn(
      rows(
        hour(1, '03:00', '9'),
        hour(1, '09:00', '0'),
        hour(2, '09:00', '0.2'),
        hour(2, '10:00', '0.2')
      )
    )

    expect(counted.get(1)).toEqual({ days: 2, dry: 1 })
  })

  test('of a month with too few are as supposed', () => {
    const few = dryDaysIn(rows(hour(1, '09:00', '0')))
    const many = dryDaysIn(
      rows(...[1, 2, 3, 4, 5].map((day) => hour(day, '09:00', day > 3 ? '1' : '0')))
    )

    expect(dryShareOf(few, 0.5)(1)).toBe(0.5)
    expect([dryShareOf(many, 0.5)(1), dryShareOf(many, 0.5)(2)]).toEqual([0.6, 0.5])
  })
})
