/**
 * What the weather puts off now. The referee decides by the same rules (private.weather_stops,
 * private.weather_offs). Where weather is unknown, nothing is put off because of it.
 */

import { heatIndexC } from './heat-index'
import { type HouseRuleKey, houseRuleOf } from './house-rules'
import { proneSpecies } from './species-season'
import { wetFromHumidity } from './wet'
import { strongest } from './wind'

/** What a lead wrote down. Null: not said. */
export type Reading = {
  measuredAt: string
  temperatureC: number | null
  humidity: number | null
  windKmh: number | null
  gustKmh: number | null
  canopy: 'wet' | 'dry' | null
  thunder: boolean
  /** Hours until rain is expected. */
  rainInH: number | null
}

export type Weather = {
  /** Measured last, however old. */
  latest: Reading | null
  /** When thunder was last heard, and the trees were last known to be wet, by whichever reading. */
  thunderAt: string | null
  wetAt: string | null
}

export const noWeather: Weather = { latest: null, thunderAt: null, wetAt: null }

/** "None in sight": longer than any rule looks ahead. */
export const noRainInH = 96

/** What puts off all work, for everybody. */
export const stopCodes = ['thunder', 'too_windy', 'too_hot'] as const
export type WeatherStop = { code: (typeof stopCodes)[number]; until?: string }

type Rules = Readonly<Record<string, number>>
/** What is asked: by which house rules, and when. */
export type Asked = { weather: Weather; rules: Rules; nowMs: number }

const minuteMs = 60_000
const hourMs = 60 * minuteMs

/** Old weather is no weather. */
export function freshReading({ weather: { latest }, rules, nowMs }: Asked): Reading | null {
  const ageMs = latest ? nowMs - Date.parse(latest.measuredAt) : Number.POSITIVE_INFINITY
  return ageMs <= houseRuleOf(rules, 'weather_minutes') * minuteMs ? latest : null
}

export function stopsFor(asked: Asked): WeatherStop[] {
  const until = thunderOverMs(asked)
  const fresh = freshReading(asked)
  const gust = fresh && strongest(fresh.windKmh, fresh.gustKmh)
  const feels = fresh && feelsC(fresh)
  const reaches = (value: number | null, key: HouseRuleKey) =>
    value !== null && value >= houseRuleOf(asked.rules, key)
  return [
    ...(until === null ? [] : [{ code: 'thunder' as const, until: new Date(until).toISOString() }]),
    ...(reaches(gust, 'work_gust_kmh') ? [{ code: 'too_windy' as const }] : []),
    ...(reaches(feels, 'heat_stop_c') ? [{ code: 'too_hot' as const }] : []),
  ]
}

/** Until when nobody works since the last thunder. Null: it is over, or there was none. */
export function thunderOverMs({ weather: { thunderAt }, rules, nowMs }: Asked): number | null {
  if (thunderAt === null) return null
  const overMs = Date.parse(thunderAt) + houseRuleOf(rules, 'thunder_minutes') * minuteMs
  return nowMs < overMs ? overMs : null
}

/** In shade; without humidity the temperature alone is all that is known. */
export function feelsC({ temperatureC, humidity }: Reading): number | null {
  if (temperatureC === null || humidity === null) return temperatureC
  return Math.round(heatIndexC(temperatureC, humidity) * 100) / 100
}

export function isTooWindyForLadders(asked: Asked): boolean {
  const fresh = freshReading(asked)
  const gust = fresh && strongest(fresh.windKmh, fresh.gustKmh)
  return gust !== null && gust >= houseRuleOf(asked.rules, 'ladder_gust_kmh')
}

/** What somebody saw counts before what the air says. */
export function isWet({ canopy, humidity }: Reading): boolean {
  return canopy === null ? humidity !== null && humidity >= wetFromHumidity : canopy === 'wet'
}

/** Why trees of this species are put off by the weather. */
export function weatherOffs(asked: Asked, species: string): ('wet_wood' | 'rain')[] {
  const { weather, rules, nowMs } = asked
  const fresh = freshReading(asked)
  const dryMs = houseRuleOf(rules, 'dry_hours') * hourMs
  const isStillWet =
    proneSpecies.includes(species) &&
    weather.wetAt !== null &&
    nowMs < Date.parse(weather.wetAt) + dryMs
  const rainMs = fresh && rainExpectedMs(fresh)
  return [
    ...(isStillWet || (fresh !== null && isWet(fresh)) ? ['wet_wood' as const] : []),
    ...(rainMs !== null && rainMs <= nowMs + houseRuleOf(rules, 'rain_hours') * hourMs
      ? ['rain' as const]
      : []),
  ]
}

function rainExpectedMs({ measuredAt, rainInH }: Reading): number | null {
  return rainInH === null ? null : Date.parse(measuredAt) + rainInH * hourMs
}

/** The weather after one more reading; one that comes in late changes only what it is the last of. */
export function weatherAfter(weather: Weather, reading: Reading): Weather {
  const later = (known: string | null, at: string) => (known === null || at > known ? at : known)
  const { latest } = weather
  return {
    latest: latest === null || reading.measuredAt >= latest.measuredAt ? reading : latest,
    thunderAt: reading.thunder ? later(weather.thunderAt, reading.measuredAt) : weather.thunderAt,
    wetAt: isWet(reading) ? later(weather.wetAt, reading.measuredAt) : weather.wetAt,
  }
}
