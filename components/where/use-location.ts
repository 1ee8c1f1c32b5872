'use client'

import { useCallback, useEffect, useState } from 'react'

import type { Fix } from '@/lib/domain/orchard/where'

export type Location =
  /** Nobody asked yet. */
  | { state: 'off' }
  | { state: 'looking' }
  | { state: 'found'; fix: Fix }
  /** No https: the browser tells such pages nothing. */
  | { state: 'insecure' }
  | { state: 'no_way' }
  | { state: 'denied' }
  | { state: 'lost' }

/**
 * Where this device is, from when it is asked until it is told to stop, or the screen closes. What it says goes
 * to whoever calls this and nowhere else: no command, no storage.
 */
export function useLocation() {
  const [location, setLocation] = useState<Location>({ state: 'off' })
  /** Counts how often it was asked, so that asking again begins anew. */
  const [asked, setAsked] = useState(0)

  useEffect(() => {
    if (asked === 0) return
    if (!window.isSecureContext) return setLocation({ state: 'insecure' })
    if (!('geolocation' in navigator)) return setLocation({ state: 'no_way' })
    setLocation({ state: 'looking' })
    const watch = navigator.geolocation.watchPosition(
      ({ coords: { latitude, longitude, accuracy } }) =>
        setLocation({
          state: 'found',
          fix: { position: { lat: latitude, lon: longitude }, accuracyM: accuracy },
        }),
      (error) => setLocation({ state: error.code === error.PERMISSION_DENIED ? 'denied' : 'lost' }),
      { enableHighAccuracy: true, maximumAge: 2_000, timeout: 20_000 }
    )
    return () => navigator.geolocation.clearWatch(watch)
  }, [asked])

  return {
    location,
    look: useCallback(() => setAsked((times) => times + 1), []),
    stop: useCallback(() => {
      setAsked(0)
      setLocation({ state: 'off' })
    }, []),
  }
}
