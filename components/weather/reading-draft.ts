/** What a lead is about to write down, in steps of the units they read. */

import type { Reading } from '@/lib/domain/safety/weather'
import type { ArgsOf } from '@/lib/events/commands'

export type ReadingDraft = Pick<
  Reading,
  'temperatureC' | 'humidity' | 'gustKmh' | 'canopy' | 'rainInH'
>

/** Steps begin at what was written last; what the eye must see anew is not taken over. */
export function draftFrom(latest: Reading | null): ReadingDraft {
  return {
    temperatureC: latest?.temperatureC ?? null,
    humidity: latest?.humidity ?? null,
    gustKmh: latest?.gustKmh ?? latest?.windKmh ?? null,
    canopy: null,
    rainInH: latest?.rainInH ?? null,
  }
}

export type Measure = 'temperatureC' | 'humidity' | 'gustKmh'

type Scale = { first: number; step: number; least: number; most: number; per: number; plus: number }

/** In the reader's units: value = shown × per + plus. The first press gives an ordinary day. */
const scales: Record<'metric' | 'us', Record<Measure, Scale>> = {
  metric: {
    temperatureC: { first: 15, step: 1, least: -40, most: 60, per: 1, plus: 0 },
    humidity: { first: 60, step: 5, least: 5, most: 100, per: 1, plus: 0 },
    gustKmh: { first: 10, step: 5, least: 0, most: 250, per: 1, plus: 0 },
  },
  us: {
    temperatureC: { first: 60, step: 2, least: -40, most: 140, per: 1 / 1.8, plus: -32 / 1.8 },
    humidity: { first: 60, step: 5, least: 5, most: 100, per: 1, plus: 0 },
    gustKmh: { first: 6, step: 1, least: 0, most: 155, per: 1.609344, plus: 0 },
  },
}

export function stepped(
  value: number | null,
  direction: 1 | -1,
  { measure, units }: { measure: Measure; units: 'metric' | 'us' }
): number {
  const { first, step, least, most, per, plus } = scales[units][measure]
  if (value === null) return asKept(first * per + plus)
  const shown = Math.round((value - plus) / per)
  // To the next whole step, from wherever it is.
  const next =
    direction > 0 ? Math.floor(shown / step) * step + step : Math.ceil(shown / step) * step - step
  return asKept(Math.min(Math.max(next, least), most) * per + plus)
}

function asKept(value: number): number {
  return Math.round(value * 100) / 100
}

export function isEmpty(draft: ReadingDraft): boolean {
  return Object.values(draft).every((value) => value === null)
}

export function argsFrom(draft: ReadingDraft, thunder: boolean): ArgsOf<'write_weather'> {
  return { ...draft, windKmh: null, thunder, at: null }
}
