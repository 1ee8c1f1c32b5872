'use client'

import { Icon } from '../ui/Icon'
import type { Dealt } from './use-dealing'
import { useLeadWords } from './use-lead-words'
import { usePairName } from './use-pair-name'

/** What was dealt or taken back just now. */
export function DealtNote({ dealt }: { dealt: Dealt }) {
  const { leadMap } = useLeadWords()
  const pairName = usePairName()
  return (
    <section className="dealt" aria-label={leadMap.pick}>
      <Icon name="check" />
      <p role="status">
        {dealt.kind === 'dealt'
          ? leadMap.dealt(dealt.count, pairName(dealt.to))
          : leadMap.takenBack(dealt.count)}
      </p>
    </section>
  )
}
