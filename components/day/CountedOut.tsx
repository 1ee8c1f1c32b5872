'use client'

import { useState } from 'react'

import { type Sent, useSelect, useSend } from '@/lib/hooks'
import { MyHours } from '../history/MyHours'
import { CrewScreen } from '../layout/CrewScreen'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { useMyDay } from '../tree/my-day'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'
import { useWentHome } from './use-went-home'

/** Gone home, or not arrived yet: nobody looks for this person. */
export function CountedOut() {
  const { breakLeave, ready } = useWords()
  const send = useSend()
  const { done } = useMyDay()
  const [sent, setSent] = useState<Sent | null>(null)
  const unsent = useSelect((view) => view.unsent.length)
  const format = useFormat()
  const { at: leftAt, ready: isKnown } = useWentHome()
  const wasHere = leftAt !== null

  // A moment, so that nobody who just left reads that they never came.
  if (!isKnown) return <CrewScreen>{null}</CrewScreen>

  return (
    <CrewScreen
      why={<WhyNot sent={sent} />}
      step={
        <Button
          {...(wasHere ? { wide: true } : { kind: 'call' as const })}
          onPress={async () => setSent(await send('arrive', {}))}
        >
          {wasHere ? breakLeave.cameBack : ready.arriveButton}
        </Button>
      }
    >
      <h1>{wasHere ? breakLeave.countedOut(format.clock(leftAt)) : breakLeave.notHere}</h1>
      {!wasHere && <p>{breakLeave.notHereNote}</p>}
      {wasHere && done.length > 0 && <p>{breakLeave.thanks(done.length)}</p>}
      {wasHere && <p>{breakLeave.goodWay}</p>}
      {wasHere && <MyHours />}
      {unsent > 0 && (
        <Note tone="call" icon="kept" lead={breakLeave.unsentFirst(unsent)}>
          {breakLeave.unsentFirstNote}
        </Note>
      )}
    </CrewScreen>
  )
}
