'use client'

import { useState } from 'react'

import { useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { Panel } from '../ui/Panel'
import { CallOffShift } from './CallOffShift'
import { ChangeShift } from './ChangeShift'
import { plannedShifts, workRoundOf } from './coming-shift'
import { ScheduleForm } from './ScheduleForm'
import { useHoursWords } from './use-hours-words'

/** All that is planned and not opened, to be changed or called off; and one more is planned. */
export function PlannedShifts({ today }: { today: string }) {
  const { shift: text } = useLeadWords()
  const hoursWords = useHoursWords()
  const planned = useSelect(plannedShifts)
  const round = useSelect(workRoundOf)
  const [isPlanning, setIsPlanning] = useState(false)
  const [doing, setDoing] = useState<{ id: string; what: 'change' | 'call off' } | null>(null)
  const at = planned.find(({ id }) => id === doing?.id)
  const done = () => setDoing(null)

  return (
    <Panel title={text.plannedShifts}>
      <div className="stack">
        {planned.length > 0 && (
          <ul className="list">
            {planned.map((shift) => (
              <li key={shift.id} className="person-row planned-row">
                <span className="item grow">
                  <span className="grow">
                    <b>{hoursWords(shift)}</b>
                    {shift.date < today && <span className="small">{text.wentBy}</span>}
                  </span>
                </span>
                <Button
                  label={text.changeOf(hoursWords(shift))}
                  onPress={() => setDoing({ id: shift.id, what: 'change' })}
                >
                  {text.changeShift}
                </Button>
                <Button
                  label={text.callOffOf(hoursWords(shift))}
                  onPress={() => setDoing({ id: shift.id, what: 'call off' })}
                >
                  {text.callOff}
                </Button>
              </li>
            ))}
          </ul>
        )}
        {round && (
          <Button expanded={isPlanning} onPress={() => setIsPlanning(!isPlanning)}>
            {text.planAnother}
          </Button>
        )}
        {round && isPlanning && (
          <ScheduleForm
            roundId={round.id}
            today={today}
            isNext={false}
            onDone={() => setIsPlanning(false)}
          />
        )}
      </div>
      {at && doing?.what === 'change' && <ChangeShift key={at.id} shift={at} onClose={done} />}
      {at && doing?.what === 'call off' && <CallOffShift key={at.id} shift={at} onClose={done} />}
    </Panel>
  )
}
