'use client'

import { useCameIn } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { faultSentence } from '@/lib/text/fault'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { CameInVisit } from './CameInVisit'
import { HandedIn } from './HandedIn'
import { LeadScreen } from './LeadScreen'
import { useLeadWords } from './use-lead-words'

/** Work that came late, without a claim or from a phone that was put out: kept, and a lead looks at it. */
export function CameInScreen() {
  const words = useWords()
  const { cameIn: text, people } = useLeadWords()
  const read = useCameIn()
  return (
    <LeadScreen here="people">
      <div className="stack came-in">
        <ButtonLink kind="quiet" icon="left" href={routes.people()}>
          {people.back}
        </ButtonLink>
        <h1>{text.title}</h1>
        <p>{text.note}</p>
        {read.state === 'reading' && <p role="status">{words.common.asking}</p>}
        {read.state === 'failed' && <p>{faultSentence(words, { fault: read.fault })}</p>}
        {read.state === 'read' && (
          <>
            {read.value.handIns.map((handIn) => (
              <HandedIn key={handIn.id} handIn={handIn} />
            ))}
            <section className="people-group" aria-label={text.work}>
              <h2>{text.work}</h2>
              {read.value.visits.length === 0 && <p>{text.noWork}</p>}
              <ul className="list">
                {read.value.visits.map((visit) => (
                  <CameInVisit key={visit.id} visit={visit} />
                ))}
              </ul>
            </section>
          </>
        )}
      </div>
    </LeadScreen>
  )
}
