'use client'

import { useId, useState } from 'react'

import type { Window } from '@/lib/domain/planning/windows'
import { capitalised, speciesWords } from '@/lib/text/species'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Pick } from '../ui/Pick'
import { ForecastStrip } from './ForecastStrip'
import { PasteForecast } from './PasteForecast'
import type { Today } from './use-day'
import { useForecastDays } from './use-forecast-days'

const mostWindows = 3

/** The coming days read at a glance, the best windows in words, and where the hours come from. */
export function ForecastPanel({ day, species }: { day: Today; species: readonly string[] }) {
  const { weather: text } = useLeadWords()
  const words = useWords()
  const format = useFormat()
  const name = useId()
  const [asked, setAsked] = useState<string | null>(null)
  const chosen = asked ?? species[0] ?? 'apple'
  const forecast = useForecastDays(chosen, day)
  const isAhead = forecast !== null && forecast.days.length > 0

  return (
    <div className="stack">
      {forecast === null && <p>{text.noForecast}</p>}
      {forecast && !isAhead && <p>{text.noneAhead}</p>}
      {isAhead && (
        <>
          {species.length > 1 && (
            <ChoiceGroup label={text.forWhich} as="picks">
              {species.map((one) => (
                <Pick
                  key={one}
                  type="radio"
                  name={name}
                  checked={one === chosen}
                  onChange={() => setAsked(one)}
                >
                  {capitalised(speciesWords(words, one).many)}
                </Pick>
              ))}
            </ChoiceGroup>
          )}
          <ForecastStrip days={forecast.days} />
          <h3>{text.best}</h3>
          {forecast.windows.length === 0 && <p>{text.noWindow}</p>}
          <ol className="windows">
            {forecast.windows.slice(0, mostWindows).map((one) => (
              <li key={one.fromMs}>
                <b>{windowWords(one)}</b> {text.windowHours(one.hours, one.withLadders)}
              </li>
            ))}
          </ol>
          <p className="small">
            {text.forecastOld(broughtWords(forecast.broughtAt))} {text.forecastNote}
          </p>
        </>
      )}
      <PasteForecast />
    </div>
  )

  function windowWords({ fromMs, toMs }: Window): string {
    const [from, to] = [new Date(fromMs), new Date(toMs)]
    return text.window(
      capitalised(`${format.day(from)} ${format.date(from)}`),
      format.clock(from),
      format.clock(to)
    )
  }

  function broughtWords(at: string): string {
    const date = new Date(at)
    return `${format.date(date)}, ${format.clock(date)}`
  }
}
