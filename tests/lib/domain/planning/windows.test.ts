import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import {
  type Conditions,
  type ForecastHour,
  type HourJudged,
  judgeHours,
  type Window,
  windowsOf,
} from '@/lib/domain/planning/windows'

const hour = 3_600_000
const midnight = Date.parse('2026-08-20T00:00:00Z')

const fine: Omit<ForecastHour, 'fromMs'> = {
  temperatureC: 20,
  humidity: 50,
  windKmh: 8,
  gustKmh: 12,
  rainMm: 0,
}

/** A summer day with light from 6 to 20. */
const conditions: Conditions = {
  rules: {},
  exceptions: {},
  monthAt: () => 8,
  daysToFirstRainAt: () => 60,
  sunAt: () => ({
    state: 'rises',
    times: { from: midnight + 6 * hour, to: midnight + 20 * hour },
  }),
}

function dayOf(change: (at: number) => Partial<ForecastHour> = () => ({}), length = 24) {
  return Array.from({ length }, (_, at) => ({
    ...fine,
    fromMs: midnight + at * hour,
    ...change(at),
  }))
}

const saysOf = (judged: readonly HourJudged[]) => judged.map(({ says }) => says)

describe('each hour', () => {
  test('needs light all through, and half an hour more for ladders', () => {
    const says = saysOf(judgeHours('apple', dayOf(), conditions))

    expect(says.slice(0, 6)).toEqual(Array(6).fill('off'))
    expect(says.slice(6, 19)).toEqual(Array(13).fill('go'))
    expect(says.slice(19)).toEqual(['ground', 'off', 'off', 'off', 'off'])
  })

  test('rain puts off the hours before it and while it falls, and cherries some hours longer', () => {
    const rainAtTen = dayOf((at) => ({ rainMm: at === 10 ? 1.2 : 0 }))
    const rules = { rain_hours: 2 }

    const apple = saysOf(judgeHours('apple', rainAtTen, { ...conditions, rules }))
    const cherry = saysOf(judgeHours('cherry', rainAtTen, { ...conditions, rules }))

    expect(apple.slice(7, 13)).toEqual(['go', 'off', 'off', 'off', 'go', 'go'])
    expect(cherry.slice(10, 15)).toEqual(['off', 'off', 'off', 'off', 'go'])
  })

  test('wind takes the ladders, then everything; what is not said stays unknown', () => {
    const windy = dayOf((at) =>
      at === 12 ? { windKmh: null, gustKmh: null } : { gustKmh: [12, 33, 45][at - 9] ?? 12 }
    )

    expect(saysOf(judgeHours('apple', windy, conditions)).slice(9, 13)).toEqual([
      'go',
      'ground',
      'off',
      'unknown',
    ])
  })
})

describe('windows', () => {
  const says = fc.constantFrom('go' as const, 'ground' as const, 'off' as const, 'unknown' as const)
  /** Some hours are left out of the table. */
  const judged = fc
    .array(fc.record({ says, isThere: fc.boolean() }), { maxLength: 14 })
    .map((list) =>
      list.flatMap((one, at) =>
        one.isThere || at % 3 > 0 ? [{ fromMs: at * hour, says: one.says, because: [] }] : []
      )
    )

  test('are what trying every run of hours finds', () => {
    fc.assert(
      fc.property(judged, fc.integer({ min: 1, max: 4 }), (hours, least) => {
        const found = windowsOf(hours, least)
        expect(found.toSorted((a, b) => a.fromMs - b.fromMs)).toEqual(byTrying(hours, least))
      }),
      { numRuns: 300 }
    )
  })

  test('come with the most hours for ladders first', () => {
    const hours = (from: number, list: HourJudged['says'][]) =>
      list.map((one, at) => ({ fromMs: (from + at) * hour, says: one, because: [] }))
    const found = windowsOf([
      ...hours(0, ['ground', 'ground', 'ground', 'ground']),
      ...hours(10, ['go', 'go']),
      ...hours(20, ['go', 'go', 'ground']),
    ])

    expect(found.map(({ fromMs }) => fromMs / hour)).toEqual([20, 10, 0])
  })
})

/** Every run of consecutive hours that all allow work and that no hour beside it makes longer. */
function byTrying(hours: readonly HourJudged[], least: number): Window[] {
  const allows = (ms: number) =>
    hours.some(({ fromMs, says }) => fromMs === ms && (says === 'go' || says === 'ground'))
  const windows: Window[] = []
  for (let from = 0; from < 14; from++) {
    for (let to = from + 1; to <= 14; to++) {
      const all = Array.from({ length: to - from }, (_, at) => (from + at) * hour)
      const isWhole = all.every(allows) && !allows((from - 1) * hour) && !allows(to * hour)
      if (!isWhole || all.length < least) continue
      const withLadders = hours.filter(
        ({ fromMs, says }) => all.includes(fromMs) && says === 'go'
      ).length
      windows.push({ fromMs: from * hour, toMs: to * hour, hours: all.length, withLadders })
    }
  }
  return windows
}
