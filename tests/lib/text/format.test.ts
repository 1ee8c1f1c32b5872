import { describe, expect, test } from 'vitest'

import { formatFor } from '@/lib/text/format'
import { ordinal } from '@/lib/text/ordinal'
import { pluralIn } from '@/lib/text/plural'

const metric = formatFor({ language: 'en', units: 'metric', timeZone: 'Europe/Madrid' })
const us = formatFor({ language: 'en', units: 'us', timeZone: 'America/Los_Angeles' })
const spanish = formatFor({ language: 'es', units: 'metric', timeZone: 'Europe/Madrid' })
const morning = new Date('2026-02-07T09:02:00Z')

test('metres and feet, by the definition of the foot as 0.3048 m', () => {
  expect(metric.distance(46)).toBe('46 m')
  expect(us.distance(30.48)).toBe('100 ft')
  expect(spanish.distance(1234)).toBe('1234 m')
})

test('a distance to keep is rounded up, a thickness to stay under is rounded down', () => {
  expect(metric.keepAway(9.1)).toBe('10 m')
  expect(us.keepAway(3)).toBe('10 ft')
  expect(metric.diameter(10)).toBe('10 cm')
  expect(us.diameter(10)).toBe('3\u00a07/8 in')
  expect(us.diameter(7)).toBe('2\u00a03/4 in')
})

// 29 CFR 1910.269(x): 10 ft (3.05 m), and 4 in (0.10 m) for each further step.
test.each([
  [3.05, '10 ft'],
  [3.2512, '10 ft 8 in'],
  [4.8768, '16 ft'],
  [1.2, '4 ft'],
  [0.2, '8 in'],
])('a line that asks for %f m asks for %s', (metres, words) => {
  expect(us.reach(metres, 'up')).toBe(words)
})

test('a reach is rounded as the caller asks', () => {
  expect([us.reach(1, 'down'), us.reach(1, 'up')]).toEqual(['3 ft 3 in', '3 ft 4 in'])
  expect([metric.reach(4.09, 'down'), metric.reach(4.09, 'up')]).toEqual(['4 m', '4.1 m'])
})

test('along wood a digit is given where it counts, and what is exact is not rounded up', () => {
  expect(metric.span(35.56)).toBe('36 cm')
  expect(metric.span(2.66)).toBe('2.7 cm')
  expect(metric.span(30.48, 'up')).toBe('31 cm')
  expect(us.span(30.48, 'up')).toBe('12 in')
  expect(us.span(12.7, 'up')).toBe('5 in')
  expect(us.span(3.39, 'down')).toBe('1\u00a01/4 in')
  expect(us.thickness(1.905)).toBe('3/4 in')
  expect(us.span(20.32)).toBe('8 in')
  expect(us.span(18.6)).toBe('7\u00a01/4 in')
  expect(metric.thickness(3.5)).toBe('3.5 cm')
})

test.each([
  [0, 1],
  [0.2, 1],
  [0.75, 1],
  [46, 61],
])('%f m are %i paces of 0.75 m', (metres, paces) => {
  expect(metric.paces(metres)).toBe(paces)
})

test('numbers are written as the language does', () => {
  expect(metric.number(1234.5, 1)).toBe('1,234.5')
  expect(spanish.number(12345.5, 1)).toBe('12.345,5')
  expect(metric.number(-0.2)).toBe('0')
  expect(metric.share(0.85)).toBe('85%')
})

test('a time is the orchard’s, whatever the phone’s zone', () => {
  expect(metric.clock(morning)).toBe('10:02')
  expect(us.clock(morning)).toMatch(/^1:02\sAM$/)
  expect(spanish.clock(new Date('2026-02-07T12:30:00Z'))).toBe('13:30')
  expect(metric.clock(new Date('2026-02-07T23:05:00Z'))).toBe('0:05')
})

test('a day is the orchard’s as well', () => {
  const lateInCalifornia = new Date('2026-02-08T05:00:00Z')
  expect(us.day(lateInCalifornia)).toBe('Saturday')
  expect(spanish.day(lateInCalifornia)).toBe('domingo')
  expect(spanish.date(morning)).toBe('7 de febrero')
})

test.each([
  [-3, '0 min'],
  [48.4, '48 min'],
  [60, '1 h'],
  [125, '2 h 5 min'],
])('%f minutes read %s', (minutes, words) => {
  expect(metric.duration(minutes)).toBe(words)
})

test('a list ends with “and”, in Spanish with “e” before an i', () => {
  expect(metric.list(['Teo', 'Inés'])).toBe('Teo and Inés')
  expect(spanish.list(['Teo', 'Inés'])).toBe('Teo e Inés')
})

describe('which one in a row', () => {
  test.each([
    [1, 'first', 'primero'],
    [4, 'fourth', 'cuarto'],
    [12, 'twelfth', 'duodécimo'],
    [13, '13th', '13.º'],
    [21, '21st', '21.º'],
    [22, '22nd', '22.º'],
    [103, '103rd', '103.º'],
    [111, '111th', '111.º'],
  ])('%i', (number, english, spanishWord) => {
    expect(ordinal('en', number)).toBe(english)
    expect(ordinal('es', number)).toBe(spanishWord)
  })
})

test.each(['en', 'es'] as const)('one is one and nothing is many, in %s', (language) => {
  const plural = pluralIn(language)
  const forms = [0, 1, 2, 21].map((count) => plural(count, 'one', 'other'))
  expect(forms).toEqual(['other', 'one', 'other', 'other'])
})

test.each([
  [0, '0 s'],
  [4_900, '0 s'],
  [59_000, '55 s'],
  [60_000, '1 min 0 s'],
  [84_000, '1 min 20 s'],
  [600_000, '10 min'],
  [3_900_000, '1 h 5 min'],
])('somebody who waits %i ms has waited %s', (ms, words) => {
  expect(formatFor({ language: 'en', units: 'metric', timeZone: 'UTC' }).waiting(ms)).toBe(words)
})
