import { describe, expect, test } from 'vitest'

import { hoursOf, isTooLong } from '@/components/shift/orchard-time'
import { instantAt } from '@/lib/util/clock-in'
import { dayIn } from '@/lib/util/day-in'

describe('a time on the orchard’s clock', () => {
  test.each([
    ['2027-01-15', '09:00', 'America/Chicago', '2027-01-15T15:00:00.000Z'],
    ['2027-07-15', '09:00', 'America/Chicago', '2027-07-15T14:00:00.000Z'],
    ['2027-07-15', '09:00', 'UTC', '2027-07-15T09:00:00.000Z'],
    ['2027-07-15', '09:00', 'Asia/Kathmandu', '2027-07-15T03:15:00.000Z'],
    // The clocks go forward at 2:00 and back at 2:00 that night (tz database).
    ['2027-03-14', '01:30', 'America/Chicago', '2027-03-14T07:30:00.000Z'],
    ['2027-03-14', '03:30', 'America/Chicago', '2027-03-14T08:30:00.000Z'],
    ['2027-11-07', '03:00', 'America/Chicago', '2027-11-07T09:00:00.000Z'],
  ])('%s %s in %s is %s', (day, time, zone, instant) => {
    expect(instantAt(day, time, zone)).toBe(instant)
  })

  test.each([
    ['', '09:00'],
    ['2027-02-27', ''],
    ['soon', '09:00'],
  ])('of %j at %j is none', (day, time) => {
    expect(instantAt(day, time, 'UTC')).toBeNull()
  })
})

test('a shift that ends before it begins ends on the next day; one without length is none', () => {
  const night = hoursOf({ day: '2027-02-28', from: '22:00', to: '02:00' }, 'UTC')
  expect(night).toEqual({
    startsAt: '2027-02-28T22:00:00.000Z',
    endsAt: '2027-03-01T02:00:00.000Z',
  })
  expect(hoursOf({ day: '2027-02-28', from: '09:00', to: '09:00' }, 'UTC')).toBeNull()
})

test.each([
  ['09:00', '17:00', false],
  ['22:00', '02:00', false],
  ['09:00', '08:30', true],
  ['09:00', '00:30', true],
])('%s to %s is too long for a shift: %s', (from, to, tooLong) => {
  const hours = hoursOf({ day: '2027-02-27', from, to }, 'UTC')
  expect(hours && isTooLong(hours)).toBe(tooLong)
})

test('today is the orchard’s day, wherever the tablet comes from', () => {
  const lateInLondon = new Date('2027-02-27T23:30:00.000Z')
  expect(dayIn('America/Chicago', lateInLondon)).toBe('2027-02-27')
  expect(dayIn('Asia/Tokyo', lateInLondon)).toBe('2027-02-28')
})
