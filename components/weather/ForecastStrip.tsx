'use client'

import type { HourJudged } from '@/lib/domain/planning/windows'
import { useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'

type ForecastStripProps = { days: readonly { day: string; hours: HourJudged[] }[] }

/** A bar an hour, on the clock of a day: tall is go, half is from the ground, a dot is off, a ring is unknown. */
export function ForecastStrip({ days }: ForecastStripProps) {
  const { weather: text } = useLeadWords()
  const format = useFormat()
  const zone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  return (
    <div className="strips">
      {days.map(({ day, hours }) => {
        const noon = new Date(hours[0]?.fromMs ?? 0)
        const name = `${format.day(noon)} ${format.date(noon)}`
        return (
          <div key={day} className="strip-day">
            <p className="label">{name}</p>
            <svg
              viewBox="0 0 288 40"
              role="img"
              aria-label={`${text.stripOf(name)}: ${spoken(hours)}`}
              className="strip"
            >
              {[6, 12, 18].map((hour) => (
                <g key={hour}>
                  <line x1={hour * 12} x2={hour * 12} y1={0} y2={28} className="strip-tick" />
                  <text x={hour * 12} y={39} textAnchor="middle">
                    {hour}
                  </text>
                </g>
              ))}
              {hours.map((hour) => (
                <Bar key={hour.fromMs} at={hourIn(zone, hour.fromMs)} says={hour.says} />
              ))}
            </svg>
          </div>
        )
      })}
      <ul className="strip-legend">
        {(['go', 'ground', 'off', 'unknown'] as const).map((says) => (
          <li key={says}>
            <svg viewBox="0 0 12 28" width={12} height={28} aria-hidden="true" className="strip">
              <Bar at={0} says={says} />
            </svg>
            {text.hourSays[says]}
          </li>
        ))}
      </ul>
    </div>
  )

  /** Runs of the same, as one says them. */
  function spoken(hours: readonly HourJudged[]): string {
    const runs: { from: number; to: number; says: HourJudged['says'] }[] = []
    for (const { fromMs, says } of hours) {
      const last = runs.at(-1)
      if (last?.says === says) last.to = fromMs + 3_600_000
      else runs.push({ from: fromMs, to: fromMs + 3_600_000, says })
    }
    const clock = (ms: number) => format.clock(new Date(ms))
    return runs
      .map(({ from, to, says }) => `${clock(from)}–${clock(to)} ${text.hourSays[says]}`)
      .join(', ')
  }
}

function Bar({ at, says }: { at: number; says: HourJudged['says'] }) {
  const x = at * 12
  switch (says) {
    case 'go':
      return <rect x={x + 1} y={2} width={10} height={26} className="bar-go" />
    case 'ground':
      return <rect x={x + 1} y={15} width={10} height={13} className="bar-ground" />
    case 'off':
      return <circle cx={x + 6} cy={25} r={1.6} className="bar-off" />
    case 'unknown':
      return <circle cx={x + 6} cy={22} r={4} className="bar-unknown" />
  }
}

const formats = new Map<string, Intl.DateTimeFormat>()

function hourIn(timeZone: string, ms: number): number {
  const format =
    formats.get(timeZone) ??
    new Intl.DateTimeFormat('en-US', { timeZone, hour: '2-digit', hourCycle: 'h23' })
  formats.set(timeZone, format)
  return Number(format.format(new Date(ms)))
}
