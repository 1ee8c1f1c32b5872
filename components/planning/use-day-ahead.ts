'use client'

import { useMemo } from 'react'

import { type DayAhead, dayAhead } from '@/lib/domain/planning/day-ahead'
import { stopInForce, useSelect, useWorkerAnswer, useWorkTimes } from '@/lib/hooks'
import { type Aside, dayAsked } from './day-asked'
import { type ShiftHours, useShiftHours } from './use-shift-hours'
import { whoPrunes } from './who-prunes'

export type DayToCome =
  /** No shift is open, or the times have not come yet. */
  | { state: 'unknown' | 'stopped' | 'over' }
  | ({ state: 'told'; ahead: DayAhead; aside: Aside; people: number } & ShiftHours)

const asking = {
  open: () => new Worker(new URL('./day-worker.ts', import.meta.url)),
  here: dayAhead,
}

/** What can be said of the rest of the day, anew each minute and whenever a tree is done. */
export function useDayAhead(): DayToCome {
  const state = useSelect((view) => view.state)
  const sheet = useSelect((view) => view.sheet)
  const ground = useSelect((view) => view.ground)
  const people = useSelect(whoPrunes)
  const isStopped = useSelect((view) => stopInForce(view)?.block === null)
  const times = useWorkTimes()
  const hours = useShiftHours()
  const read = times.state === 'read' ? times.value : null
  const known = useMemo(
    () =>
      state && sheet && hours && read
        ? dayAsked({ ...hours, state, sheet, ground, times: read, people })
        : null,
    [state, sheet, ground, hours, read, people]
  )
  const told = useWorkerAnswer(asking, known?.asked ?? null)

  // An answer of a minute ago is good enough until the next one comes; of another shift it is not.
  if (!known || !hours || told?.to.day !== hours.shift.id) return { state: 'unknown' }
  if (isStopped) return { state: 'stopped' }
  if (hours.nowMs >= hours.endsMs) return { state: 'over' }
  return { state: 'told', ahead: told.answer, aside: known.aside, people: people.length, ...hours }
}
