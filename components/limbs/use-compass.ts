'use client'

/** The compass of the phone, while somebody points it. Magnetic north: between limbs that makes no difference. */

import { useEffect, useState } from 'react'

import { bearingOf } from './compass-bearing'

export type Compass =
  | { state: 'away' }
  | { state: 'waiting' }
  | { state: 'pointing'; bearingDeg: number }
  | { state: 'insecure' | 'none' | 'denied' }

/** The question that some browsers ask first. */
type Asks = { requestPermission?: () => Promise<'granted' | 'denied'> }

/** So long a phone with a compass has said nothing. */
const silentMs = 3_000

export function useCompass(): { compass: Compass; begin: () => Promise<void>; end: () => void } {
  const [compass, setCompass] = useState<Compass>({ state: 'away' })
  const isOn = compass.state === 'waiting' || compass.state === 'pointing'

  useEffect(() => {
    if (!isOn) return
    const listen = (event: Event) => {
      const bearingDeg = bearingOf(event as DeviceOrientationEvent)
      if (bearingDeg !== null) setCompass({ state: 'pointing', bearingDeg })
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
