'use client'

import { useState } from 'react'

import { useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { AskedNote } from './AskedNote'
import { LeaveOutReason } from './LeaveOutReason'
import type { Dealt } from './use-dealing'
import { useLeadWords } from './use-lead-words'
import { useLeaveOut } from './use-leave-out'

type NotThisRoundProps = { trees: readonly number[]; onDone: (what: Dealt) => void }

/** A lead finds wet ground or a nest: these trees are not for this round, and why; or back into it. */
export function NotThisRound({ trees, onDone }: NotThisRoundProps) {
  const { common } = useWords()
  const { ground } = useLeadWords()
  const [isOpen, setIsOpen] = useState(false)
  const hasRound = useSelect((view) => (view.state?.workRoundId ?? null) !== null)
  const round = useLeaveOut(trees)
  const { out, asked, isAsking } = round
  if (!hasRound) return null
  return (
    <>
      {out.length < trees.length && (
        <Button icon="minus" onPress={() => setIsOpen(true)}>
          {ground.leaveOut}
        </Button>
      )}
      {out.length > 0 && (
        <Button
          icon="undo"
          state={isAsking ? 'waiting' : 'ready'}
          onPress={() => round.bringBack((count) => onDone({ kind: 'brought_back', count }))}
        >
          {ground.bringBack(out.length)}
        </Button>
      )}
      {!isOpen && <AskedNote asked={asked} />}
      <Dialog
        kind="sheet"
        open={isOpen}
        title={ground.leaveOut}
        onClose={() => setIsOpen(false)}
        closeLabel={common.close}
      >
        <div className="stack">
          <LeaveOutReason
            round={round}
            onReason={(reason) =>
              round.leaveOut(reason, (count) => {
                setIsOpen(false)
                onDone({ kind: 'left_out', count })
              })
            }
          />
          <AskedNote asked={asked} />
        </div>
      </Dialog>
    </>
  )
}
