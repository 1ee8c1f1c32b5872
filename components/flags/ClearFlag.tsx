'use client'

import { useDraft, useNow, useSelect, useSend } from '@/lib/hooks'
import { dayIn } from '@/lib/util/day-in'
import { useLeadWords } from '../crew/use-lead-words'
import { TextArea } from '../ui/TextArea'
import { TextField } from '../ui/TextField'
import { type AboutFlag, FlagForm } from './FlagForm'
import { longestName, longestNote } from './longest'

/** The arborist has been: what was done, by whom, on which day. A manager's. */
export function ClearFlag({ flag, tag, onClose }: AboutFlag) {
  const { flags: text } = useLeadWords()
  const send = useSend()
  const today = useToday()
  const draft = useDraft(`clear-flag|${flag.id}`, { done: '', by: '', on: '' })
  const { done, by, on } = draft.value
  // The day is known; who was there changes it.
  const day = on || today
  const change = (part: Partial<typeof draft.value>) => draft.write({ ...draft.value, ...part })
  const isWhole = done.trim() !== '' && by.trim() !== '' && day !== ''
  return (
    <FlagForm
      title={text.clearTitle(tag)}
      note={text.clearNote}
      lacks={!isWhole ? text.clearAll : day > today ? text.clearLater : null}
      words={text.clear}
      send={() =>
        send('clear_flag', { flag: flag.id, done: done.trim(), doneBy: by.trim(), doneOn: day })
      }
      onDone={() => {
        void draft.drop()
        onClose()
      }}
      onClose={onClose}
    >
      <TextArea
        label={text.clearDone}
        value={done}
        onChange={(done) => change({ done })}
        maxLength={longestNote}
      />
      <TextField
        label={text.clearBy}
        value={by}
        onChange={(by) => change({ by })}
        maxLength={longestName}
      />
      <TextField label={text.clearOn} type="date" value={day} onChange={(on) => change({ on })} />
    </FlagForm>
  )
}

/** On the orchard's calendar, as YYYY-MM-DD; empty until the clock is known. */
function useToday(): string {
  const now = useNow(60_000)
  const timeZone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  return now ? dayIn(timeZone, now) : ''
}
