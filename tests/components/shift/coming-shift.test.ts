import { expect, test } from 'vitest'

import { nextShiftOf, plannedShifts } from '@/components/shift/coming-shift'
import type { Shift } from '@/lib/events/state'
import type { View } from '@/lib/hooks'

const planned = (date: string, some: Partial<Shift> = {}) =>
  ({ date, startsAt: `${date}T08:00:00.000Z`, state: 'scheduled', ...some }) as Shift

function viewWith(shifts: Record<string, Shift>): Pick<View, 'state'> {
  return { state: { shifts } } as unknown as View
}

test('of the planned shifts the earliest comes next; the open one does not', () => {
  const view = viewWith({
    later: planned('2027-03-06'),
    next: planned('2027-02-27'),
    open: planned('2027-02-26', { state: 'open' }),
  })

  expect(nextShiftOf(view, '2027-02-27')?.id).toBe('next')
})

test('a shift that was rained out stands in nobody’s way on the next day', () => {
  const view = viewWith({ rainedOut: planned('2027-02-27'), next: planned('2027-03-06') })

  expect(nextShiftOf(view, '2027-02-28')?.id).toBe('next')
  expect(nextShiftOf(viewWith({ rainedOut: planned('2027-02-27') }), '2027-02-28')).toBeNull()
})

test('all that is planned stays to be changed or called off, also what went by', () => {
  const view = viewWith({
    later: planned('2027-03-06'),
    wentBy: planned('2027-02-20'),
    open: planned('2027-02-26', { state: 'open' }),
  })

  expect(plannedShifts(view).map(({ id }) => id)).toEqual(['wentBy', 'later'])
})
