'use client'

import {
  cupDueMs,
  heatDuties,
  isHighHeat,
  isHot,
  isWatched,
  restDueMs,
  waterQuarts,
} from '@/lib/domain/safety/heat-duties'
import { freshReading } from '@/lib/domain/safety/weather'
import { nameOf, openShiftOf, useSelect, type View } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { Facts } from '../ui/Facts'
import { Note } from '../ui/Note'
import { CloseWatch } from './CloseWatch'
import type { Today } from './use-day'

/** What heat asks now: water for all, shade, and in high heat who rests when, by name. */
export function CarePanel({ day }: { day: Today }) {
  const { weather: text } = useLeadWords()
  const format = useFormat()
  const shift = useSelect(openShiftOf)
  const crew = useSelect(crewHere)
  const temperatureC = freshReading(day)?.temperatureC ?? null
  if (!shift) return null

  const isTooHot = temperatureC !== null && isHighHeat(temperatureC)
  const hoursLeft = Math.max(0, Math.ceil((Date.parse(shift.endsAt) - day.nowMs) / 3_600_000))
  const water = format.water(waterQuarts(crew.people, hoursLeft))
  const cup = format.clock(new Date(cupDueMs(Date.parse(shift.startsAt), day.nowMs)))
  const isHotNow = temperatureC !== null && isHot(temperatureC)
  return (
    <div className="stack">
      {hoursLeft > 0 && crew.people > 0 && (
        <p>{text.waterAmount(water, crew.people, format.duration(hoursLeft * 60))}</p>
      )}
      {isHotNow && <p className="verdict-cup">{text.cupAt(cup)}</p>}
      {isTooHot && !isWatched(crew.people, { watching: crew.leads, buddies: false }) && (
        <Note tone="stop" icon="eye">
          {text.notWatched(crew.people, crew.leads)}
        </Note>
      )}
      {isTooHot && <Rests day={day} />}
      <CloseWatch today={day.today} />
      <Facts
        facts={heatDuties(temperatureC).map((duty) => ({
          icon: duty === 'water' ? ('water' as const) : ('check' as const),
          text: text.duty[duty],
        }))}
      />
      <p className="small">{text.careSource}</p>
    </div>
  )
}

/** Whoever has worked longest rests first. */
function Rests({ day }: { day: Today }) {
  const { weather: text } = useLeadWords()
  const { somebody } = useWords().claim
  const format = useFormat()
  const working = useSelect((view) =>
    Object.entries(view.state?.attendance ?? {})
      .filter(([, { state }]) => state === 'here')
      .map(([id, { since, restedAt }]) => ({
        id,
        name: nameOf(view, id),
        since: restedAt ?? since,
      }))
  )
  const due = working
    .map((one) => ({ ...one, dueMs: restDueMs(Date.parse(one.since)) }))
    .toSorted((a, b) => a.dueMs - b.dueMs)
  return (
    <>
      <ul className="rests">
        {due.map(({ id, name, dueMs }) => {
          const time = format.clock(new Date(dueMs))
          const isDue = dueMs <= day.nowMs
          return (
            <li key={id} className={isDue ? 'is-due' : undefined}>
              {(isDue ? text.restNow : text.restDue)(name ?? somebody, time)}
            </li>
          )
        })}
      </ul>
      <p className="small">{text.restFrom}</p>
    </>
  )
}

function crewHere({ state }: View): { people: number; leads: number } {
  const here = Object.keys(state?.attendance ?? {})
  const isLead = (id: string) => ['lead', 'manager'].includes(state?.people[id]?.role ?? '')
  return { people: here.length, leads: here.filter(isLead).length }
}
