'use client'

import { Icon } from '../ui/Icon'
import type { Dealt } from './use-dealing'
import { useLeadWords } from './use-lead-words'
import { usePairName } from './use-pair-name'

/** What was dealt or taken back just now. */
export function DealtNote({ dealt }: { dealt: Dealt }) {
  const { leadMap, ground } = useLeadWords()
  const pairName = usePairName()
  const words = {
    dealt: () => leadMap.dealt(dealt.count, dealt.kind === 'dealt' ? pairName(dealt.to) : ''),
    taken_back: () => leadMap.takenBack(dealt.count),
    left_out: () => ground.wasLeftOut(dealt.count),
    brought_back: () => ground.wasBroughtBack(dealt.count),
  }[dealt.kind]()
  return (
    <section className="dealt" aria-label={leadMap.pick}>
      <Icon name="check" />
      <p role="status">{words}</p>
    </section>
  )
}
