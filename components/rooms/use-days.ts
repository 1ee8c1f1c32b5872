'use client'

import { useFormat } from '../layout/use-format'

/** Days as they are read: of a calendar day, which has no hour, and of a moment on the orchard's clock. */
export function useDays() {
  const format = useFormat()
  return {
    // Noon is the same day everywhere near.
    day: (date: string) => format.fullDate(new Date(`${date}T12:00:00Z`)),
    dayOf: (at: string) => format.fullDate(new Date(at)),
    clockOf: (at: string) => format.clock(new Date(at)),
  }
}
