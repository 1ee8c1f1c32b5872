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
    <section className="dealt" aria-label={leadMap.pick}>
      <Icon name="check" />
      <p role="status">{leadMap.dealt(dealt.trees.length, pairName(dealt.to))}</p>
    </section>
  )
}
