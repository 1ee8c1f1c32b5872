'use client'

import { useState } from 'react'

import { nameOf, type OpenFlag, type Sent, useSelect, useSend } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useStartWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { WhyNot } from '../sync/WhyNot'
import { Icon } from '../ui/Icon'
import { CardOverScreen } from './CardOverScreen'
import { Order } from './Order'
import { StopDialog } from './StopDialog'

/** A hazard near my tree: out of the keep-out, and say so. Like a stop, but for who is inside. */
export function ComeOutScreen({ flag }: { flag: OpenFlag }) {
  const { stop } = useStartWords()
  const format = useFormat()
  const send = useSend()
  const tagOf = useTagOf()
  const [sent, setSent] = useState<Sent | null>(null)
  const by = useSelect((view) => nameOf(view, flag.raisedBy))
  const mine = useSelect((view) => flag.inside[view.me?.personId ?? '']?.tree ?? null)
  const { comeOut: text, orders } = stop
  // A tag is never broken in two.
  const hazard = tagOf(flag.tree).replaceAll(' ', '\u00a0')
  const away = flag.keepOutM
    ? text.outOf(format.keepAway(flag.keepOutM), hazard)
    : text.outFrom(hazard)
  return (
    <StopDialog tone="stop" title={text.title}>
      <p className="by">
        <Icon name="warn" size={34} />
        <span>
          {text.hazard(by, hazard)} {stop.since(format.clock(new Date(flag.raisedAt)))}
        </span>
      </p>
      <ol className="orders">
        <Order
          number={1}
          title={orders.tools}
          note={text.leaveIt(mine === null ? null : tagOf(mine))}
        />
        <Order number={2} title={away} note={text.passItOn} />
        <Order number={3} title={text.stayOut} note={text.leadDecides} />
      </ol>
      <WhyNot sent={sent} />
      <button
        type="button"
        className="btn acknowledge"
        onClick={async () => setSent(await send('answer_keep_out', { flag: flag.id }))}
      >
        {text.iAmOut}
      </button>
      <CardOverScreen />
    </StopDialog>
  )
}
