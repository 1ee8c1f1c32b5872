'use client'

import { useMemo } from 'react'

import { useNow, useSelect } from '@/lib/hooks'
import { longAtTreeMinutes, minutesSince } from './crew-order'

/** Trees at which somebody has been for long. */
export function useLongAt(): ReadonlySet<number> {
  const claims = useSelect((view) => view.state?.claims)
  const now = useNow(60_000)
  return useMemo(() => {
    const long = Object.values(claims ?? {}).filter(
      ({ openedAt }) => now !== null && minutesSince(openedAt, now) >= longAtTreeMinutes
    )
    return new Set(long.flatMap(({ tree }) => tree ?? []))
  }, [claims, now])
}
