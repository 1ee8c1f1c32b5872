'use client'

import { houseRuleOf } from '@/lib/domain/safety/house-rules'
import type { ReasonCode } from '@/lib/domain/safety/prune-today'
import { feelsC, freshReading, thunderOverMs } from '@/lib/domain/safety/weather'
import { strongest } from '@/lib/domain/safety/wind'
import type { OffReason } from '@/lib/events/state'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import type { Today } from './use-day'

/** A reason with its figures: what was measured, and the limit it is held against. */
export function useReasonWords(day: Today): (code: ReasonCode, species: string) => string {
  const { reasons: text } = useLeadWords().weather
  const { offReason } = useWords().things
  const format = useFormat()
  const fresh = freshReading(day)
  const gust = format.speed((fresh && strongest(fresh.windKmh, fresh.gustKmh)) ?? 0)
  const rule = (key: Parameters<typeof houseRuleOf>[1]) => houseRuleOf(day.rules, key)

  return (code, species) => {
    switch (code) {
      case 'thunder':
        return text.thunder(format.clock(new Date(thunderOverMs(day) ?? day.nowMs)))
      case 'too_windy':
        return text.too_windy(gust, format.speedLimit(rule('work_gust_kmh')))
      case 'ladders_wind':
        return text.ladders_wind(gust, format.speedLimit(rule('ladder_gust_kmh')))
      case 'too_hot':
        return text.too_hot(
          format.feltHeat((fresh && feelsC(fresh)) ?? 0),
          format.heatLimit(rule('heat_stop_c'))
        )
      case 'hot_for_trees':
        return text.hot_for_trees(format.temperature(37.8))
      case 'rain':
        return text.rain(rule('rain_hours'))
      case 'rain_free':
        return text.rain_free(day.daysToFirstRain, rule('rain_free_days'))
      case 'put_off':
        return text.put_off(offReason[day.off[species] as OffReason] ?? '')
      case 'dark':
      case 'season':
      case 'wet_wood':
      case 'ladders_light':
      case 'weather_unknown':
        return text[code]
    }
  }
}
