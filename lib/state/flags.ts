/** Questions about flags: in which order leads look at them, what waits, whom a keep-out concerns. */

import type { Flag } from '@/lib/events/state'

import type { View } from './view'

export type OpenFlag = Flag & { id: string }

const gravest: Record<Flag['severity'], number> = { danger_now: 0, high: 1, low: 2 }

/** Hazards before disease, then what is dangerous now, then whatever waits longest. */
export function flagsInOrder({ state }: Pick<View, 'state'>): OpenFlag[] {
  return Object.entries(state?.flags ?? {})
    .map(([id, flag]) => ({ ...flag, id }))
    .toSorted(
      (a, b) =>
        Number(a.kind === 'disease') - Number(b.kind === 'disease') ||
        gravest[a.severity] - gravest[b.severity] ||
        (a.raisedAt < b.raisedAt ? -1 : 1)
    )
}

/** Nobody looked at the disease, wrote what is done about the hazard, or saw everybody come out. */
function waitsForLead(
  { kind, state, notes, inside }: Flag,
  people: Record<string, unknown>
): boolean {
  if (Object.entries(inside).some(([id, { out }]) => !out && Object.hasOwn(people, id))) return true
  return kind === 'disease' ? state === 'suspected' : notes === 0
}

export function countFlagsThatWait({ state }: Pick<View, 'state'>): number {
  if (!state) return 0
  return Object.values(state.flags).filter((flag) => waitsForLead(flag, state.people)).length
}

/** A keep-out that I am told to come out of, the earliest first. */
export function keepOutToLeave({ state, me }: Pick<View, 'state' | 'me'>): OpenFlag | null {
  const told = flagsInOrder({ state }).filter(
    ({ inside }) => inside[me?.personId ?? '']?.out === false
  )
  return told.toSorted((a, b) => (a.raisedAt < b.raisedAt ? -1 : 1))[0] ?? null
}
