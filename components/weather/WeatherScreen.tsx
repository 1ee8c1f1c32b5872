'use client'

import { openShiftOf, useSelect } from '@/lib/hooks'
import { LeadScreen } from '../crew/LeadScreen'
import { useLeadWords } from '../crew/use-lead-words'
import { Panel } from '../ui/Panel'
import { CarePanel } from './CarePanel'
import { DayLightLines } from './DayLightLines'
import { ExceptionList } from './ExceptionList'
import { ForecastPanel } from './ForecastPanel'
import { LatestReading } from './LatestReading'
import { TodayVerdict } from './TodayVerdict'
import { useDay } from './use-day'
import { useSpeciesToday } from './use-species-today'
import './weather.css'
import { WriteWeather } from './WriteWeather'

/** Written down in ten seconds on the left; what follows from it on the right. */
export function WeatherScreen() {
  const { weather: text } = useLeadWords()
  const day = useDay()
  const species = useSpeciesToday()
  const isOpen = useSelect((view) => openShiftOf(view) !== null)
  return (
    <LeadScreen here="shift">
      <div className="weather-screen">
        <h1>{text.title}</h1>
        {day && (
          <div className="weather-parts">
            <div className="stack">
              <Panel title={text.now}>
                <div className="stack">
                  <LatestReading day={day} />
                  <WriteWeather isCalled />
                </div>
              </Panel>
            </div>
            <div className="stack">
              <Panel title={text.today}>
                <TodayVerdict day={day} species={species} />
              </Panel>
              {isOpen && (
                <Panel title={text.care}>
                  <CarePanel day={day} />
                </Panel>
              )}
              <Panel title={text.light}>
                <DayLightLines day={day} />
              </Panel>
              <Panel title={text.coming}>
                <ForecastPanel day={day} species={species} />
              </Panel>
              <Panel title={text.allExceptions}>
                <ExceptionList />
              </Panel>
            </div>
          </div>
        )}
      </div>
    </LeadScreen>
  )
}
