'use client'

import { Icon } from '../ui/Icon'
import type { Dealing } from './dealing'
import { useLeadWords } from './use-lead-words'
import { usePairName } from './use-pair-name'

/** What was dealt just now. */
export function DealtNote({ dealt }: { dealt: Dealing }) {
  const { leadMap } = useLeadWords()
  const pairName = usePairName()
  return (
    <p className="dealt" role="status">
      <Icon name="check" />
      {leadMap.dealt(dealt.trees.length, pairName(dealt.to))}
    </p>
  )
}
