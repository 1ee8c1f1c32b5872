'use client'

import { useDraft, useSend } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { TextArea } from '../ui/TextArea'
import { type AboutFlag, FlagForm } from './FlagForm'
import { longestNote } from './longest'

/** A lead has looked: it is no disease. Who reported it learns why. */
export function WithdrawFlag({ flag, tag, onClose }: AboutFlag) {
  const { flags: text } = useLeadWords()
  const send = useSend()
  const draft = useDraft(`withdraw-flag|${flag.id}`, '')
  const note = draft.value
  return (
    <FlagForm
      title={text.withdrawTitle(tag)}
      note={text.withdrawNote}
      lacks={null}
      words={text.withdraw}
      send={() => send('withdraw_flag', { flag: flag.id, note: note.trim() || null })}
      onDone={() => {
        void draft.drop()
        onClose()
      }}
      onClose={onClose}
    >
      <TextArea
        label={text.withdrawWhy}
        value={note}
        onChange={draft.write}
        maxLength={longestNote}
      />
    </FlagForm>
  )
}
