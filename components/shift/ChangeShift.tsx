'use client'

import type { Shift } from '@/lib/events/state'
import { useDraft, useSelect, useSend } from '@/lib/hooks'
import { clockIn } from '@/lib/util/clock-in'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { useTries } from '../ui/use-tries'
import { HoursFields, type ShiftHours } from './HoursFields'
import { hoursOf, isTooLong } from './orchard-time'

type ChangeShiftProps = { shift: Shift & { id: string }; onClose: () => void }

/** Another day, other hours, another signal. Its briefing and its join links stay. */
export function ChangeShift({ shift, onClose }: ChangeShiftProps) {
  const { common } = useWords()
  const { shift: text } = useLeadWords()
  const send = useSend()
  const zone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const draft = useDraft<ShiftHours | null>(`change-shift|${shift.id}`, null)
  const { wasTried, tried } = useTries()
  const { asked, ask } = useAsk()
  const now = {
    day: shift.date,
    from: clockIn(zone, shift.startsAt),
    to: clockIn(zone, shift.endsAt),
    signal: shift.signal,
  }
  const written = draft.value ?? now

  const change = () => {
    tried()
    const hours = hoursOf(written, zone)
    if (!hours || isTooLong(hours)) return
    const args = { shift: shift.id, date: written.day, ...hours, signal: written.signal }
    void ask(send('change_shift', args), () => {
      void draft.drop()
      onClose()
    })
  }
  return (
    <Dialog open title={text.changeShiftTitle} onClose={onClose} closeLabel={common.close}>
      <HoursFields value={written} onChange={draft.write} showFaults={wasTried} />
      <p className="small">{text.changeShiftNote}</p>
      <AskedNote asked={asked} />
      <Button kind="call" state={asked.state === 'asking' ? 'waiting' : 'ready'} onPress={change}>
        {text.saveShift}
      </Button>
    </Dialog>
  )
}
