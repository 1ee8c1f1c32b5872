'use client'

/** What the readings, the shift and the exceptions say now. */

import { freshReading, stopsFor } from '@/lib/domain/safety/weather'
import { askedOf, laddersOffBecause, speciesOffs } from '@/lib/events/weather'
import { nowIn, openShiftOf, useNow, useSelect, type View } from '@/lib/hooks'

export type Conditions = NonNullable<ReturnType<typeof factsOf>> & { now: Date }

/** Null while no shift is open. Asked again each half minute: thunder is over, a rest is due. */
export function useConditions(): Conditions | null {
  const now = useNow()
  const facts = useSelect(factsOf)
  return facts === null || now === null ? null : { ...facts, now }
}

function factsOf(view: View) {
  const { state, me } = view
  const shift = openShiftOf(view)
  if (!state || !shift) return null
  const asked = askedOf(state, nowIn(view))
  const species = state.rounds[shift.roundId]?.species ?? []
  const fresh = freshReading(asked)
  const there = state.attendance[me?.personId ?? '']
  return {
    stops: stopsFor(asked).map(({ code, until }) => ({ code, detail: { until } })),
    offs: species.flatMap((what) => {
      const [why] = speciesOffs(state, what, { asked, shift })
      return why === undefined ? [] : [{ what, why }]
    }),
    ladders: laddersOffBecause(asked, shift),
    lifted: Object.keys(state.exceptions).filter(
      (what) => speciesOffs(state, what, { asked, shift }).length === 0
    ),
    workedSince: there?.state === 'here' ? there.since : null,
    temperatureC: fresh?.temperatureC ?? null,
    startsAt: shift.startsAt,
    // Who never wrote any down does without.
    isUnknown: fresh === null && state.weather.latest !== null,
  }
}
