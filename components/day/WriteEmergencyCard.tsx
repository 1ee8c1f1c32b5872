'use client'

import { useState } from 'react'

import { emergencyNumberIn } from '@/lib/domain/safety/emergency-number'
import { useDraft, useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords, useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { TextArea } from '../ui/TextArea'
import { TextField } from '../ui/TextField'
import { type EmergencyLine, emergencyLines } from './emergency-lines'

type Card = Partial<Record<EmergencyLine, string>>

const inWords = emergencyLines.filter((line) => line !== 'number')

const longestLine = 500

/** The manager writes what everybody reads when somebody is hurt. */
export function WriteEmergencyCard() {
  const { common, help } = useWords()
  const { setUp } = useLeadWords()
  const send = useSend()
  const card: Card | null = useSelect((view) => view.emergency)
  const proposed = useSelect(({ state }) => state && emergencyNumberIn(state.orchard.timeZone))
  const draft = useDraft<Card | null>('emergency-card', null)
  const [isOpen, setIsOpen] = useState(false)
  const { asked, isAsking, ask } = useAsk()
  const written = draft.value ?? card ?? {}
  const write = (part: Card) => draft.write({ ...written, ...part })

  const save = () =>
    ask(send('change_orchard', { emergency: written }), () => {
      void draft.writeNow(null)
      setIsOpen(false)
    })
  return (
    <>
      {/* Of a card that is not here yet nothing would be known, and all of it written over. */}
      {card !== null && (
        <Button icon="edit" onPress={() => setIsOpen(true)}>
          {setUp.writeCard}
        </Button>
      )}
      <Dialog
        open={isOpen}
        title={setUp.writeCard}
        onClose={() => setIsOpen(false)}
        closeLabel={common.close}
      >
        <p className="small">{setUp.cardNote}</p>
        <TextField
          label={help.number}
          hint={setUp.cardHints.number(proposed?.number ?? null)}
          type="tel"
          autoComplete="off"
          maxLength={20}
          value={written.number ?? ''}
          onChange={(number) => write({ number })}
        />
        {inWords.map((line) => (
          <TextArea
            key={line}
            rows={2}
            label={help[line]}
            hint={setUp.cardHints[line]}
            value={written[line] ?? ''}
            maxLength={longestLine}
            onChange={(text) => write({ [line]: text })}
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
