'use client'

import { useId } from 'react'

import { type CallRead, useDraft, useNow, useSelect, useSend } from '@/lib/hooks'
import { clockIn, instantAt } from '@/lib/util/clock-in'
import { dayIn } from '@/lib/util/day-in'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Dialog } from '../ui/Dialog'
import { Pick } from '../ui/Pick'
import { TextArea } from '../ui/TextArea'
import { TextField } from '../ui/TextField'
import { Why } from '../ui/Why'
import { AtWhichTree } from './AtWhichTree'
import { useCallTitle } from './call-title'
import { draftOf, type IncidentDraft } from './incident-draft'
import { incidentKinds } from './incident-kinds'

type IncidentFormProps = {
  /** The call it comes from; of it only the kind, the tree and the time are taken over. */
  of: CallRead | null
  onClose: () => void
}

const longestNote = 1000

/** What happened, in the words of who writes it. No medical detail. */
export function IncidentForm(props: IncidentFormProps) {
  const now = useNow()
  // The first time of day that the form shows is the one it opens with.
  return now && <Form {...props} now={now} />
}

function Form({ of, onClose, now }: IncidentFormProps & { now: Date }) {
  const { common } = useWords()
  const { calls: text } = useLeadWords()
  const titleOf = useCallTitle()
  const send = useSend()
  const whyId = useId()
  const { asked, ask } = useAsk()
  const timeZone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const began = of === null ? now : new Date(of.calledAt)
  const draft = useDraft<IncidentDraft>(
    `incident|${of?.call ?? 'new'}`,
    draftOf(of, clockIn(timeZone, began.toISOString()))
  )
  const { kind, time, tree, note } = draft.value
  const change = (part: Partial<IncidentDraft>) => draft.write({ ...draft.value, ...part })
  const at = instantAt(dayIn(timeZone, began), time, timeZone)
  const isTime = at !== null && Date.parse(at) <= now.getTime()

  const keep = () => {
    if (kind === null || !isTime) return
    const args = { kind, tree, note: note.trim() || null, at, call: of?.call ?? null }
    void ask(send('write_incident', args), () => {
      void draft.drop()
      onClose()
    })
  }

  return (
    <Dialog open title={text.write} onClose={onClose} closeLabel={common.close}>
      <div className="stack">
        {of && <p>{text.fromCall(titleOf(of))}</p>}
        <ChoiceGroup label={text.kindOf} as="picks">
          {incidentKinds.map((each) => (
            <Pick
              key={each}
              type="radio"
              name="incident-kind"
              checked={kind === each}
              onChange={() => change({ kind: each })}
            >
              {text.kinds[each]}
            </Pick>
          ))}
        </ChoiceGroup>
        <TextField
          label={text.when}
          type="time"
          value={time}
          onChange={(next) => change({ time: next })}
          fault={!isTime && text.whenFault}
        />
        <AtWhichTree tree={tree} onTree={(next) => change({ tree: next })} />
        <TextArea
          label={text.whatHappened}
          hint={text.whatHappenedHint}
          value={note}
          rows={4}
          maxLength={longestNote}
          onChange={(next) => change({ note: next })}
        />
        <AskedNote asked={asked} />
        {kind === null && <Why id={whyId}>{text.sayKind}</Why>}
        {kind === null ? (
          <Button kind="call" wide state="off" describedBy={whyId}>
            {text.keep}
          </Button>
        ) : (
          <Button kind="call" wide onPress={keep}>
            {text.keep}
          </Button>
        )}
      </div>
    </Dialog>
  )
}
