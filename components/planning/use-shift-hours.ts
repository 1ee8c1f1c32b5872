'use client'

import { useMemo } from 'react'

import type { Shift } from '@/lib/events/state'
import { goesOnInTheDark, openShiftOf, useNow, useSelect } from '@/lib/hooks'
import { useDay } from '../weather/use-day'

export type ShiftHours = {
  shift: Shift & { id: string }
  /** On the orchard's calendar. */
  today: string
  nowMs: number
  /** When it ends: the shift, or before it the light. */
  endsMs: number
  isLight: boolean
}

/** The open shift and how long it goes on, minute by minute. */
export function useShiftHours(): ShiftHours | null {
  const shift = useSelect(openShiftOf)
  const day = useDay()
  const nowMs = useNow(60_000)?.getTime() ?? 0
  const today = day?.today ?? ''
  const sun = day?.light?.sun
  const isByLamps = useSelect(({ state }) => state !== null && goesOnInTheDark(state))
  const sunsetMs = sun?.state === 'rises' && !isByLamps ? sun.times.to : null

  return useMemo(() => {
    if (!shift || nowMs === 0) return null
    return { shift, today, nowMs, ...endOf(shift, sunsetMs) }
  }, [shift, nowMs, today, sunsetMs])
}

/** Null: nobody knows when the sun sets, or work goes on without it. */
export function endOf(
  { startsAt, endsAt }: Pick<Shift, 'startsAt' | 'endsAt'>,
  sunsetMs: number | null
): Pick<ShiftHours, 'endsMs' | 'isLight'> {
  const endsMs = Date.parse(endsAt)
  // Of a night's shift it is the sunset before: whoever begins after it brings light.
  const isLight = sunsetMs !== null && sunsetMs < endsMs && sunsetMs > Date.parse(startsAt)
  return { endsMs: isLight ? sunsetMs : endsMs, isLight }
}
