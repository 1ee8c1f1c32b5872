import { expect, test } from 'vitest'

import { fold } from '@/lib/events/reduce'
import type { State } from '@/lib/events/state'

import { aState, happened, later, shift } from './a-state'

const start = aState()

function after(kind: string, body: unknown): State | 'fetch again' {
  return fold(start, happened(kind, body))
}

test('a planned shift has another day and other hours; its briefing stays', () => {
  const hours = { date: '2027-01-23', startsAt: later, endsAt: later, signal: 'voice' }

  expect(after('shift_changed', { shift, ...hours })).toEqual({
    ...start,
    shifts: { [shift]: { ...start.shifts[shift], ...hours } },
  })
})

test('a shift that is called off is gone', () => {
  expect(after('shift_cancelled', { shift })).toEqual({ ...start, shifts: {} })
})

test('an emergency card that is written anew is another version, and no word of it', () => {
  expect(after('orchard_changed', { emergencyVersion: 3 })).toEqual({
    ...start,
    orchard: { ...start.orchard, emergencyVersion: 3 },
  })
})
