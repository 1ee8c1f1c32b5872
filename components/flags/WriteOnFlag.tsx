'use client'

import { useDraft, useSend } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { TextArea } from '../ui/TextArea'
import { type AboutFlag, FlagForm } from './FlagForm'
import { longestNote } from './longest'

/** Who was rung, when to look again: what the next lead wants to know. */
export function WriteOnFlag({ flag, tag, onClose }: AboutFlag) {
  const { flags: text } = useLeadWords()
  const send = useSend()
  const draft = useDraft(`write-on-flag|${flag.id}`, '')
  const note = draft.value.trim()
  return (
    <FlagForm
      title={text.writeTitle(tag)}
      note={text.writeNote}
      lacks={note === '' ? text.writeFirst : null}
      words={text.write}
      send={() => send('follow_up_flag', { flag: flag.id, note })}
      onDone={() => {
        void draft.drop()
        onClose()
      }}
      onClose={onClose}
    >
      <TextArea
        label={text.writeWords}
        hint={text.noteHint}
        value={draft.value}
        onChange={draft.write}
        maxLength={longestNote}
      />
    </FlagForm>
  )
}
