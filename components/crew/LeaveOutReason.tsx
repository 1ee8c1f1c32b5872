'use client'

import { useId, useState } from 'react'

import { Button } from '../ui/Button'
import { offWhen } from '../ui/button-look'
import { Note } from '../ui/Note'
import { TextField } from '../ui/TextField'
import { Why } from '../ui/Why'
import { DealReason } from './DealReason'
import { useLeadWords } from './use-lead-words'
import type { RoundOfTrees } from './use-leave-out'

type LeaveOutReasonProps = { round: RoundOfTrees; onReason: (reason: string) => void }

/** Why trees are not for this round, in words of one's own or in the usual ones; and which of them stay in. */
export function LeaveOutReason({ round, onReason }: LeaveOutReasonProps) {
  const { ground } = useLeadWords()
  const { can, stay, isAsking } = round
  const [reason, setReason] = useState('')
  const whyId = useId()
  const said = reason.trim()
  const staying = new Set(stay.flatMap(({ trees }) => trees)).size
  return (
    <>
      {staying > 0 && (
        <Note icon="lock" role="status" lead={ground.leaveOutStay(staying)}>
          <ul className="not-dealt">
            {stay.map((why) => (
              <DealReason key={why.code} {...why} />
            ))}
          </ul>
        </Note>
      )}
      {can.length > 0 && (
        <>
          <TextField
            label={ground.leaveOutReason}
            hint={ground.leaveOutHint}
            value={reason}
            onChange={setReason}
            maxLength={300}
          />
          <div className="tree-buttons">
            {ground.leaveOutReasons.map((words) => (
              <Button key={words} low onPress={() => setReason(words)}>
                {words}
              </Button>
            ))}
          </div>
          {said === '' && <Why id={whyId}>{ground.leaveOutReason}</Why>}
          <Button
            {...(isAsking ? { state: 'waiting' } : offWhen(said === '', whyId))}
            onPress={() => onReason(said)}
          >
            {ground.leaveOutDo(can.length)}
          </Button>
        </>
      )}
    </>
  )
}
