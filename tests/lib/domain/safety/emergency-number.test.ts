import { expect, test } from 'vitest'

import { emergencyNumberIn } from '@/lib/domain/safety/emergency-number'

test.each([
  // Directive (EU) 2018/1972, Article 109: 112 in all member states, also on their islands.
  ['Europe/Madrid', '112'],
  ['Atlantic/Canary', '112'],
  ['Europe/Dublin', '112'],
  // 47 U.S.C. §251(e)(3): 9-1-1 is the universal emergency number in the United States.
  ['America/Los_Angeles', '911'],
  ['America/Indiana/Indianapolis', '911'],
  ['Pacific/Honolulu', '911'],
  // Ofcom General Conditions, A3: 999 and 112.
  ['Europe/London', '999'],
])('in %s it is %s', (zone, number) => {
  expect(emergencyNumberIn(zone)?.number).toBe(number)
})

test.each(['Etc/UTC', 'UTC', 'Europe/Zurich', 'America/Bogota', 'Asia/Tokyo', ''])(
  'of %s nothing is proposed rather than a guess',
  (zone) => {
    expect(emergencyNumberIn(zone)).toBeNull()
  }
)
