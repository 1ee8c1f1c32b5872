/** What some browsers add to the standard's event. */
export type OrientationEvent = Pick<DeviceOrientationEvent, 'absolute' | 'alpha'> & {
  webkitCompassHeading?: number
}

/**
 * Where the top of a phone points that lies flat, clockwise from magnetic north. Null: this event does not know
 * where north is. In the standard alpha turns against the clock.
 */
export function bearingOf({
  webkitCompassHeading,
  absolute,
  alpha,
}: OrientationEvent): number | null {
  // Negative: it has to be calibrated first.
  if (webkitCompassHeading !== undefined)
    return webkitCompassHeading >= 0 ? webkitCompassHeading : null
  return absolute && alpha !== null ? 360 - alpha : null
}
