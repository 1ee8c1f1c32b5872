'use client'

import { useId } from 'react'

import { useDraft, useSend } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Dialog } from '../ui/Dialog'
import { Pick } from '../ui/Pick'
import { Why } from '../ui/Why'
import { AskedNote } from './AskedNote'
import { HowFar, type Share } from './HowFar'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

type EndClaimProps = {
  open: boolean
  claimId: string
  name: string
  tag: string
  /** Of a row it is not said how far: who hauled says it. */
  isRow?: boolean
  onClose: () => void
}

type Ending = { howReached: 'spoke' | 'phoned' | 'notReached' | null; share: Share | null }

const notSaid: Ending = { howReached: null, share: null }

/** Ends somebody's claim: how they were reached is kept, and how far the tree is. */
export function EndClaim({ open, claimId, name, tag, isRow = false, onClose }: EndClaimProps) {
  const { common } = useWords()
  const { leadMap } = useLeadWords()
  const send = useSend()
  const whyId = useId()
  const draft = useDraft<Ending>(`end-claim|${claimId}`, notSaid)
  const { asked, ask } = useAsk()
  const { howReached } = draft.value
  const share = isRow ? 'not_begun' : draft.value.share
  const lacks = howReached === null ? leadMap.sayHow : share === null && leadMap.sayHowFar

  const end = () => {
    if (howReached === null || share === null) return
    void ask(
      send('end_claim', {
        claim: claimId,
        howReached: leadMap[howReached],
        share: share === 'not_begun' ? null : share,
      }),
      () => {
        void draft.drop()
        onClose()
      }
    )
  }

  return (
    <Dialog
      open={open}
      title={leadMap.endTitle(name, tag)}
      onClose={onClose}
      closeLabel={common.close}
    >
      <p>{leadMap.endNote}</p>
      <ChoiceGroup label={leadMap.howReached(name)} as="picks">
        {(['spoke', 'phoned', 'notReached'] as const).map((how) => (
          <Pick
            key={how}
            type="radio"
            name={`reached-${claimId}`}
            checked={howReached === how}
            onChange={() => draft.write({ ...draft.value, howReached: how })}
          >
            {leadMap[how]}
          </Pick>
        ))}
      </ChoiceGroup>
      {!isRow && (
        <HowFar
          label={leadMap.howFar}
          value={share}
          onChange={(next) => draft.write({ ...draft.value, share: next })}
        />
      )}
      <AskedNote asked={asked} />
      {lacks && <Why id={whyId}>{lacks}</Why>}
      {lacks ? (
        <Button kind="call" state="off" describedBy={whyId}>
          {leadMap.endClaim}
        </Button>
      ) : (
        <Button kind="call" state={asked.state === 'asking' ? 'waiting' : 'ready'} onPress={end}>
          {leadMap.endClaim}
        </Button>
      )}
    </Dialog>
  )
}
