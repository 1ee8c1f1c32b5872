'use client'

import { useDraft, useSend } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { TextArea } from '../ui/TextArea'
import { AskedNote } from './AskedNote'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

type MarkBigCutsProps = {
  open: boolean
  tree: number
  tag: string
  onClose: () => void
}

/** Says that the big cuts are marked on the tree, with a sentence for whoever prunes it. */
export function MarkBigCuts({ open, tree, tag, onClose }: MarkBigCutsProps) {
  const { common } = useWords()
  const { leadMap } = useLeadWords()
  const send = useSend()
  const draft = useDraft(`mark|${tree}`, '')
  const { asked, ask } = useAsk()
  const note = draft.value.trim()
  return (
    <Dialog open={open} title={leadMap.markTitle(tag)} onClose={onClose} closeLabel={common.close}>
      <p>{leadMap.markNote}</p>
      <TextArea
        label={leadMap.markWords}
        hint={leadMap.markWordsHint}
        value={draft.value}
        maxLength={300}
        onChange={draft.write}
      />
      <AskedNote asked={asked} />
      <Button
        kind="call"
        state={asked.state === 'asking' ? 'waiting' : 'ready'}
        onPress={() =>
          ask(send('mark_big_cuts', { tree, note: note === '' ? null : note }), () => {
            void draft.writeNow('')
            onClose()
          })
        }
      >
        {leadMap.markDone}
      </Button>
    </Dialog>
  )
}
