'use client'

/** The compass of the phone, while somebody points it. Magnetic north: between limbs that makes no difference. */

import { useEffect, useState } from 'react'

import { pointed } from './compass-bearing'

export type Compass =
  | { state: 'away' }
  | { state: 'waiting' }
  | { state: 'pointing'; bearingDeg: number }
  | { state: 'steep' }
  | { state: 'insecure' | 'none' | 'denied' }

/** The question that some browsers ask first. */
type Asks = { requestPermission?: () => Promise<'granted' | 'denied'> }

/** So long a phone with a compass has said nothing. */
const silentMs = 3_000

export function useCompass(): { compass: Compass; begin: () => Promise<void>; end: () => void } {
  const [compass, setCompass] = useState<Compass>({ state: 'away' })
  const isOn = ['waiting', 'pointing', 'steep'].includes(compass.state)

  useEffect(() => {
    if (!isOn) return
    const listen = (event: Event) => {
      const now = pointed(event as DeviceOrientationEvent, screen.orientation?.angle ?? 0)
      if (now.state !== 'unknown') setCompass(now)
    }
    const timer = setTimeout(
      () => setCompass((now) => (now.state === 'waiting' ? { state: 'none' } : now)),
      silentMs
    )
    addEventListener('deviceorientationabsolute', listen)
    addEventListener('deviceorientation', listen)
    return () => {
      clearTimeout(timer)
      removeEventListener('deviceorientationabsolute', listen)
      removeEventListener('deviceorientation', listen)
    }
  }, [isOn])

  async function begin(): Promise<void> {
    if (!isSecureContext) return setCompass({ state: 'insecure' })
    if (!('DeviceOrientationEvent' in globalThis)) return setCompass({ state: 'none' })
    setCompass({ state: (await isAllowed()) ? 'waiting' : 'denied' })
  }

  return { compass, begin, end: () => setCompass({ state: 'away' }) }
}

async function isAllowed(): Promise<boolean> {
  const { requestPermission } = DeviceOrientationEvent as Asks
  if (!requestPermission) return true
  // Refused before, or not asked by a tap: it rejects.
  return requestPermission().then(
    (answer) => answer === 'granted',
    () => false
  )
}
