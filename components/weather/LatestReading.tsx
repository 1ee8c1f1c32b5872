'use client'

import { heatClassOf, heatIndexF, windChillF } from '@/lib/domain/safety/heat-index'
import { celsiusOf, fahrenheitOf, mphOf } from '@/lib/domain/safety/units'
import { feelsC, freshReading, type Reading } from '@/lib/domain/safety/weather'
import { dewPointC } from '@/lib/domain/safety/wet'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { Facts } from '../ui/Facts'
import { Note } from '../ui/Note'
import type { Today } from './use-day'

/** What was written last, how old it is, and what follows from it for bodies and bark. */
export function LatestReading({ day }: { day: Today }) {
  const { weather: text } = useLeadWords()
  const format = useFormat()
  const { latest } = day.weather
  if (!latest) return <Note icon="info">{text.never}</Note>
  const fresh = freshReading(day)
  const time = format.clock(new Date(latest.measuredAt))
  const age = format.duration((day.nowMs - Date.parse(latest.measuredAt)) / 60_000)
  return (
    <div className="stack">
      {fresh ? (
        <p>{text.last(time, age)}</p>
      ) : (
        <Note tone="call" icon="clock">
          {text.old(time, age)}
        </Note>
      )}
      <Facts facts={factsOf(latest)} />
    </div>
  )

  function factsOf(reading: Reading) {
    const { temperatureC, humidity, gustKmh, canopy, thunder } = reading
    return [
      ...(thunder ? [{ icon: 'warn' as const, text: text.thunder }] : []),
      ...(temperatureC === null
        ? []
        : [
            { icon: 'sun' as const, text: `${format.temperature(temperatureC)}. ${felt(reading)}` },
          ]),
      ...(humidity === null
        ? []
        : [
            {
              icon: 'drop' as const,
              text: `${text.humidity} ${format.share(humidity / 100)}. ${
                temperatureC === null
                  ? ''
                  : text.dew(format.temperature(dewPointC(temperatureC, humidity)))
              }`,
            },
          ]),
      ...(gustKmh === null
        ? []
        : [{ icon: 'wind' as const, text: `${text.gust} ${format.speed(gustKmh)}.` }]),
      ...(canopy === null
        ? []
        : [{ icon: 'drop' as const, text: `${text.wood}: ${text[canopy].toLowerCase()}.` }]),
    ]
  }

  function felt(reading: Reading): string {
    const { temperatureC, humidity, windKmh, gustKmh } = reading
    if (temperatureC === null) return ''
    const fahrenheit = fahrenheitOf(temperatureC)
    const wind = windKmh ?? gustKmh
    const chill = wind === null ? null : windChillF(fahrenheit, mphOf(wind))
    if (chill !== null) return text.chill(format.temperature(celsiusOf(chill)))
    const feels = humidity === null ? null : feelsC(reading)
    if (feels === null || fahrenheit < 80) return ''
    const heatClass = heatClassOf(heatIndexF(fahrenheit, humidity ?? 0))
    return `${text.feels(format.feltHeat(feels))} ${text.heatClass[heatClass]}`
  }
}
