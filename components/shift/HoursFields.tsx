'use client'

import { useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Segmented } from '../ui/Segmented'
import { TextField } from '../ui/TextField'
import { hoursOf, isTooLong } from './orchard-time'

export type ShiftHours = {
  day: string
  from: string
  to: string
  signal: 'horn' | 'whistle' | 'voice'
}

type HoursFieldsProps = {
  value: ShiftHours
  onChange: (value: ShiftHours) => void
  showFaults: boolean
}

/** The day, the hours on the orchard's clock, and how a stop is called. */
export function HoursFields({ value, onChange, showFaults }: HoursFieldsProps) {
  const { things } = useWords()
  const { shift: text } = useLeadWords()
  const zone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const hours = hoursOf(value, zone)
  const change = (part: Partial<ShiftHours>) => onChange({ ...value, ...part })
  return (
    <>
      <div className="fields">
        <TextField
          label={text.date}
          type="date"
          value={value.day}
          onChange={(day) => change({ day })}
          fault={showFaults && !hours && text.writeTimes}
        />
        <TextField
          label={text.from}
          type="time"
          value={value.from}
          onChange={(from) => change({ from })}
        />
        <TextField
          label={text.to}
          type="time"
          value={value.to}
          onChange={(to) => change({ to })}
          fault={showFaults && hours !== null && isTooLong(hours) && text.tooLong}
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
        value={value.signal}
        onChange={(signal) => change({ signal })}
      />
      <p className="small">{things.signal[value.signal]}</p>
    </>
  )
}
