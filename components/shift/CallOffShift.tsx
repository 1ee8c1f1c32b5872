'use client'

import type { Shift } from '@/lib/events/state'
import { useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { useHoursWords } from './use-hours-words'

type CallOffShiftProps = { shift: Shift & { id: string }; onClose: () => void }

/** Calls a planned shift off, after saying what that does and what it does not. */
export function CallOffShift({ shift, onClose }: CallOffShiftProps) {
  const { common } = useWords()
  const { shift: text } = useLeadWords()
  const send = useSend()
  const hoursWords = useHoursWords()
  const { asked, ask } = useAsk()
  return (
    <Dialog open title={text.callOffTitle} onClose={onClose} closeLabel={common.close}>
      <p>
        <b>{hoursWords(shift)}</b>
      </p>
      <p>{text.callOffNote}</p>
      <AskedNote asked={asked} />
      <Button
        state={asked.state === 'asking' ? 'waiting' : 'ready'}
        onPress={() => ask(send('cancel_shift', { shift: shift.id }), onClose)}
      >
        {text.callOffTitle}
      </Button>
    </Dialog>
  )
}
