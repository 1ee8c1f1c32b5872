'use client'

/** The compass of the phone, while somebody points it. Magnetic north: between limbs that makes no difference. */

import { useEffect, useState } from 'react'

export type Compass =
  | { state: 'away' }
  | { state: 'waiting' }
  | { state: 'pointing'; bearingDeg: number }
  | { state: 'insecure' | 'none' | 'denied' }

/** What some browsers add to the standard's event, and the question that some ask first. */
type OrientationEvent = DeviceOrientationEvent & { webkitCompassHeading?: number }
type Asks = { requestPermission?: () => Promise<'granted' | 'denied'> }

/** So long a phone with a compass has said nothing. */
const silentMs = 3_000

export function useCompass(): { compass: Compass; begin: () => Promise<void>; end: () => void } {
  const [compass, setCompass] = useState<Compass>({ state: 'away' })
  const isOn = compass.state === 'waiting' || compass.state === 'pointing'

  useEffect(() => {
    if (!isOn) return
    const listen = (event: Event) => {
      const bearingDeg = bearingOf(event as OrientationEvent)
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

/** The top of a phone that lies flat. Null: this event does not know where north is. */
function bearingOf({ webkitCompassHeading, absolute, alpha }: OrientationEvent): number | null {
  if (webkitCompassHeading !== undefined) return webkitCompassHeading
  return absolute && alpha !== null ? 360 - alpha : null
}
