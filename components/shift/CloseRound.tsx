'use client'

import { useState } from 'react'

import { useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords, useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { Note } from '../ui/Note'
import { plannedShifts } from './coming-shift'
import { useHoursWords } from './use-hours-words'

/** Ends a round, after saying what that does: what is planned in it is called off, what is half done stays so. */
export function CloseRound({ roundId }: { roundId: string }) {
  const { common } = useWords()
  const { shift: text, rounds } = useLeadWords()
  const hoursWords = useHoursWords()
  const send = useSend()
  const [isOpen, setIsOpen] = useState(false)
  const planned = useSelect((view) =>
    plannedShifts(view).filter((shift) => shift.roundId === roundId)
  )
  const begun = useSelect(({ state }) =>
    state?.workRoundId === roundId
      ? Object.values(state.work).filter((work) => work.state === 'begun').length
      : 0
  )
  const { asked, ask } = useAsk()
  const callOff = planned.map(({ id }) => id)
  return (
    <>
      <Button onPress={() => setIsOpen(true)}>{text.closeRound}</Button>
      <Dialog
        open={isOpen}
        title={text.closeRound}
        onClose={() => setIsOpen(false)}
        closeLabel={common.close}
      >
        <p>{text.closeRoundNote}</p>
        {begun > 0 && <p>{rounds.closeBegun(begun)}</p>}
        {planned.length > 0 && (
          <Note tone="call" icon="warn" lead={rounds.closePlanned(planned.length)}>
            <ul className="plain-list">
              {planned.map((shift) => (
                <li key={shift.id}>{hoursWords(shift)}</li>
              ))}
            </ul>
            <p>{rounds.closePlannedNote}</p>
          </Note>
        )}
        <AskedNote asked={asked} />
        {planned.length > 0 && <Button onPress={() => setIsOpen(false)}>{rounds.keepOpen}</Button>}
        <Button
          onPress={() =>
            ask(send('close_round', { round: roundId, callOff }), () => setIsOpen(false))
          }
        >
          {planned.length > 0 ? rounds.closeAndCallOff(planned.length) : text.closeRound}
        </Button>
      </Dialog>
    </>
  )
}
