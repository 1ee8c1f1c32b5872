'use client'

import type { Refusal } from '@/lib/events/answer'
import { ofTheDay } from '@/lib/events/weather'
import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { MeetingPoint } from '../ready/MeetingPoint'
import { ButtonLink } from '../ui/ButtonLink'
import { Note } from '../ui/Note'
import { ConditionsLine } from '../weather/ConditionsLine'
import { HaulInstead } from './HaulInstead'
import { MissingList } from './MissingList'

/** What is missing before any tree, and the way to each. */
export function NotReady({ missing }: { missing: readonly Refusal[] }) {
  const { claim, ready } = useWords()
  const isStopped = missing.some(({ code }) => code === 'stopped')
  // What is the same for everybody is said once, in its own words; nothing of it is theirs to mend.
  const mine = missing.filter(({ code }) => code !== 'stopped' && !ofTheDay.includes(code))
  const isOfTheDay = missing.some(({ code }) => ofTheDay.includes(code))
  return (
    <CrewScreen
      step={
        mine.length > 0 && (
          <ButtonLink kind="call" href={routes.ready()}>
            {ready.title}
          </ButtonLink>
        )
      }
    >
      <h1>{isStopped ? ready.stopped : isOfTheDay ? ready.notNow : ready.title}</h1>
      {isStopped && (
        <Note icon="stop" tone="stop" role="alert">
          {ready.stoppedNote}
        </Note>
      )}
      {isStopped && <MeetingPoint />}
      {isOfTheDay && <ConditionsLine />}
      {mine.length > 0 && (
        <>
          <p>{ready.whyLocked}</p>
          <MissingList label={claim.everythingMissing} missing={mine} />
        </>
      )}
      <HaulInstead />
    </CrewScreen>
  )
}
