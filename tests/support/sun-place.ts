/** Where on the equator the sun stands as a test wants it: the hour at which it runs is what it is. */

import { sunHeightDeg } from '@/lib/domain/safety/sun'

export type Hour = 'noon' | 'midnight' | 'sunset in 20 minutes'

export function longitudeAt(hour: Hour, nowMs: number): number {
  const noon = 180 - ((nowMs / 240_000) % 360)
  const east = { noon, midnight: noon + 180, 'sunset in 20 minutes': sunset(nowMs + 1_200_000) }
  return east[hour] > 180 ? east[hour] - 360 : east[hour]
}

/** A day there is twelve hours; the sun is early or late by up to a quarter of an hour. */
function sunset(atMs: number): number {
  const least = 180 - ((atMs / 240_000) % 360) + 80
  const steps = Array.from({ length: 2000 }, (_, step) => least + step / 100)
  return steps.findLast((lon) => sunHeightDeg({ lat: 0, lon }, atMs) >= -0.833) ?? Number.NaN
}
