'use client'

import { useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { claimWhyId } from './ClaimAsked'
import type { Asked } from './use-claim'
import type { TreeFacts } from './use-tree'

type ClaimStepProps = {
  facts: TreeFacts
  asked: Asked
  isOff: boolean
  /** Dealt to me, and nothing that asks for a second person. */
  mayBegin: boolean
  onClaim: () => void
  onBegin: () => void
}

/** Yes, in all its states. */
export function ClaimStep({
  facts: { tag },
  asked,
  isOff,
  mayBegin,
  onClaim,
  onBegin,
}: ClaimStepProps) {
  const { claim, nextTree } = useWords()
  const offline = useSelect((view) => view.signal === 'no_signal')

  if (asked.state === 'asking')
    return (
      <Button kind="call" icon="clock" state="waiting">
        {nextTree.askingFor(tag)}
      </Button>
    )
  if (isOff || (offline && !mayBegin))
    return (
      <Button kind="call" state="off" describedBy={claimWhyId}>
        {nextTree.yesClaim}
      </Button>
    )
  if (mayBegin && (offline || asked.state === 'no_answer'))
    return (
      <Button kind="call" sub={claim.beginSub} onPress={onBegin}>
        {claim.begin(tag)}
      </Button>
    )
  return (
    <Button kind="call" onPress={onClaim}>
      {nextTree.yesClaim}
    </Button>
  )
}
