'use client'

import type { ReactNode } from 'react'

import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { isUnwritten } from '../day/emergency-lines'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { Note } from '../ui/Note'
import { Panel } from '../ui/Panel'
import type { StepState } from '../ui/RowLine'
import { Step, Steps } from '../ui/Steps'
import { BriefingForm } from './BriefingForm'
import { CloseRound } from './CloseRound'
import { nextShiftOf, plannedShifts, workRoundOf } from './coming-shift'
import { JoinLink } from './JoinLink'
import { OpenForm } from './OpenForm'
import { PlannedShifts } from './PlannedShifts'
import { RoundForm } from './RoundForm'
import { ScheduleForm } from './ScheduleForm'
import { useHoursWords } from './use-hours-words'

/** Round, plan, briefing, open: each step is done where it stands. */
export function WayToOpen({ today }: { today: string }) {
  const { common } = useWords()
  const { shift: text, setUp } = useLeadWords()
  const hoursWords = useHoursWords()
  const round = useSelect(workRoundOf)
  const shift = useSelect((view) => nextShiftOf(view, today))
  const hasNoCard = useSelect((view) => view.emergency !== null && isUnwritten(view.emergency))
  const hasPlanned = useSelect((view) => plannedShifts(view).length > 0)
  const isManager = useSelect((view) => view.state?.me.role === 'manager')
  const isBriefingWritten = (shift?.briefingVersion ?? 0) > 0
  const at = !round ? 0 : !shift ? 1 : !isBriefingWritten ? 2 : 3
  const stateOf = (step: number): StepState => (step < at ? 'done' : step === at ? 'now' : 'later')

  const step = (number: number, title: string, says: ReactNode, form: ReactNode) => (
    <Step
      state={stateOf(number)}
      number={number + 1}
      title={title}
      doneWord={common.doneStep}
      heading
    >
      {number < at && says}
      {number === at && form}
    </Step>
  )
  return (
    <>
      <Panel>
        <Steps roomy label={text.steps}>
          {step(
            0,
            text.round,
            round && (
              <>
                <p className="small">
                  {text.roundIs(text.kinds[round.kind], String(round.season))}
                </p>
                {isManager && <CloseRound roundId={round.id} />}
              </>
            ),
            isManager ? <RoundForm today={today} /> : <p>{text.waitsForManager}</p>
          )}
          {step(
            1,
            text.plan,
            shift && <p className="small">{hoursWords(shift)}</p>,
            round && <ScheduleForm roundId={round.id} today={today} isNext />
          )}
          {step(2, text.writeBriefing, null, shift && <BriefingForm shift={shift} isNext />)}
          {step(3, text.open, null, shift && <OpenForm shift={shift} />)}
        </Steps>
      </Panel>
      {hasNoCard && (
        <Note tone="call" icon="aid" lead={setUp.noCardYet}>
          {setUp.noCardNote} {!isManager && text.waitsForManager}
          {isManager && <ButtonLink href={routes.emergency()}>{setUp.toCard}</ButtonLink>}
        </Note>
      )}
      {hasPlanned && <PlannedShifts today={today} />}
      {shift && <JoinLink shiftId={shift.id} />}
    </>
  )
}
