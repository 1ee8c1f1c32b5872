'use client'

import { useState } from 'react'

import { useDraft, useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords, useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { TextArea } from '../ui/TextArea'

const lines = ['call', 'where', 'access', 'first_aid', 'meeting_point'] as const
type Card = Partial<Record<(typeof lines)[number], string>>

const longestLine = 500

/** The manager writes what everybody reads when somebody is hurt. */
export function WriteEmergencyCard() {
  const { common, help } = useWords()
  const { setUp } = useLeadWords()
  const send = useSend()
  const card: Card = useSelect((view) => view.state?.orchard.emergency ?? {})
  const draft = useDraft<Card | null>('emergency-card', null)
  const [isOpen, setIsOpen] = useState(false)
  const { asked, isAsking, ask } = useAsk()
  const written = draft.value ?? card

  const save = () =>
    ask(send('change_orchard', { emergency: written }), () => {
      void draft.writeNow(null)
      setIsOpen(false)
    })
  return (
    <>
      <Button icon="edit" onPress={() => setIsOpen(true)}>
        {setUp.writeCard}
      </Button>
      <Dialog
        open={isOpen}
        title={setUp.writeCard}
        onClose={() => setIsOpen(false)}
        closeLabel={common.close}
      >
        <p className="small">{setUp.cardNote}</p>
        {lines.map((line) => (
          <TextArea
            key={line}
            rows={2}
            label={help[line]}
            hint={setUp.cardHints[line]}
            value={written[line] ?? ''}
            maxLength={longestLine}
            onChange={(text) => draft.write({ ...written, [line]: text })}
          />
        ))}
        <AskedNote asked={asked} />
        <Button kind="call" state={isAsking ? 'waiting' : 'ready'} onPress={save}>
          {setUp.saveCard}
        </Button>
      </Dialog>
    </>
  )
}
