'use client'

import { useState } from 'react'

import type { Shift } from '@/lib/events/state'
import { useNow, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Panel } from '../ui/Panel'
import { ShiftWeather } from '../weather/ShiftWeather'
import { BriefingForm } from './BriefingForm'
import { countSigned, crewToBrief } from './briefed'
import { CloseShift } from './CloseShift'
import { DayRecord } from './DayRecord'
import { JoinLink } from './JoinLink'
import { OffToday } from './OffToday'
import { OnPaper } from './OnPaper'
import { PlannedShifts } from './PlannedShifts'
import { useHoursWords } from './use-hours-words'

/** While the shift is open: briefing, the join link, what is off, and in the end closing it. */
export function DuringShift({ shift, today }: { shift: Shift & { id: string }; today: string }) {
  const { shift: text, record, brushRows, plan } = useLeadWords()
  const hoursWords = useHoursWords()
  const now = useNow(60_000)
  const unbriefed = useSelect((view) => crewToBrief(view).length)
  const signed = useSelect(countSigned)
  const [isWriting, setIsWriting] = useState(false)
  const [isCounting, setIsCounting] = useState(false)
  const isOver = now !== null && now.getTime() > Date.parse(shift.endsAt)
  const briefNext = unbriefed > 0 && !isOver

  return (
    <>
      <p className="muted">{hoursWords(shift)}</p>
      <div className="shift-parts">
        <div className="stack">
          <Panel title={text.giveBriefing}>
            <div className="stack">
              <p>{text.signedCount(signed.signed, signed.here)}</p>
              <ButtonLink kind={briefNext ? 'call' : 'plain'} href={routes.giveBriefing()}>
                {text.giveBriefing}
              </ButtonLink>
              <Button expanded={isWriting} onPress={() => setIsWriting(!isWriting)}>
                {text.changeBriefing}
              </Button>
              {isWriting && (
                <BriefingForm shift={shift} isNext={false} onDone={() => setIsWriting(false)} />
              )}
            </div>
          </Panel>
          <ButtonLink icon="map" href={routes.plan()}>
            {plan.link}
          </ButtonLink>
          <ShiftWeather />
          <OffToday shift={shift} />
          <OnPaper />
          <ButtonLink icon="heap" href={routes.brush()}>
            {brushRows.toRows}
          </ButtonLink>
        </div>
        <div className="stack">
          <JoinLink shiftId={shift.id} />
          <CloseShift shiftId={shift.id} isNext={isOver} />
          <PlannedShifts today={today} />
          {isCounting ? (
            <DayRecord shiftId={shift.id} />
          ) : (
            <Button onPress={() => setIsCounting(true)}>{record.show}</Button>
          )}
        </div>
      </div>
    </>
  )
}
