'use client'

import { useId } from 'react'

import { useDraft, useSend } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { TextArea } from '../ui/TextArea'
import { Why } from '../ui/Why'
import { AskedNote } from './AskedNote'
import { HowFar, type Share } from './HowFar'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'
import type { WorkArgs } from './work-args-for'

type HalfDoneForProps = {
  open: boolean
  id: string
  name: string
  tag: string
  work: WorkArgs
  onClose: () => void
}

type HalfDone = { share: Share | null; note: string }

/** Leaves somebody's tree half done, with what is left for the next one. */
export function HalfDoneFor({ open, id, name, tag, work, onClose }: HalfDoneForProps) {
  const { common, tree: words } = useWords()
  const { people: text, leadMap } = useLeadWords()
  const send = useSend()
  const whyId = useId()
  const draft = useDraft<HalfDone>(`half-done|${work.claim}`, { share: null, note: '' })
  const { asked, ask } = useAsk()
  const { share } = draft.value
  const note = draft.value.note.trim()
  const lacks =
    share === null
      ? leadMap.sayHowFar
      : share !== 'not_begun' && note === '' && words.writeWhatIsLeft

  const leave = () => {
    const args = {
      ...work,
      share: share === 'not_begun' ? null : share,
      note: note === '' ? null : note,
    }
    void ask(send('release_tree', args, { personId: id }), () => {
      void draft.drop()
      onClose()
    })
  }
  return (
    <Dialog open={open} title={text.halfTitle(tag)} onClose={onClose} closeLabel={common.close}>
      <HowFar
        label={words.howMuch}
        value={share}
        onChange={(next) => draft.write({ ...draft.value, share: next })}
      />
      {share !== 'not_begun' && (
        <TextArea
          label={words.whatIsLeft}
          hint={words.whatIsLeftHint}
          value={draft.value.note}
          maxLength={300}
          onChange={(next) => draft.write({ ...draft.value, note: next })}
        />
      )}
      <AskedNote asked={asked} whose={name} />
      {lacks && <Why id={whyId}>{lacks}</Why>}
      {lacks ? (
        <Button kind="call" state="off" describedBy={whyId}>
          {words.leaveHalf}
        </Button>
      ) : (
        <Button kind="call" onPress={leave}>
          {share === 'not_begun' ? words.leaveNotBegun : words.leaveHalf}
        </Button>
      )}
    </Dialog>
  )
}
