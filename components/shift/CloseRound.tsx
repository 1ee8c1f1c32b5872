'use client'

import { useState } from 'react'

import { useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'

/** Ends a round, after saying what that does; the next one begins with every tree unpruned. */
export function CloseRound({ roundId }: { roundId: string }) {
  const { common } = useWords()
  const { shift: text } = useLeadWords()
  const send = useSend()
  const [isOpen, setIsOpen] = useState(false)
  const { asked, ask } = useAsk()
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
        <AskedNote asked={asked} />
        <Button
          onPress={() => ask(send('close_round', { round: roundId }), () => setIsOpen(false))}
        >
          {text.closeRound}
        </Button>
      </Dialog>
    </>
  )
}
