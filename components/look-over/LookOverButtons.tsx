'use client'

import { useState } from 'react'

import type { ReopenReason } from '@/lib/events/state'
import { useDraft, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { List, ListItem } from '../ui/List'
import { TextArea } from '../ui/TextArea'

type LookOverButtonsProps = {
  tree: number
  tag: string
  /** The next step of the screen. */
  isNext?: boolean
}

/** Pass in one tap; reopen in two, with the reason that the pruner reads. */
export function LookOverButtons({ tree, tag, isNext = false }: LookOverButtonsProps) {
  const words = useWords()
  const { lookOver } = useLeadWords()
  const send = useSend()
  const { asked, isAsking, ask } = useAsk()
  const [isReopening, setReopening] = useState(false)
  const draft = useDraft(`reopen|${tree}`, '')
  const note = draft.value.trim().replace(/\s+/g, ' ')
  // The keys of the list are the codes of the command.
  const reasons = Object.keys(words.lookedOver.reasons) as ReopenReason[]

  const reopen = (reason: ReopenReason) =>
    ask(
      send('look_over', { tree, result: 'reopened', reason, note: note === '' ? null : note }),
      () => {
        void draft.drop()
        setReopening(false)
      }
    )

  return (
    <>
      {!isReopening && <AskedNote asked={asked} />}
      <div className="tree-buttons">
        <Button icon="undo" onPress={() => setReopening(true)}>
          {lookOver.reopen}
        </Button>
        <Button
          kind={isNext ? 'call' : 'plain'}
          icon="check"
          state={isAsking ? 'waiting' : 'ready'}
          onPress={() => ask(send('look_over', { tree, result: 'passed' }))}
        >
          {lookOver.pass}
        </Button>
      </div>
      <Dialog
        open={isReopening}
        title={lookOver.reopenTitle(tag)}
        onClose={() => setReopening(false)}
        closeLabel={words.common.close}
      >
        <p className="small">{lookOver.reopenNote}</p>
        <List label={lookOver.reopenTitle(tag)}>
          {reasons.map((reason) => (
            <ListItem
              key={reason}
              title={words.lookedOver.reasons[reason].found}
              note={words.lookedOver.reasons[reason].better}
              onPress={() => void reopen(reason)}
            />
          ))}
        </List>
        <TextArea
          label={lookOver.note}
          hint={lookOver.noteHint}
          value={draft.value}
          maxLength={300}
          onChange={draft.write}
        />
        <AskedNote asked={asked} />
      </Dialog>
    </>
  )
}
