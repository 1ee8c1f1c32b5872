'use client'

import type { Refusal } from '@/lib/events/answer'
import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { Note } from '../ui/Note'
import { HaulInstead } from './HaulInstead'
import { MissingList } from './MissingList'

/** What is missing before any tree, and the way to each. */
export function NotReady({ missing }: { missing: readonly Refusal[] }) {
  const { claim, ready } = useWords()
  const isStopped = missing.some(({ code }) => code === 'stopped')
  return (
    <CrewScreen
      step={
        <ButtonLink kind="call" href={routes.ready()}>
          {ready.title}
        </ButtonLink>
      }
    >
      <h1>{isStopped ? ready.stopped : ready.title}</h1>
      {isStopped && (
        <Note icon="stop" tone="stop" role="alert">
          {ready.stoppedNote}
        </Note>
      )}
      <p>{ready.whyLocked}</p>
      <MissingList label={claim.everythingMissing} missing={missing} />
      <HaulInstead />
    </CrewScreen>
  )
}
