'use client'

import { keepOutToLeave, stopToAnswer, useSelect } from '@/lib/hooks'
import { ComeOutScreen } from './ComeOutScreen'
import { StopScreen } from './StopScreen'
import { WorkGoesOn } from './WorkGoesOn'

/**
 * Over every screen of the crew: a stop that wants an answer, or a keep-out to come out of. Part of the page,
 * so that it is there without signal.
 */
export function StopWatch() {
  const asked = useSelect(stopToAnswer)
  const keepOut = useSelect(keepOutToLeave)
  if (asked?.answer === 'stopped') return <StopScreen key={asked.stop.id} stop={asked.stop} />
  if (keepOut !== null) return <ComeOutScreen key={keepOut.id} flag={keepOut} />
  return asked && <WorkGoesOn key={asked.stop.id} stop={asked.stop} />
}
