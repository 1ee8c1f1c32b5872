'use client'

import { openShiftOf, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { LeadScreen } from '../crew/LeadScreen'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import './shift.css'
import { GiveTo } from './GiveTo'
import { SignedList } from './SignedList'
import { TopicsToTell } from './TopicsToTell'

/** A lead gives the briefing: what to tell, who stood there, who has signed. */
export function GiveBriefingScreen() {
  const { refusals } = useWords()
  const { shift: text } = useLeadWords()
  const shift = useSelect(openShiftOf)
  return (
    <LeadScreen here="shift">
      <div className="shift-screen">
        <ButtonLink kind="quiet" icon="left" href={routes.shift()}>
          {text.title}
        </ButtonLink>
        <h1>{text.giveTitle}</h1>
        {!shift && <p>{refusals.shift_not_open({})}</p>}
        {shift && (
          <div className="shift-parts">
            <div className="stack">
              <GiveTo shiftId={shift.id} />
              <SignedList version={shift.briefingVersion} />
            </div>
            <TopicsToTell shiftId={shift.id} />
          </div>
        )}
      </div>
    </LeadScreen>
  )
}
