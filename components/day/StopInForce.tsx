'use client'

import { useState } from 'react'

import type { Stop } from '@/lib/events/state'
import { isLeadView, nameOf, type Sent, useSelect, useSend } from '@/lib/hooks'
import { CrewScreen } from '../layout/CrewScreen'
import { useFormat } from '../layout/use-format'
import { useStartWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'
import { Why } from '../ui/Why'
import { PeopleUnanswered } from './PeopleUnanswered'
import { unanswered } from './unanswered'

/** A stop that I have answered: who has not and where they were, and that only a lead lets work go on. */
export function StopInForce({ stop }: { stop: Stop & { id: string } }) {
  const words = useStartWords()
  const format = useFormat()
  const calledBy = useSelect((view) => nameOf(view, stop.calledBy))
  const isLead = useSelect(isLeadView)
  const silent = useSelect((view) => unanswered(view, stop))
  const here = useSelect((view) => Object.keys(view.state?.attendance ?? {}).length)
  const text = words.stop

  return (
    <CrewScreen
      isAboutStop
      {...(isLead && {
        step: <Resume stop={stop.id} isNext={silent.length === 0} />,
        why: (
          <Why icon={silent.length === 0 ? 'info' : 'warn'}>
            {silent.length === 0 ? text.resumeWhy : text.resumeEarly(silent.length)}
          </Why>
        ),
      })}
    >
      <h1>{text.inForce}</h1>
      <Note tone="stop" icon="stop" lead={text.calledBy(calledBy)}>
        {text.since(format.clock(new Date(stop.calledAt)))}
      </Note>
      <p className="label">{text.answered(here - silent.length, here)}</p>
      {silent.length > 0 && isLead && <PeopleUnanswered stop={stop.id} people={silent} />}
      {silent.length > 0 && !isLead && (
        <p>{text.notAnswered(format.list(silent.map(({ name }) => name)))}</p>
      )}
      {!isLead && <p>{text.waitForLead}</p>}
    </CrewScreen>
  )
}

/** Never the call of the screen while somebody may still be up in a tree. */
function Resume({ stop, isNext }: { stop: string; isNext: boolean }) {
  const words = useStartWords()
  const send = useSend()
  const [sent, setSent] = useState<Sent | null>(null)
  const isAsking = useSelect((view) => view.asking.includes('resume_work'))
  return (
    <div className="grow">
      <WhyNot sent={sent} />
      <Button
        kind={isNext ? 'call' : 'plain'}
        wide
        state={isAsking ? 'waiting' : 'ready'}
        onPress={async () => setSent(await send('resume_work', { stop }))}
      >
        {isAsking ? words.common.asking : words.stop.resume}
      </Button>
    </div>
  )
}
