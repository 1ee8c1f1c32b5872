import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import {
  type Day,
  daysToMonth,
  reasonCodes,
  type Verdict,
  verdictFor,
} from '@/lib/domain/safety/prune-today'
import { monthsBetween } from '@/lib/domain/safety/species-season'
import { celsiusOf, kmPerHOf } from '@/lib/domain/safety/units'
import { noRainInH, noWeather, type Reading, weatherAfter } from '@/lib/domain/safety/weather'

const noon = Date.parse('2026-08-20T12:00:00Z')
const hour = 3_600_000
const minute = 60_000

const fine: Reading = {
  measuredAt: new Date(noon).toISOString(),
  temperatureC: 22,
  humidity: 50,
  windKmh: 8,
  gustKmh: 14,
  canopy: 'dry',
  thunder: false,
  rainInH: noRainInH,
}

/** A dry day in August, just measured. */
function day({ reading = {}, ...facts }: Partial<Day> & { reading?: Partial<Reading> } = {}): Day {
  return {
    weather: weatherAfter(noWeather, { ...fine, ...reading }),
    rules: {},
    nowMs: noon,
    month: 8,
    daysToFirstRain: 49,
    off: {},
    exceptions: {},
    sun: null,
    ...facts,
  }
}

describe('apricots and cherries', () => {
  test('20 August with the first rain on 8 October: go, by UC IPM', () => {
    expect(verdictFor('apricot', day())).toMatchObject({ says: 'go', reasons: [] })
  })

  test('35 days before the first rain: go, and know that the wounds stay open for 42 (Ramos 1975)', () => {
    const verdict = verdictFor('apricot', day({ daysToFirstRain: 35 }))

    expect(verdict.says).toBe('go')
    expect(codesOf(verdict)).toEqual(['rain_free'])
  })

  test('20 January: not this species, whatever the weather (UC IPM)', () => {
    const verdict = verdictFor('apricot', day({ month: 1, daysToFirstRain: 254 }))

    expect(verdict.says).toBe('not_this_species')
    expect(verdict.reasons).toMatchObject([
      { code: 'season', exception: 'lead', source: { kind: 'published' } },
    ])
  })

  test("an orchard in the south sets its own months, over the year's end", () => {
    const rules = { apricot_from_month: 12, apricot_to_month: 2 }

    expect(verdictFor('apricot', day({ month: 1, rules })).says).toBe('go')
    expect(verdictFor('apricot', day({ month: 8, rules })).says).toBe('not_this_species')
    expect(monthsBetween(12, 2)).toEqual([12, 1, 2])
    expect(monthsBetween(7, 7)).toEqual([7])
  })

  test('some hours after the trees were wet they are still off, apples are not', () => {
    const weather = weatherAfter(
      weatherAfter(noWeather, { ...fine, canopy: 'wet', measuredAt: at(noon - 3 * hour) }),
      fine
    )

    expect(codesOf(verdictFor('cherry', day({ weather })))).toEqual(['wet_wood'])
    expect(verdictFor('apple', day({ weather })).says).toBe('go')
    expect(verdictFor('cherry', day({ weather, nowMs: noon + hour })).says).toBe('go')
  })
})

describe('rain and wet wood', () => {
  // UC Master Gardeners, Napa: 24 hours in one text, two days in another.
  test.each([
    [18, 24, 'not_this_species'],
    [30, 24, 'go'],
    [30, 48, 'not_this_species'],
    [noRainInH, 72, 'go'],
  ])('an apple with rain in %s h, where %s h are asked: %s', (rainInH, rainHours, says) => {
    const asked = day({ reading: { rainInH }, rules: { rain_hours: rainHours } })

    expect(verdictFor('apple', asked).says).toBe(says)
  })

  test('wood is wet from 90 % humidity where nobody looked, and dry where somebody did', () => {
    const says = (reading: Partial<Reading>) => verdictFor('pear', day({ reading })).says

    expect(says({ canopy: null, humidity: 90 })).toBe('not_this_species')
    expect(says({ canopy: null, humidity: 89 })).toBe('go')
    expect(says({ canopy: 'dry', humidity: 95 })).toBe('go')
  })
})

