'use client'

import { myReadiness, openShiftOf, useSelect, type View } from '@/lib/hooks'
import { type Readiness, readySteps } from './ready-steps'

/** My steps before the next tree, as this device knows them. */
export function useReadySteps() {
  return readySteps(useSelect(readinessFacts))
}

function readinessFacts(view: View): Readiness {
  const { state, me, memberships } = view
  const minor = me && state?.minors[me.personId]
  const season = state?.rounds[state.workRoundId ?? '']?.season
  const consented = me && state?.consents[me.personId]
  return {
    missing: myReadiness(view).filter(({ code }) => code !== 'holds_another'),
    shift: openShiftOf(view) ? 'open' : nextShift(view) ? 'planned' : 'none',
    wasBriefed: me !== null && (state?.briefed[me.personId]?.givenVersion ?? 0) > 0,
    isMinor: Boolean(minor),
    guardianIsHere: memberships.some(({ personId }) => personId === minor?.guardianId),
    consented: season === undefined ? null : typeof consented === 'number' && consented >= season,
  }
}

/** The shift that is open, else the one that begins first. */
export function nextShift({ state }: Pick<View, 'state'>) {
  const shifts = Object.entries(state?.shifts ?? {}).map(([id, shift]) => ({ ...shift, id }))
  return (
    shifts.find((shift) => shift.state === 'open') ??
    shifts.toSorted((a, b) => (a.startsAt < b.startsAt ? -1 : 1))[0] ??
    null
  )
}
