'use client'

import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'
import { DealReason } from './DealReason'
import type { splitRefused } from './dealing'
import type { DealingNow } from './use-dealing'
import { useLeadWords } from './use-lead-words'

type DealRefusedProps = {
  split: ReturnType<typeof splitRefused>
  dealing: DealingNow
  to: string
}

/** Which trees cannot be dealt and why, and dealing the others. */
export function DealRefused({ split: { reasons, rest }, dealing, to }: DealRefusedProps) {
  const { common } = useWords()
  const { leadMap } = useLeadWords()
  return (
    <section className="deal-bar" aria-label={leadMap.pick}>
      <Note tone="stop" icon="cross" role="alert" lead={leadMap.cannotDeal}>
        <ul className="not-dealt">
          {reasons.map((reason) => (
            <DealReason key={reason.code} {...reason} />
          ))}
        </ul>
      </Note>
      <Button onPress={dealing.drop}>{leadMap.drop}</Button>
      {rest.length > 0 && (
        <Button
          kind="call"
          sub={to}
          state={dealing.isAsking ? 'waiting' : 'ready'}
          onPress={() => dealing.deal(rest)}
        >
          {dealing.isAsking ? common.asking : leadMap.dealTheOther(rest.length)}
        </Button>
      )}
    </section>
  )
}
