'use client'

import { useShiftRecord } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useLeadWords } from '../layout/Words'
import { DayRecord } from '../shift/DayRecord'
import '../shift/shift.css'
import { Button } from '../ui/Button'
import { Room } from './Room'
import { useDays } from './use-days'

/** The record of one shift of the past, to read and to print. */
export function ShiftRecordScreen({ id }: { id: string }) {
  const { shifts: text, hours } = useLeadWords()
  const { day } = useDays()
  const reading = useShiftRecord(id)
  const date = reading.state === 'read' ? reading.value?.date : undefined
  return (
    <Room
      title={date === undefined ? text.title : text.recordOf(day(date))}
      back={{ href: routes.shifts(), word: text.back }}
      forLeads
    >
      <DayRecord shiftId={id} />
      <div className="screen-only">
        <Button icon="print" onPress={() => window.print()}>
          {hours.print}
        </Button>
      </div>
    </Room>
  )
}
