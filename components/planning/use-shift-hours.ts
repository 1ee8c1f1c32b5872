'use client'

import { useMemo } from 'react'

import type { Shift } from '@/lib/events/state'
import { openShiftOf, useNow, useSelect } from '@/lib/hooks'
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
  const sunset = sun?.state === 'rises' ? sun.times.to : Infinity

  return useMemo(() => {
    if (!shift || nowMs === 0) return null
    const end = Date.parse(shift.endsAt)
    // Whoever begins after sunset brings light.
    const isLight = sunset < end && sunset > Date.parse(shift.startsAt)
    return { shift, today, nowMs, endsMs: isLight ? sunset : end, isLight }
  }, [shift, nowMs, today, sunset])
}
