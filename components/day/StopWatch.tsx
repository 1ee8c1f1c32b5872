'use client'

import { Suspense } from 'react'

import { comeDownToSign, keepOutToLeave, stopToAnswer, toLeaveNow, useSelect } from '@/lib/hooks'
import { ComeDownScreen } from './ComeDownScreen'
import { ComeOutScreen } from './ComeOutScreen'
import { LeaveTreeScreen } from './LeaveTreeScreen'
import { StopScreen } from './StopScreen'
import { WorkGoesOn } from './WorkGoesOn'

/**
 * Over every screen of the crew: a stop that wants an answer, a keep-out or weather to come out of, or a
 * briefing for which one comes down. Part of the page, so that it is there without signal.
 */
export function StopWatch() {
  const asked = useSelect(stopToAnswer)
  const keepOut = useSelect(keepOutToLeave)
  const leaving = useSelect(toLeaveNow)
  const down = useSelect(comeDownToSign)
  if (asked?.answer === 'stopped') return <StopScreen key={asked.stop.id} stop={asked.stop} />
  if (keepOut !== null) return <ComeOutScreen key={keepOut.id} flag={keepOut} />
  if (leaving !== null) return <LeaveTreeScreen key={leaving.toldAt} leaving={leaving} />
  if (asked !== null) return <WorkGoesOn key={asked.stop.id} stop={asked.stop} />
  return (
    down && (
      // Its words may still be on their way; the screen below stays as it is.
      <Suspense fallback={null}>
        <ComeDownScreen key={down.version} asked={down} />
      </Suspense>
    )
  )
}
