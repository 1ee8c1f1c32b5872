'use client'

import { useState } from 'react'

import { type Sent, useSend } from '@/lib/hooks'
import { CrewScreen } from '../layout/CrewScreen'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { GoHome } from './GoHome'

/** Still counted, but nobody expects work. */
export function OnBreak({ since }: { since: Date }) {
  const { breakLeave } = useWords()
  const format = useFormat()
  const send = useSend()
  const [sent, setSent] = useState<Sent | null>(null)
  return (
    <CrewScreen
      why={<WhyNot sent={sent} />}
      step={
        <Button kind="call" onPress={async () => setSent(await send('end_break', {}))}>
          {breakLeave.backToWork}
        </Button>
      }
    >
      <h1>{breakLeave.onBreakTitle}</h1>
      <p>{breakLeave.onBreakSince(format.clock(since))}</p>
      <GoHome />
    </CrewScreen>
  )
}
