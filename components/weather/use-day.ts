'use client'

import { houseRuleOf } from '@/lib/domain/safety/house-rules'
import { type Day, daysToMonth } from '@/lib/domain/safety/prune-today'
import { type DayLight, dayLightAt } from '@/lib/domain/safety/sun'
import { noWeather } from '@/lib/domain/safety/weather'
import { openShiftOf, orchardPosition, useNow, useSelect } from '@/lib/hooks'
import { dayIn } from '@/lib/util/day-in'

export type Today = Day & { light: DayLight | null; today: string }

/** What the verdicts of now ask. Null while the page comes to life. */
export function useDay(): Today | null {
  const now = useNow(20_000)
  const facts = useSelect((view) => ({
    weather: view.state?.weather ?? noWeather,
    rules: view.state?.orchard.houseRules ?? {},
    off: openShiftOf(view)?.off ?? {},
    lifts: Object.fromEntries(
      Object.entries(view.state?.exceptions ?? {}).map(([what, { lifts }]) => [what, lifts])
    ),
    zone: view.state?.orchard.timeZone ?? 'UTC',
    position: orchardPosition(view),
  }))
  if (now === null) return null
  const today = dayIn(facts.zone, now)
  const light = facts.position && dayLightAt(facts.position, now.getTime())
  return {
    weather: facts.weather,
    rules: facts.rules,
    off: facts.off,
    exceptions: facts.lifts,
    nowMs: now.getTime(),
    month: Number(today.split('-')[1]),
    daysToFirstRain: daysToMonth(today, houseRuleOf(facts.rules, 'first_rain_month')),
    sun: light?.sun ?? null,
    light,
    today,
  }
}
