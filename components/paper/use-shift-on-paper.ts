'use client'

import type { Shift } from '@/lib/events/state'
import { openShiftOf, useSelect, type View } from '@/lib/hooks'

/** The open shift, else the next one that is planned. */
export function useShiftOnPaper(): (Shift & { id: string }) | null {
  return useSelect(shiftOnPaper)
}

function shiftOnPaper(view: View): (Shift & { id: string }) | null {
  const planned = Object.entries(view.state?.shifts ?? {})
    .map(([id, shift]) => ({ ...shift, id }))
    .toSorted((a, b) => (a.startsAt < b.startsAt ? -1 : 1))
  return openShiftOf(view) ?? planned[0] ?? null
}
