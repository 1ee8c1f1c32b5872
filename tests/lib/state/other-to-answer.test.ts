import { expect, test } from 'vitest'

import type { Stop } from '@/lib/events/state'
import { otherToAnswer } from '@/lib/state/me'
import type { View } from '@/lib/state/view'

test('a stop asks also after whoever else uses this phone and is here, until they have answered', () => {
  expect(otherToAnswer(phoneOf({ ann: 'stopped' }))?.personId).toBe('kit')
  expect(otherToAnswer(phoneOf({ ann: 'stopped', kit: 'stopped' }))).toBeNull()
})

/** Ann holds it; Kit uses it too and is here; Jo has not come; Bo is of another orchard. */
function phoneOf(answers: Stop['answers']): View {
  const stop = { block: null, calledBy: 'lee', calledAt: '2027-01-16T09:00:00.000Z', answers }
  const here = { state: 'here', since: '2027-01-16T08:00:00.000Z' }
  const users = { ann: 'here', kit: 'here', jo: 'here', bo: 'there' }
  // Only what is asked of a view here.
  return {
    me: { personId: 'ann', orchardId: 'here' },
    memberships: Object.entries(users).map(([personId, orchardId]) => ({ personId, orchardId })),
    state: { attendance: { ann: here, kit: here }, stops: { one: { ...stop, resumed: null } } },
  } as unknown as View
}
