'use client'

import { useState } from 'react'

import type { Call } from '@/lib/events/state'
import { useDraft, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Dialog } from '../ui/Dialog'
import { TextArea } from '../ui/TextArea'
import { useCallTitle } from './call-title'

type EndCallProps = {
  call: Pick<Call, 'kind' | 'calledBy' | 'subject'> & { id: string }
  onClose: () => void
}

const longestOutcome = 300

/** Ends a call, with what came of it for who likes. After an injury it proposes an incident, and writes none by itself. */
export function EndCall({ call, onClose }: EndCallProps) {
  const { common } = useWords()
  const { calls: text } = useLeadWords()
  const titleOf = useCallTitle()
  const send = useSend()
  const draft = useDraft(`end-call|${call.id}`, '')
  const { asked, ask } = useAsk()
  const [isOver, setOver] = useState(false)
  const outcome = draft.value.trim() || null

  const end = () =>
    void ask(send('end_call', { call: call.id, outcome }), () => {
      void draft.drop()
      if (call.kind === 'injury') setOver(true)
      else onClose()
    })

  return (
    <Dialog
      open
      title={isOver ? text.ended1 : text.endTitle(titleOf(call))}
      onClose={onClose}
      closeLabel={common.close}
    >
      {isOver ? (
        <div className="stack">
          <p>{text.propose}</p>
          <ButtonLink kind="call" wide href={routes.calls(call.id)}>
            {text.writeNow}
          </ButtonLink>
          <Button wide onPress={onClose}>
            {text.notNow}
          </Button>
        </div>
      ) : (
        <div className="stack">
          <TextArea
            label={text.outcomeLabel}
            hint={text.outcomeHint}
            value={draft.value}
            maxLength={longestOutcome}
            onChange={draft.write}
          />
          <AskedNote asked={asked} />
          <Button kind="call" wide onPress={end}>
            {text.end}
          </Button>
        </div>
      )}
    </Dialog>
  )
}
