'use client'

/** What the readings, the shift and the exceptions say now. */

import { freshReading } from '@/lib/domain/safety/weather'
import { darkness } from '@/lib/events/dark'
import { askedOf, laddersOffBecause, speciesOffs, weatherStops } from '@/lib/events/weather'
import { nowIn, openShiftOf, useNow, useSelect, type View } from '@/lib/hooks'

export type Conditions = NonNullable<ReturnType<typeof factsOf>> & { now: Date }

/** Null while no shift is open. Asked again each half minute: thunder is over, a rest is due, the sun sets. */
export function useConditions(): Conditions | null {
  const now = useNow()
  const facts = useSelect(factsOf)
  return facts === null || now === null ? null : { ...facts, now }
}

function factsOf(view: View) {
  const { state, me } = view
  const shift = openShiftOf(view)
  if (!state || !shift) return null
  const here = { ground: view.ground, now: nowIn(view) }
  const asked = askedOf(state, here.now)
  const species = state.rounds[shift.roundId]?.species ?? []
  const fresh = freshReading(asked)
  const there = state.attendance[me?.personId ?? '']
  return {
    stops: weatherStops(state, here),
    offs: species.flatMap((what) => {
      const [why] = speciesOffs(state, what, { asked, shift })
      return why === undefined ? [] : [{ what, why }]
    }),
    ladders: laddersOffBecause(state, shift, here),
    lifted: Object.keys(state.exceptions).filter(
      (what) => what !== darkness && speciesOffs(state, what, { asked, shift }).length === 0
    ),
    workedSince: there?.state === 'here' ? (there.restedAt ?? there.since) : null,
    temperatureC: fresh?.temperatureC ?? null,
    startsAt: shift.startsAt,
    // Who never wrote any down does without.
    isUnknown: fresh === null && state.weather.latest !== null,
  }
}
