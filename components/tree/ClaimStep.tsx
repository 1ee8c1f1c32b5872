'use client'

import { myDealtTrees, useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { claimWhyId } from './ClaimAsked'
import type { Asked } from './use-claim'
import type { TreeFacts } from './use-tree'

type ClaimStepProps = {
  facts: TreeFacts
  asked: Asked
  isOff: boolean
  onClaim: () => void
  /** Without signal, for a tree that is dealt to me. */
  onBegin: () => void
}

/** Yes, in all its states. */
export function ClaimStep({
  facts: { tree, tag },
  asked,
  isOff,
  onClaim,
  onBegin,
}: ClaimStepProps) {
  const { claim, nextTree } = useWords()
  const offline = useSelect((view) => view.signal === 'no_signal')
  const isDealt = useSelect((view) => myDealtTrees(view).includes(tree.no))

  if (asked.state === 'asking')
    return (
      <Button kind="call" icon="clock" state="waiting">
        {nextTree.askingFor(tag)}
      </Button>
    )
  if (isOff || (offline && !isDealt))
    return (
      <Button kind="call" state="off" describedBy={claimWhyId}>
        {nextTree.yesClaim}
      </Button>
    )
  if (isDealt && (offline || asked.state === 'no_answer'))
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
