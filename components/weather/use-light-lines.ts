'use client'

import { dayLightAt } from '@/lib/domain/safety/sun'
import { darkness, laddersLackLight } from '@/lib/events/dark'
import {
  goesOnInTheDark,
  type LightCall,
  lightCall,
  nowIn,
  openShiftOf,
  orchardPosition,
  useSelect,
  type View,
} from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'

/** In the last hour of daylight it is said how much is left. */
const toldMs = 3_600_000

/** How long it stays light, and what the light asks of whoever is at a tree; nothing by broad daylight. */
export function useLightLines(now: Date | null): { lines: string[]; call: LightCall | null } {
  const { conditions: text } = useWords()
  const format = useFormat()
  const { place, call, isByLamps, isDayHere } = useSelect(factsOf)
  const calls: Record<LightCall, string> = {
    come_in: text.comeIn,
    last_cut: text.lastCut,
    off_ladder: text.offLadder,
  }
  const asked = call ? [calls[call]] : isByLamps ? [text.byLamps] : []
  return { lines: [...sunLine(), ...asked], call }

  function sunLine(): string[] {
    const nowMs = now?.getTime() ?? 0
    const sun = place && dayLightAt(place, nowMs).sun
    // Where a lead says that it is day, the sun of the map is not theirs.
    if (now === null || sun?.state !== 'rises' || isDayHere) return []
    const { from, to } = sun.times
    if (nowMs < from) return [text.sunrise(format.clock(new Date(from)))]
    if (nowMs >= to || to - nowMs > toldMs) return []
    return [
      text.light(format.duration(Math.floor((to - nowMs) / 60_000)), format.clock(new Date(to))),
    ]
  }
}

function factsOf(view: View) {
  const { state, ground } = view
  if (!state || !openShiftOf(view))
    return { place: null, call: null, isByLamps: false, isDayHere: false }
  const now = nowIn(view)
  return {
    place: orchardPosition(view),
    call: lightCall(view, new Date(now)),
    isByLamps: goesOnInTheDark(state) && laddersLackLight(state, { ground, now }),
    isDayHere: state.exceptions[darkness]?.lifts.includes('light') === true,
  }
}
