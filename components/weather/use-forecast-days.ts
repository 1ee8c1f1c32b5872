'use client'

import {
  type ForecastHour,
  type HourJudged,
  judgeHours,
  type Window,
  windowsOf,
} from '@/lib/domain/planning/windows'
import { houseRuleOf } from '@/lib/domain/safety/house-rules'
import { daysToMonth } from '@/lib/domain/safety/prune-today'
import { dayLightAt } from '@/lib/domain/safety/sun'
import { orchardPosition, useForecast, useSelect } from '@/lib/hooks'
import { dayIn } from '@/lib/util/day-in'
import type { Today } from './use-day'

export type ForecastDays = {
  broughtAt: string
  days: { day: string; hours: HourJudged[] }[]
  windows: Window[]
}

const hourMs = 3_600_000

/** The hours ahead as they are judged for one species, by day, and the best windows in them. */
export function useForecastDays(species: string, day: Today): ForecastDays | null {
  const forecast = useForecast()
  const zone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const position = useSelect(orchardPosition)
  if (forecast.state !== 'read' || forecast.value === null) return null

  const dayAt = (ms: number) => dayIn(zone, new Date(ms))
  const hours = forecast.value.hours.map(hourOf).toSorted((a, b) => a.fromMs - b.fromMs)
  const judged = judgeHours(species, hours, {
    rules: day.rules,
    exceptions: {},
    monthAt: (ms) => Number(dayAt(ms).split('-')[1]),
    daysToFirstRainAt: (ms) => daysToMonth(dayAt(ms), houseRuleOf(day.rules, 'first_rain_month')),
    sunAt: (ms) => position && dayLightAt(position, ms).sun,
  }).filter(({ fromMs }) => fromMs + hourMs > day.nowMs)
  const days = new Map<string, HourJudged[]>()
  for (const hour of judged) {
    const key = dayAt(hour.fromMs)
    days.set(key, [...(days.get(key) ?? []), hour])
  }
  return {
    broughtAt: forecast.value.broughtAt,
    days: [...days].map(([key, list]) => ({ day: key, hours: list })),
    windows: windowsOf(judged),
  }
}

type Told = readonly [string, ...(number | null)[]]

function hourOf([from, temperatureC, humidity, windKmh, gustKmh, rainMm]: Told): ForecastHour {
  return {
    fromMs: Date.parse(from),
    temperatureC: temperatureC ?? null,
    humidity: humidity ?? null,
    windKmh: windKmh ?? null,
    gustKmh: gustKmh ?? null,
    rainMm: rainMm ?? null,
  }
}
