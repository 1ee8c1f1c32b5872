'use client'

import { stopToAnswer, useSelect } from '@/lib/hooks'
import { StopScreen } from './StopScreen'
import { WorkGoesOn } from './WorkGoesOn'

/** Over every screen of the crew: a stop that wants an answer. Part of the page, so that it is there without signal. */
export function StopWatch() {
  const asked = useSelect(stopToAnswer)
  if (asked === null) return null
  return asked.answer === 'stopped' ? (
    <StopScreen key={asked.stop.id} stop={asked.stop} />
  ) : (
    <WorkGoesOn key={asked.stop.id} stop={asked.stop} />
  )
}
