'use client'

import { useDraft } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { PhotoPick } from '../tree/PhotoPick'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { TextArea } from '../ui/TextArea'
import { Why } from '../ui/Why'
import { AskedNote } from './AskedNote'
import { DrawOnPhoto } from './DrawOnPhoto'
import { useLeadWords } from './use-lead-words'
import { type Marking, noMarking, useMarking } from './use-marking'

type MarkBigCutsProps = {
  open: boolean
  tree: number
  tag: string
  onClose: () => void
}

/** Says that the big cuts are marked on the tree: a sentence and, if it helps, a photo with what goes drawn in. */
export function MarkBigCuts({ open, tree, tag, onClose }: MarkBigCutsProps) {
  const { common, flag } = useWords()
  const { leadMap, mapTools } = useLeadWords()
  const draft = useDraft<Marking>(`mark|${tree}`, noMarking)
  const { asked, isBusy, isPhotoLost, mark } = useMarking(tree)
  const { note, jpeg, strokes } = draft.value
  const change = (some: Partial<Marking>) => draft.write({ ...draft.value, ...some })

  const finish = () =>
    mark(draft.value, () => {
      void draft.writeNow(noMarking)
      onClose()
    })
  return (
    <Dialog open={open} title={leadMap.markTitle(tag)} onClose={onClose} closeLabel={common.close}>
      <p>{leadMap.markNote}</p>
      {jpeg === null ? (
        <PhotoPick
          title={mapTools.photo}
          hint={mapTools.photoHint}
          jpeg={null}
          onPhoto={(photo) => change({ jpeg: photo, strokes: [] })}
          beforeCamera={() => draft.writeNow(draft.value)}
        />
      ) : (
        <DrawOnPhoto
          jpeg={jpeg}
          strokes={strokes}
          onStrokes={(next) => change({ strokes: next })}
          onAway={() => change({ jpeg: null, strokes: [] })}
        />
      )}
      <TextArea
        label={leadMap.markWords}
        hint={leadMap.markWordsHint}
        value={note}
        maxLength={300}
        onChange={(text) => change({ note: text })}
      />
      {isPhotoLost && <Why tone="wrong">{flag.photoTooLarge}</Why>}
      <AskedNote asked={asked} />
      <Button kind="call" state={isBusy ? 'waiting' : 'ready'} onPress={finish}>
        {leadMap.markDone}
      </Button>
    </Dialog>
  )
}
