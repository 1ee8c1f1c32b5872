'use client'

import { useState } from 'react'

import { type RoundRead, useSelect, useSend } from '@/lib/hooks'
import { capitalised, speciesWords } from '@/lib/text/species'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useFormat } from '../layout/use-format'
import { useLeadWords, useWords } from '../layout/Words'
import { CloseRound } from '../shift/CloseRound'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { useDays } from './use-days'

/** One round: when, which trees, how far it came; a manager closes it, or opens it again. */
export function RoundRow({ round }: { round: RoundRead }) {
  const words = useWords()
  const { rounds: text, shift } = useLeadWords()
  const format = useFormat()
  const { day, dayOf } = useDays()
  const isManager = useSelect((view) => view.state?.me.role === 'manager')
  const isWorkedIn = useSelect((view) => view.state?.workRoundId === round.round)
  const { closedAt, done, begun, leftOut, held, planned } = round
  const name = shift.roundIs(shift.kinds[round.kind], String(round.season))
  const species = round.species.map((kind) => capitalised(speciesWords(words, kind).many))

  return (
    <li className="room-row">
      <span className="grow">
        <b>{name}</b> {isWorkedIn && <span className="tag is-line">{text.worksHere}</span>}
        <span className="small">{text.days(day(round.from), day(round.to))}</span>
        <span className="small">{format.list(species)}</span>
        <span className="small">
          {[
            closedAt === null ? text.ofTrees(done, round.trees) : text.doneTrees(done),
            begun > 0 && text.begun(begun),
            leftOut > 0 && text.leftOut(leftOut),
            held > 0 && text.held(held),
            planned > 0 && text.planned(planned),
            closedAt && text.closedOn(dayOf(closedAt)),
          ]
            .filter(Boolean)
            .join(', ')}
        </span>
      </span>
      {isManager && closedAt === null && <CloseRound roundId={round.round} />}
      {isManager && closedAt !== null && <ReopenRound id={round.round} name={name} />}
    </li>
  )
}

function ReopenRound({ id, name }: { id: string; name: string }) {
  const { common } = useWords()
  const { rounds: text } = useLeadWords()
  const send = useSend()
  const [isOpen, setIsOpen] = useState(false)
  const { asked, ask } = useAsk()
  return (
    <>
      <Button label={text.reopenOf(name)} onPress={() => setIsOpen(true)}>
        {text.reopen}
      </Button>
      <Dialog
        open={isOpen}
        title={text.reopenTitle}
        onClose={() => setIsOpen(false)}
        closeLabel={common.close}
      >
        <p>{name}</p>
        <p>{text.reopenNote}</p>
        <AskedNote asked={asked} />
        <Button onPress={() => ask(send('reopen_round', { round: id }), () => setIsOpen(false))}>
          {text.reopen}
        </Button>
      </Dialog>
    </>
  )
}
