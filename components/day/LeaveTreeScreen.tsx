'use client'

import { useState } from 'react'

import type { Leaving } from '@/lib/events/state'
import { type Sent, useSend } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useStartWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { WhyNot } from '../sync/WhyNot'
import { Icon } from '../ui/Icon'
import { CardOverScreen } from './CardOverScreen'
import { Order } from './Order'
import { StopDialog } from './StopDialog'

/** The weather, or a lead, puts off the tree that I am in: out of it, and say so. The tree stays mine. */
export function LeaveTreeScreen({ leaving: { tree, why, toldAt } }: { leaving: Leaving }) {
  const { stop } = useStartWords()
  const { leaveTree: text, comeOut } = stop
  const format = useFormat()
  const send = useSend()
  const tagOf = useTagOf()
  const [sent, setSent] = useState<Sent | null>(null)
  // A tag is never broken in two.
  const tag = tree === null ? null : tagOf(tree).replaceAll(' ', '\u00a0')
  return (
    <StopDialog tone="stop" title={text.title[why]}>
      <p className="by">
        <Icon name="warn" size={34} />
        <span>
          {text.why[why]} {stop.since(format.clock(new Date(toldAt)))}
        </span>
      </p>
      <ol className="orders">
        <Order number={1} title={stop.orders.tools} note={text.staysYours(tag)} />
        <Order number={2} title={text.go[why]} note={text.goNote[why]} />
        <Order number={3} title={text.stay} note={comeOut.leadDecides} />
      </ol>
      <p>{comeOut.passItOn}</p>
      <WhyNot sent={sent} />
      <button
        type="button"
        className="btn acknowledge"
        onClick={async () => setSent(await send('answer_weather', {}))}
      >
        {text.iAmDown}
      </button>
      <CardOverScreen />
    </StopDialog>
  )
}
