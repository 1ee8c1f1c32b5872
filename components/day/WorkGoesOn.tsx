'use client'

import { useState } from 'react'

import type { Stop } from '@/lib/events/state'
import { type Sent, useSend } from '@/lib/hooks'
import { useStartWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { StopDialog } from './StopDialog'

/** After a stop each person says that they heard that work goes on, before the next claim. */
export function WorkGoesOn({ stop }: { stop: Stop & { id: string } }) {
  const words = useStartWords()
  const send = useSend()
  const [sent, setSent] = useState<Sent | null>(null)
  return (
    <StopDialog tone="goes-on" title={words.stop.goesOnTitle}>
      <p>{words.stop.goesOnWhy}</p>
      <div className="stack">
        <WhyNot sent={sent} />
        <Button
          kind="call"
          wide
          onPress={async () =>
            setSent(await send('answer_stop', { stop: stop.id, answer: 'resumed' }))
          }
        >
          {words.stop.goesOnAnswer}
        </Button>
      </div>
    </StopDialog>
  )
}
