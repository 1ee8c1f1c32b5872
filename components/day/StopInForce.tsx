'use client'

import type { Stop } from '@/lib/events/state'
import { nameOf, useSelect } from '@/lib/hooks'
import { CrewScreen } from '../layout/CrewScreen'
import { useFormat } from '../layout/use-format'
import { useStartWords } from '../layout/Words'
import { Note } from '../ui/Note'
import { unanswered } from './unanswered'

/** A stop that I have answered: who has not and where they were, and that only a lead lets work go on. */
export function StopInForce({ stop }: { stop: Stop & { id: string } }) {
  const words = useStartWords()
  const format = useFormat()
  const calledBy = useSelect((view) => nameOf(view, stop.calledBy))
  const silent = useSelect((view) => unanswered(view, stop))
  const here = useSelect((view) => Object.keys(view.state?.attendance ?? {}).length)
  const text = words.stop

  return (
    <CrewScreen isAboutStop>
      <h1>{text.inForce}</h1>
      <Note tone="stop" icon="stop" lead={text.calledBy(calledBy)}>
        {text.since(format.clock(new Date(stop.calledAt)))}
      </Note>
      <p className="label">{text.answered(here - silent.length, here)}</p>
      {silent.length > 0 && <p>{text.notAnswered(format.list(silent.map(({ name }) => name)))}</p>}
      <p>{text.waitForLead}</p>
    </CrewScreen>
  )
}
