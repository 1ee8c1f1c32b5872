'use client'

/** The referee's clock, as near as this device knows it. */

import { useEffect, useState } from 'react'

import { useSelect } from './use-select'

/** Null on the server and while the page comes to life: both must draw the same. */
export function useNow(everyMs = 30_000): Date | null {
  const skewMs = useSelect((view) => view.skewMs)
  const [now, setNow] = useState<Date | null>(null)
  useEffect(() => {
    const tick = () => setNow(new Date(Date.now() + skewMs))
    tick()
    const timer = setInterval(tick, everyMs)
    return () => clearInterval(timer)
  }, [everyMs, skewMs])
  return now
}
