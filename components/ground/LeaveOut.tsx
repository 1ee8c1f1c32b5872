'use client'

import { useState } from 'react'

import { AskedNote } from '../crew/AskedNote'
import { LeaveOutReason } from '../crew/LeaveOutReason'
import { useLeadWords } from '../crew/use-lead-words'
import { useLeaveOut } from '../crew/use-leave-out'
import { Button } from '../ui/Button'

type LeaveOutProps = { trees: readonly number[]; onDone: (words: string) => void }

/** Not in this round, and why; or back again. */
export function LeaveOut({ trees, onDone }: LeaveOutProps) {
  const { ground } = useLeadWords()
  const [isOpen, setIsOpen] = useState(false)
  const round = useLeaveOut(trees)
  const { out, can, stay, asked, isAsking } = round
  const canOpen = can.length + stay.length > 0
  return (
    <section className="ground-part">
      {canOpen && (
        <Button expanded={isOpen} onPress={() => setIsOpen(!isOpen)}>
          {ground.leaveOut}
        </Button>
      )}
      {out.length > 0 && (
        <Button
          state={isAsking ? 'waiting' : 'ready'}
          onPress={() => round.bringBack((count) => onDone(ground.wasBroughtBack(count)))}
        >
          {ground.bringBack(out.length)}
        </Button>
      )}
      {isOpen && canOpen && (
        <LeaveOutReason
          round={round}
          onReason={(reason) =>
            round.leaveOut(reason, (count) => {
              setIsOpen(false)
              onDone(ground.wasLeftOut(count))
            })
          }
        />
      )}
      <AskedNote asked={asked} />
    </section>
  )
}
