'use client'

import { useState } from 'react'

import { myTree, type Sent, useSelect, useSend } from '@/lib/hooks'
import { BackToWork } from '../layout/BackToWork'
import { CrewScreen } from '../layout/CrewScreen'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { offWhen } from '../ui/button-look'
import { Panel } from '../ui/Panel'
import { GoHome } from './GoHome'

/** Here and at work: a break, or home. */
export function CountedHere({ since }: { since: Date }) {
  const { breakLeave } = useWords()
  const format = useFormat()
  const send = useSend()
  const [sent, setSent] = useState<Sent | null>(null)
  const holdsTree = useSelect((view) => myTree(view).state === 'held')
  return (
    <CrewScreen step={<BackToWork />}>
      <h1>{breakLeave.title}</h1>
      <p className="muted">{breakLeave.hereSince(format.clock(since))}</p>
      <Panel title={breakLeave.takeBreak}>
        <p className="small" id="break-note">
          {holdsTree ? breakLeave.breakNeedsTree : breakLeave.takeBreakNote}
        </p>
        <div className="after-note">
          <WhyNot sent={sent} />
          <Button
            wide
            {...offWhen(holdsTree, 'break-note')}
            onPress={async () => setSent(await send('start_break', {}))}
          >
            {breakLeave.takeBreak}
          </Button>
        </div>
      </Panel>
      <GoHome />
    </CrewScreen>
  )
}