describe('what protects people', () => {
  test('thunder stops all until 30 minutes after the last, also when the reading is old', () => {
    const reading = { thunder: true }

    expect(verdictFor('apple', day({ reading }))).toMatchObject({
      says: 'stop',
      reasons: [{ code: 'thunder', exception: 'nobody' }],
    })
    expect(verdictFor('apple', day({ reading, nowMs: noon + 30 * minute - 1 })).says).toBe('stop')
    expect(verdictFor('apple', day({ reading, nowMs: noon + 30 * minute })).says).toBe('go')
    const later = day({ reading, nowMs: noon + 100 * minute, rules: { thunder_minutes: 120 } })
    expect(codesOf(verdictFor('apple', later))).toEqual(['thunder', 'weather_unknown'])
  })

  test.each([
    [18, 'go', []],
    [19, 'go', ['ladders_wind']],
    [25, 'stop', ['too_windy', 'ladders_wind']],
  ])('gusts of %s mph: %s', (mph, says, codes) => {
    const verdict = verdictFor('apple', day({ reading: { gustKmh: kmPerHOf(mph) } }))

    expect(verdict.says).toBe(says)
    expect(codesOf(verdict)).toEqual(codes)
  })

  test('what feels like 103 °F stops, the same air without humidity does not say so', () => {
    const hot = { temperatureC: celsiusOf(96), humidity: 50 }

    expect(codesOf(verdictFor('fig', day({ reading: hot })))).toEqual(['too_hot'])
    expect(verdictFor('fig', day({ reading: { ...hot, humidity: null } })).says).toBe('go')
  })

  test('100 °F is too hot for the trees', () => {
    const reading = { temperatureC: celsiusOf(100), humidity: 5 }

    expect(codesOf(verdictFor('fig', day({ reading })))).toContain('hot_for_trees')
  })

  test('ladders end half an hour before sunset, work at sunset', () => {
    const sun = {
      state: 'rises' as const,
      times: { from: noon - 6 * hour, to: noon + 30 * minute },
    }

    expect(codesOf(verdictFor('apple', day({ sun, nowMs: noon - 1 })))).toEqual([])
    expect(codesOf(verdictFor('apple', day({ sun })))).toEqual(['ladders_light'])
    expect(codesOf(verdictFor('apple', day({ sun, nowMs: noon + 30 * minute })))).toEqual(['dark'])
    expect(verdictFor('apple', day({ sun: { state: 'down_all_day' } })).says).toBe('stop')
    expect(verdictFor('apple', day({ sun: { state: 'up_all_day' } })).says).toBe('go')
  })
})

test("a lead's lamps lift darkness and leave ladders down; a wrong place lifts both", () => {
  const after = (...lifts: string[]) =>
    verdictFor('apple', day({ sun: { state: 'down_all_day' }, exceptions: { dark: lifts } }))

  expect(after()).toMatchObject({ says: 'stop', reasons: [{ code: 'dark', exception: 'lead' }] })
  expect(after('dark')).toMatchObject({ says: 'go', reasons: [{ code: 'ladders_light' }] })
  expect(after('dark', 'light')).toMatchObject({ says: 'go', reasons: [] })
})

test('old weather is no weather: nothing is put off by it, and it is said', () => {
  const wet = { canopy: 'wet' as const, gustKmh: 90, rainInH: 0 }
  const old = day({ reading: wet, nowMs: noon + 61 * minute })

  expect(verdictFor('apple', old).says).toBe('go')
  expect(codesOf(verdictFor('apple', old))).toEqual(['weather_unknown'])
  expect(codesOf(verdictFor('apple', day({ weather: noWeather })))).toEqual(['weather_unknown'])
})

test("a lead's exception lifts the reasons it was made for, and no other", () => {
  const exceptions = { cherry: ['season'] }
  const winter = { month: 1, exceptions }

  expect(verdictFor('cherry', day(winter))).toMatchObject({
    says: 'go',
    lifted: [{ code: 'season' }],
  })
  expect(verdictFor('apricot', day(winter)).says).toBe('not_this_species')
  expect(codesOf(verdictFor('cherry', day({ ...winter, reading: { canopy: 'wet' } })))).toEqual([
    'wet_wood',
  ])
})

test('no exception lifts what protects people, and a worse reading never turns stop into go', () => {
  const reading = fc.record({
    temperatureC: fc.option(fc.double({ min: -10, max: 45, noNaN: true })),
    humidity: fc.option(fc.double({ min: 5, max: 100, noNaN: true })),
    gustKmh: fc.option(fc.double({ min: 0, max: 100, noNaN: true })),
    canopy: fc.constantFrom('wet' as const, 'dry' as const, null),
    thunder: fc.boolean(),
  })
  const exceptions = { cherry: [...reasonCodes], apple: [...reasonCodes] }
  fc.assert(
    fc.property(reading, fc.constantFrom('apple', 'cherry'), (some, species) => {
      const before = verdictFor(species, day({ reading: some, exceptions }))
      const worse = verdictFor(
        species,
        day({ reading: { ...some, thunder: true, gustKmh: 100 }, exceptions })
      )
      expect(worse.says).toBe('stop')
      expect(before.lifted.every(({ weight }) => weight === 'off')).toBe(true)
      expect(before.reasons.some(({ weight }) => weight === 'off')).toBe(false)
    }),
    { numRuns: 100 }
  )
})

test('a reading that comes in late does not undo a newer one', () => {
  const late = { ...fine, measuredAt: at(noon - hour), thunder: true, canopy: 'wet' as const }
  const weather = weatherAfter(weatherAfter(noWeather, fine), late)

  expect(weather).toEqual({ latest: fine, thunderAt: late.measuredAt, wetAt: late.measuredAt })
})

test.each([
  ['2026-08-20', 10, 42],
  ['2026-08-21', 10, 41],
  ['2026-11-30', 10, 305],
  ['2026-10-15', 10, 0],
  ['2026-12-31', 1, 1],
])('from %s to the first of month %s it is %s days', (from, month, days) => {
  expect(daysToMonth(from, month)).toBe(days)
})

function at(ms: number): string {
  return new Date(ms).toISOString()
}

function codesOf({ reasons }: Verdict): string[] {
  return reasons.map(({ code }) => code)
}
