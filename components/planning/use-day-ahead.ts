'use client'

import { useEffect, useMemo, useState } from 'react'

import { type DayAhead, type DayAsked, dayAhead } from '@/lib/domain/planning/day-ahead'
import { openShiftOf, stopInForce, useNow, useSelect, useWorkTimes } from '@/lib/hooks'
import { askWorker } from '@/lib/util/ask-worker'
import { useDay } from '../weather/use-day'
import { type Aside, dayAsked } from './day-asked'
import { whoPrunes } from './who-prunes'

export type DayToCome =
  /** No shift is open, or the times have not come yet. */
  | { state: 'unknown' | 'stopped' | 'over' }
  | {
      state: 'told'
      ahead: DayAhead
      aside: Aside
      people: number
      nowMs: number
      endsMs: number
      isLight: boolean
    }

const asking = {
  open: () => new Worker(new URL('./day-worker.ts', import.meta.url)),
  here: dayAhead,
}

/** What can be said of the rest of the day, anew each minute and whenever a tree is done. */
export function useDayAhead(): DayToCome {
  const state = useSelect((view) => view.state)
  const sheet = useSelect((view) => view.sheet)
  const ground = useSelect((view) => view.ground)
  const shift = useSelect(openShiftOf)
  const people = useSelect(whoPrunes)
  const isStopped = useSelect((view) => stopInForce(view)?.block === null)
  const light = useDay()?.light
  const times = useWorkTimes()
  const now = useNow(60_000)

  const endOfShift = shift ? Date.parse(shift.endsAt) : 0
  const dark = light?.sun.state === 'rises' ? light.sun.times.to : endOfShift
  // Whoever begins after sunset brings light.
  const isLight = dark < endOfShift && shift !== null && dark > Date.parse(shift.startsAt)
  const endsMs = isLight ? dark : endOfShift
  const nowMs = now?.getTime() ?? 0
  const read = times.state === 'read' ? times.value : null
  const known = useMemo(
    () =>
      state && sheet && shift && read && nowMs > 0
        ? dayAsked({ state, sheet, ground, shift, times: read, people, nowMs, endsMs })
        : null,
    [state, sheet, ground, shift, read, people, nowMs, endsMs]
  )
  const asked = known?.asked ?? null
  const [answer, setAnswer] = useState<{ to: DayAsked; ahead: DayAhead } | null>(null)
  useEffect(() => {
    if (!asked) return
    const callOff = new AbortController()
    void askWorker(asking, asked, callOff.signal).then((ahead) => {
      if (ahead) setAnswer({ to: asked, ahead })
    })
    return () => callOff.abort()
  }, [asked])

  if (!known || !answer) return { state: 'unknown' }
  if (isStopped) return { state: 'stopped' }
  if (nowMs >= endsMs) return { state: 'over' }
  const { ahead } = answer
  return { state: 'told', ahead, aside: known.aside, people: people.length, nowMs, endsMs, isLight }
}
