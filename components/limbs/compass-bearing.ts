import { inCircle } from '@/lib/domain/pruning/circular'

/** What some browsers add to the standard's event. */
export type OrientationEvent = Pick<
  DeviceOrientationEvent,
  'absolute' | 'alpha' | 'beta' | 'gamma'
> & {
  webkitCompassHeading?: number
  webkitCompassAccuracy?: number
}

export type Pointed =
  | { state: 'pointing'; bearingDeg: number }
  /** Held too steeply: where its top points is up or down. */
  | { state: 'steep' }
  /** This event does not know where north is. */
  | { state: 'unknown' }

/** A phone on its way up to the face points nowhere in particular: common practice. */
const steepestDeg = 45

/**
 * Where the top of the picture on a phone points, clockwise from magnetic north. `turnedDeg` is how far the
 * picture is turned on it. W3C Device Orientation Event: alpha, beta and gamma turn about z, x and y in this order.
 */
export function pointed(event: OrientationEvent, turnedDeg: number): Pointed {
  const { webkitCompassHeading: heading, webkitCompassAccuracy: accuracy, absolute, alpha } = event
  const [beta, gamma] = [radians(event.beta ?? 0), radians(event.gamma ?? 0)]
  if (heading !== undefined) {
    // Negative: it has to be calibrated first.
    if (heading < 0 || (accuracy ?? 0) < 0) return { state: 'unknown' }
    return isSteep(Math.sin(beta)) ? { state: 'steep' } : { state: 'pointing', bearingDeg: heading }
  }
  if (!absolute || alpha === null) return { state: 'unknown' }

  const a = radians(alpha)
  const turned = radians(turnedDeg)
  const [right, up] = [Math.sin(turned), Math.cos(turned)]
  const sideways = Math.sin(beta) * Math.sin(gamma)
  const east =
    right * (Math.cos(a) * Math.cos(gamma) - Math.sin(a) * sideways) -
    up * Math.cos(beta) * Math.sin(a)
  const north =
    right * (Math.sin(a) * Math.cos(gamma) + Math.cos(a) * sideways) +
    up * Math.cos(beta) * Math.cos(a)
  const upward = up * Math.sin(beta) - right * Math.cos(beta) * Math.sin(gamma)
  if (isSteep(upward)) return { state: 'steep' }
  return { state: 'pointing', bearingDeg: inCircle((Math.atan2(east, north) * 180) / Math.PI) }
}

function isSteep(upward: number): boolean {
  return Math.abs(upward) > Math.sin(radians(steepestDeg))
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180
}
