'use client'

import { useBriefing, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { BriefingPages } from './BriefingPages'
import { nextShift } from './use-ready'

/** The briefing of the day. A person gives it; the phone keeps what was said, and who signed. */
export function BriefingScreen() {
  const { briefing } = useWords()
  const shift = useSelect((view) => nextShift(view)?.id ?? null)
  const reading = useBriefing(shift)

  if (shift === null) return <NoBriefing says={briefing.noShift} />
  if (reading.state === 'reading') return <NoBriefing says={briefing.reading} />
  if (reading.state === 'failed') return <NoBriefing says={briefing.notRead} />
  if (reading.value === null) return <NoBriefing says={briefing.none} />
  // A version that is written meanwhile is heard from its first topic.
  return <BriefingPages key={reading.value.version} briefing={reading.value} />
}

function NoBriefing({ says }: { says: string }) {
  const { briefing, common } = useWords()
  return (
    <CrewScreen
      step={
        <ButtonLink wide href={routes.ready()}>
          {common.back}
        </ButtonLink>
      }
    >
      <h1>{briefing.title}</h1>
      <p role="status">{says}</p>
    </CrewScreen>
  )
}
