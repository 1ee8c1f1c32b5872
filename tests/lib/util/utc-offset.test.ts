import { expect, test } from 'vitest'

import { utcOffsetHours } from '@/lib/util/utc-offset'

// As the IANA time zone database has them.
test.each([
  ['Etc/UTC', 0],
  ['Europe/Madrid', 1],
  ['America/Los_Angeles', -8],
  ['Asia/Kathmandu', 5.75],
  ['America/St_Johns', -3.5],
])('%s in January: %s h', (timeZone, hours) => {
  expect(utcOffsetHours(timeZone, new Date('2027-01-15T12:00:00Z'))).toBe(hours)
})
