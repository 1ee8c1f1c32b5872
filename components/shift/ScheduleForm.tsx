'use client'

import { useDraft, useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { useTries } from '../ui/use-tries'
import { HoursFields, type ShiftHours } from './HoursFields'
import { hoursOf, isTooLong } from './orchard-time'

type ScheduleFormProps = {
  roundId: string
  today: string
  /** The next step of the screen; otherwise another one holds the apricot. */
  isNext: boolean
  onDone?: () => void
}

/** Plans a shift. */
export function ScheduleForm({ roundId, today, isNext, onDone }: ScheduleFormProps) {
  const { shift: text } = useLeadWords()
  const send = useSend()
  const zone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const draft = useDraft<ShiftHours>(`shift|${roundId}`, {
    day: today,
    from: '09:00',
    to: '13:00',
    signal: 'horn',
  })
  const { wasTried, tried } = useTries()
  const { asked, ask } = useAsk()

  const plan = () => {
    tried()
    const { day, signal } = draft.value
    const hours = hoursOf(draft.value, zone)
    if (!hours || isTooLong(hours)) return
    void ask(send('schedule_shift', { round: roundId, date: day, ...hours, signal }), () => {
      void draft.drop()
      onDone?.()
    })
  }
  return (
    <div className="stack">
      <p>{text.planTitle}</p>
      <HoursFields value={draft.value} onChange={draft.write} showFaults={wasTried} />
      <AskedNote asked={asked} />
      <Button
        kind={isNext ? 'call' : 'plain'}
        state={asked.state === 'asking' ? 'waiting' : 'ready'}
        onPress={plan}
      >
        {text.plan}
      </Button>
    </div>
  )
}
