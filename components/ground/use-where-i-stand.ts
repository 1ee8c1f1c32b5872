'use client'

import { useState } from 'react'

import type { Position } from '@/lib/domain/orchard/types'

export type Standing =
  | { state: 'idle' }
  | { state: 'finding' }
  | { state: 'found'; withinM: number }
  | { state: 'none'; why: 'insecure' | 'denied' | 'failed' }

/** So long a phone may get better at it. */
const longestMs = 12_000
/** Better than this no phone without help gets. */
const goodM = 4

/** Where this phone is, told to nobody: the best of what it says in a few seconds. */
export function useWhereIStand(onFound: (position: Position) => void) {
  const [standing, setStanding] = useState<Standing>({ state: 'idle' })

  const find = () => {
    if (!window.isSecureContext || !('geolocation' in navigator)) {
      setStanding({ state: 'none', why: 'insecure' })
      return
    }
    setStanding({ state: 'finding' })
    let best: GeolocationCoordinates | null = null
    const take = () => {
      navigator.geolocation.clearWatch(watch)
      clearTimeout(timer)
      if (best === null) {
        setStanding({ state: 'none', why: 'failed' })
        return
      }
      setStanding({ state: 'found', withinM: best.accuracy })
      onFound({ lat: best.latitude, lon: best.longitude })
    }
    const timer = setTimeout(take, longestMs)
    const watch = navigator.geolocation.watchPosition(
      ({ coords }) => {
        if (best === null || coords.accuracy < best.accuracy) best = coords
        if (coords.accuracy <= goodM) take()
      },
      ({ code, PERMISSION_DENIED }) => {
        if (code !== PERMISSION_DENIED) return take()
        clearTimeout(timer)
        setStanding({ state: 'none', why: 'denied' })
      },
      { enableHighAccuracy: true, maximumAge: 0, timeout: longestMs }
    )
  }
  return { standing, find }
}
