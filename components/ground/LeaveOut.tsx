'use client'

import { useId, useState } from 'react'

import { useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { offWhen } from '../ui/button-look'
import { TextField } from '../ui/TextField'
import { Why } from '../ui/Why'

type LeaveOutProps = { trees: readonly number[]; onDone: (words: string) => void }

/** Not in this round, and why; or back again. */
export function LeaveOut({ trees, onDone }: LeaveOutProps) {
  const { ground } = useLeadWords()
  const [isOpen, setIsOpen] = useState(false)
  const [reason, setReason] = useState('')
  const send = useSend()
  const whyId = useId()
  const lacksReason = reason.trim() === ''
  const { asked, isAsking, ask } = useAsk()
  const work = useSelect((view) => view.state?.work)
  const out = trees.filter((tree) => work?.[tree]?.state === 'left_out')
  const inRound = trees.filter((tree) => work?.[tree]?.state !== 'left_out')
  const leaveOut = () =>
    void ask(send('leave_out_trees', { trees: inRound, reason: reason.trim() }), () => {
      setIsOpen(false)
      setReason('')
      onDone(ground.wasLeftOut(inRound.length))
    })
  const bringBack = () =>
    void ask(send('leave_out_trees', { trees: out }), () => onDone(ground.wasBroughtBack))
  return (
    <section className="ground-part">
      {inRound.length > 0 && (
        <Button expanded={isOpen} onPress={() => setIsOpen(!isOpen)}>
          {ground.leaveOut}
        </Button>
      )}
      {out.length > 0 && (
        <Button state={isAsking ? 'waiting' : 'ready'} onPress={bringBack}>
          {ground.bringBack(out.length)}
        </Button>
      )}
      {isOpen && inRound.length > 0 && (
        <>
          <TextField
            label={ground.leaveOutReason}
            hint={ground.leaveOutHint}
            value={reason}
            onChange={setReason}
            maxLength={300}
          />
          <div className="ground-buttons">
            {ground.leaveOutReasons.map((words) => (
              <Button key={words} low onPress={() => setReason(words)}>
                {words}
              </Button>
            ))}
          </div>
          {lacksReason && <Why id={whyId}>{ground.leaveOutReason}</Why>}
          <Button
            {...(isAsking ? { state: 'waiting' } : offWhen(lacksReason, whyId))}
            onPress={leaveOut}
          >
            {ground.leaveOutDo(inRound.length)}
          </Button>
        </>
      )}
      <AskedNote asked={asked} />
    </section>
  )
}
