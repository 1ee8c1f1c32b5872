'use client'

import { useState } from 'react'

import { useDraft, useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Segmented } from '../ui/Segmented'
import { TextField } from '../ui/TextField'
import { hoursOf, isTooLong } from './orchard-time'

type NewShift = { day: string; from: string; to: string; signal: 'horn' | 'whistle' | 'voice' }

type ScheduleFormProps = {
  roundId: string
  today: string
}

/** Plans a shift: the day, the hours on the orchard's clock, and how a stop is called. */
export function ScheduleForm({ roundId, today }: ScheduleFormProps) {
  const { things } = useWords()
  const { shift: text } = useLeadWords()
  const send = useSend()
  const zone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const draft = useDraft<NewShift>(`shift|${roundId}`, {
    day: today,
    from: '09:00',
    to: '13:00',
    signal: 'horn',
  })
  const [wasTried, setWasTried] = useState(false)
  const { asked, ask } = useAsk()
  const shift = draft.value
  const hours = hoursOf(shift, zone)
  const change = (part: Partial<NewShift>) => draft.write({ ...shift, ...part })

  const plan = () => {
    setWasTried(true)
    if (!hours || isTooLong(hours)) return
    const args = { round: roundId, date: shift.day, ...hours, signal: shift.signal }
    void ask(send('schedule_shift', args), () => draft.drop())
  }
  return (
    <div className="stack">
      <p>{text.planTitle}</p>
      <div className="fields">
        <TextField
          label={text.date}
          type="date"
          value={shift.day}
          onChange={(day) => change({ day })}
          fault={wasTried && !hours && text.writeTimes}
        />
        <TextField
          label={text.from}
          type="time"
          value={shift.from}
          onChange={(from) => change({ from })}
        />
        <TextField
          label={text.to}
          type="time"
          value={shift.to}
          onChange={(to) => change({ to })}
          fault={wasTried && hours !== null && isTooLong(hours) && text.tooLong}
        />
      </div>
      <p className="small">{text.inZone(zone)}</p>
      <Segmented
        label={text.signalLabel}
        options={[
          { value: 'horn', label: text.horn },
          { value: 'whistle', label: text.whistle },
          { value: 'voice', label: text.voice },
        ]}
        value={shift.signal}
        onChange={(signal) => change({ signal })}
      />
      <p className="small">{things.signal[shift.signal]}</p>
      <AskedNote asked={asked} />
      <Button kind="call" state={asked.state === 'asking' ? 'waiting' : 'ready'} onPress={plan}>
        {text.plan}
      </Button>
    </div>
  )
}
