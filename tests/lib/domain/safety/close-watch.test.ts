import { describe, expect, test } from 'vitest'

import { type Highs, heatWaveOf, highsOf, newPeople } from '@/lib/domain/safety/close-watch'
import { celsiusOf } from '@/lib/domain/safety/units'

const usual = (...fahrenheit: (number | null)[]) =>
  fahrenheit.map((f) => (f === null ? null : celsiusOf(f)))

/**
 * Cal. Code Regs. Title 8 §3395 (g)(1), from memory: "any day in which the predicted high temperature for the day will
 * be at least 80 degrees Fahrenheit and at least ten degrees Fahrenheit higher than the average high daily
 * temperature in the preceding five days".
 */
describe('a heat wave', () => {
  test.each([
    // 70 °F on average.
    [80, [70, 70, 70, 70, 70], 'yes'],
    [79.9, [60, 60, 60, 60, 60], 'no'],
    [80, [70.2, 70.2, 70.2, 70.2, 70.2], 'no'],
    // The average, not the day before: 80 of 60, 70, 80, 90, 100.
    [90, [100, 90, 80, 70, 60], 'yes'],
    [89, [100, 90, 80, 70, 60], 'no'],
    [104, [95, 95, 95, 95, 95], 'no'],
    [105, [95, 95, 95, 95, 95], 'yes'],
  ] as const)('%s °F forecast after %j: %s', (high, before, says) => {
    const expected = celsiusOf(high)

    expect(heatWaveOf({ expected, reached: expected, before: usual(...before) })).toBe(says)
  })

  test('typed as 80 and 70 °F and kept in hundredths of °C it is one all the same', () => {
    const before = [21.11, 21.11, 21.11, 21.11, 21.11]

    expect(heatWaveOf({ expected: 26.67, reached: null, before })).toBe('yes')
  })

  test.each<[string, Partial<Highs>]>([
    ['a day before', { before: usual(70, 70, null, 70, 70) }],
    ['a forecast of the afternoon, and it is mild so far', { expected: null, reached: 20 }],
    ['any number of today', { expected: null, reached: null }],
  ])('without %s nobody says no', (_, missing) => {
    const known: Highs = { expected: 30, reached: 30, before: usual(80, 80, 80, 80, 80) }

    expect(heatWaveOf(known)).toBe('no')
    expect(heatWaveOf({ ...known, ...missing })).toBe('unknown')
  })

  test('what is written down already counts without a forecast', () => {
    expect(heatWaveOf({ expected: null, reached: 30, before: [20, 20, 20, 20, 20] })).toBe('yes')
  })
})

describe('the highs of days', () => {
  const hour = (day: string, clock: string, temperatureC: number | null) => ({
    day,
    clock,
    temperatureC,
  })

  test('are the highest of what was written down and brought in, over the end of a month too', () => {
    const written = [
      ['2027-02-28', 12],
      ['2027-02-23', 40],
    ] as const
    const hours = [
      hour('2027-02-28', '15:00', 17),
      hour('2027-02-26', '15:00', 9),
      hour('2027-03-02', '15:00', 25),
      hour('2027-03-02', '12:00', 27),
      hour('2027-03-03', '15:00', 41),
    ]

    expect(highsOf('2027-03-02', written, hours)).toEqual({
      expected: 27,
      reached: 27,
      before: [null, 17, null, 9, null],
    })
  })

  test('a forecast that ends before the afternoon does not say how hot it gets', () => {
    const morning = [hour('2027-07-02', '13:00', 22), hour('2027-07-02', '15:00', null)]

    expect(highsOf('2027-07-02', [], morning)).toMatchObject({ expected: null, reached: 22 })
    expect(highsOf('2027-07-02', [], [...morning, hour('2027-07-02', '14:00', 24)])).toMatchObject({
      expected: 24,
    })
  })
})

// The first 14 days of §3395 (g), today among them.
test('who has worked on thirteen days before is new for the last time, and newest come first', () => {
  expect(newPeople(['ann', 'bo', 'cy'], { ann: 13, bo: 14 })).toEqual([
    { id: 'cy', day: 1 },
    { id: 'ann', day: 14 },
  ])
})
