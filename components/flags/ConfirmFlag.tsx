'use client'

import type { Severity } from '@/lib/events/state'
import { useDraft, useSend } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { diseaseSigns, flagPlaces } from '../tree/flag-words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Pick } from '../ui/Pick'
import { Segmented } from '../ui/Segmented'
import { TextArea } from '../ui/TextArea'
import { type AboutFlag, FlagForm } from './FlagForm'
import { longestNote } from './longest'

type Seen = { sign: string; severity: Severity; part: string | null; note: string }

/** A lead has looked: it is a disease, and this is what it looks like. */
export function ConfirmFlag({ flag, tag, onClose }: AboutFlag) {
  const { flag: words, things } = useWords()
  const { flags: text } = useLeadWords()
  const send = useSend()
  const draft = useDraft<Seen>(`confirm-flag|${flag.id}`, {
    sign: flag.sign,
    severity: flag.severity,
    part: null,
    note: '',
  })
  const seen = draft.value
  const change = (part: Partial<Seen>) => draft.write({ ...seen, ...part })
  const { sign, severity, part, note } = seen
  return (
    <FlagForm
      title={text.confirmTitle(tag)}
      note={text.confirmNote}
      lacks={diseaseSigns.some((known) => known === sign) ? null : text.confirmSign}
      words={text.confirm}
      send={() =>
        send('confirm_flag', { flag: flag.id, sign, severity, part, note: note.trim() || null })
      }
      onDone={() => {
        void draft.drop()
        onClose()
      }}
      onClose={onClose}
    >
      <ChoiceGroup label={words.disease.title} as="picks">
        {diseaseSigns.map((each) => (
          <Pick
            key={each}
            type="radio"
            name="sign"
            checked={sign === each}
            onChange={() => change({ sign: each })}
          >
            {words.disease[each]}
          </Pick>
        ))}
      </ChoiceGroup>
      <Segmented
        label={words.howBad}
        options={(['low', 'high'] as const).map((value) => ({
          value,
          label: things.severity[value],
        }))}
        value={severity === 'danger_now' ? null : severity}
        onChange={(severity) => change({ severity })}
      />
      <ChoiceGroup label={words.where} as="picks">
        {flagPlaces.map((place) => (
          <Pick
            key={place}
            type="radio"
            name="part"
            checked={part === place}
            onChange={() => change({ part: place })}
          >
            {words.places[place]}
          </Pick>
        ))}
      </ChoiceGroup>
      <TextArea
        label={text.noteForLeads}
        hint={text.noteHint}
        value={note}
        onChange={(note) => change({ note })}
        maxLength={longestNote}
      />
    </FlagForm>
  )
}
