'use client'

import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { ButtonLink } from '../ui/ButtonLink'
import { Panel } from '../ui/Panel'
import { CarePanel } from './CarePanel'
import { DayLightLines } from './DayLightLines'
import { LatestReading } from './LatestReading'
import { TodayVerdict } from './TodayVerdict'
import { useDay } from './use-day'
import { useSpeciesToday } from './use-species-today'

/** On the shift page: today's verdict with its reasons, light, water and rest, and the way to write weather down. */
export function ShiftWeather() {
  const { weather: text } = useLeadWords()
  const day = useDay()
  const species = useSpeciesToday()
  if (day === null || species.length === 0) return null
  return (
    <Panel title={text.today}>
      <div className="stack">
        <LatestReading day={day} />
        <ButtonLink icon="sun" href={routes.weather()}>
          {text.now}
        </ButtonLink>
        <TodayVerdict day={day} species={species} />
        <DayLightLines day={day} />
        <CarePanel day={day} />
      </div>
    </Panel>
  )
}
