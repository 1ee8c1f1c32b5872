/** Whenever tests run, at their orchard it is ten in the morning: by its clock, and by its sun. */

/** By how much the orchard's clock is ahead of Greenwich. */
export function clockAheadHours(nowMs: number): number {
  const wanted = 10 - new Date(nowMs).getUTCHours()
  return wanted < -11 ? wanted + 24 : wanted
}

/** Where a clock so far ahead agrees with the sun, in whole degrees east. */
export function morningLongitude(nowMs: number): number {
  const east = clockAheadHours(nowMs) * 15
  return east > 170 ? east - 360 : east
}
