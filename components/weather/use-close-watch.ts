'use client'

import {
  type HeatWave,
  type Highs,
  heatWaveOf,
  highOf,
  highsOf,
  type NewPerson,
  newPeople,
} from '@/lib/domain/safety/close-watch'
import { isHot } from '@/lib/domain/safety/heat-duties'
import { useCloseWatchRead, useForecast, useSelect } from '@/lib/hooks'
import { clockIn } from '@/lib/util/clock-in'
import { dayIn } from '@/lib/util/day-in'

export type CloseWatch = {
  highs: Highs
  heatWave: HeatWave
  isWarm: boolean
  /** Of those asked about. Null: could not be read. */
  newPeople: NewPerson[] | null
}

/** Whom heat asks to watch on this day, of these people or else of those who are here. Null while it is read. */
export function useCloseWatch(today: string, people?: readonly string[]): CloseWatch | null {
  const read = useCloseWatchRead(today)
  const forecast = useForecast()
  const zone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const here = useSelect((view) => Object.keys(view.state?.attendance ?? {}))
  const latest = useSelect((view) => view.state?.weather.latest ?? null)
  if (read.state === 'reading' || forecast.state === 'reading') return null

  const told = read.state === 'read' ? read.value : null
  const hours = forecast.state === 'read' ? (forecast.value?.hours ?? []) : []
  // What was written down last counts also where the rest could not be read.
  const written =
    latest === null || latest.temperatureC === null
      ? []
      : [[dayIn(zone, new Date(latest.measuredAt)), latest.temperatureC] as const]
  const highs = highsOf(
    today,
    [...(told?.highs ?? []), ...written],
    hours.map(([from, temperatureC]) => ({
      day: dayIn(zone, new Date(from)),
      clock: clockIn(zone, from),
      temperatureC,
    }))
  )
  const high = highOf(highs)
  return {
    highs,
    heatWave: heatWaveOf(highs),
    isWarm: high !== null && isHot(high),
    newPeople: told && newPeople(people ?? here, told.worked),
  }
}
