'use client'

import { useState } from 'react'

import { type Sent, useSelect, useSend } from '@/lib/hooks'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { useMyDay } from '../tree/my-day'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'

/** Gone home, or not arrived yet: nobody looks for this person. */
export function CountedOut() {
  const { breakLeave, ready } = useWords()
  const send = useSend()
  const { done } = useMyDay()
  const [sent, setSent] = useState<Sent | null>(null)
  const unsent = useSelect((view) => view.unsent.length)
  // Who was briefed today has been here before.
  const wasHere = useSelect((view) => view.state?.briefed[view.me?.personId ?? ''] !== undefined)

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
      <h1>{wasHere ? breakLeave.signedOut : breakLeave.notHere}</h1>
      {!wasHere && <p>{breakLeave.notHereNote}</p>}
      {wasHere && done.length > 0 && <p>{breakLeave.thanks(done.length)}</p>}
      {wasHere && <p>{breakLeave.goodWay}</p>}
      {unsent > 0 && (
        <Note tone="call" icon="kept" lead={breakLeave.unsentFirst(unsent)}>
          {breakLeave.unsentFirstNote}
        </Note>
      )}
    </CrewScreen>
  )
}
