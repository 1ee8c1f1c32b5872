'use client'

import { useState } from 'react'

import { briefedOf } from '@/lib/events/look-ups'
import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { BriefingPages } from './BriefingPages'
import { nextShift } from './use-ready'
import { useWhatIsNew } from './use-what-is-new'

/** The briefing of the day. A person gives it; the phone keeps what was said, and who signed. */
export function BriefingScreen() {
  const { briefing } = useWords()
  const shift = useSelect((view) => nextShift(view)?.id ?? null)
  const signed = useSelect((view) =>
    view.state && view.me ? briefedOf(view.state, view.me.personId).signedVersion : 0
  )
  const newest = useSelect((view) => nextShift(view)?.briefingVersion ?? 0)
  // Signing this version now does not turn its pages back.
  const of = `${shift}|${newest}`
  const [signedBefore, setSignedBefore] = useState({ of, signed })
  if (signedBefore.of !== of) setSignedBefore({ of, signed })
  const isNew = useWhatIsNew(shift, signedBefore.signed)

  if (shift === null) return <NoBriefing says={briefing.noShift} />
  if (isNew.state === 'reading') return <NoBriefing says={briefing.reading} />
  if (isNew.state === 'failed') return <NoBriefing says={briefing.notRead} />
  if (isNew.briefing === null) return <NoBriefing says={briefing.none} />
  const { version } = isNew.briefing
  // A version that is written meanwhile is heard from its first page.
  return (
    <BriefingPages
      key={version}
      briefing={isNew.briefing}
      changes={isNew.changes}
      before={signedBefore.signed}
    />
  )
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
