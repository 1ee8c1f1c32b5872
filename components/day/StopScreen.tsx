'use client'

import { useState } from 'react'

import type { Stop } from '@/lib/events/state'
import { headCount, nameOf, openShiftOf, type Sent, useSelect, useSend } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useStartWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Icon } from '../ui/Icon'
import { CardOverScreen } from './CardOverScreen'
import { Order } from './Order'
import { StopDialog } from './StopDialog'

type StopScreenProps = { stop: Stop & { id: string } }

/** Nothing but red, white and the orders. Acknowledging is the largest button in the product. */
export function StopScreen({ stop }: StopScreenProps) {
  const words = useStartWords()
  const format = useFormat()
  const send = useSend()
  const [sent, setSent] = useState<Sent | null>(null)
  const calledBy = useSelect((view) => nameOf(view, stop.calledBy))
  const isMine = useSelect((view) => view.me?.personId === stop.calledBy)
  const block = useSelect((view) => view.ground.blocks.get(stop.block ?? 0)?.name ?? null)
  const signal = useSelect((view) => openShiftOf(view)?.signal ?? 'voice')
  const meetingPoint = useSelect((view) => view.emergency?.meeting_point)
  const all = useSelect(headCount)
  const isUnsent = useSelect((view) => view.unsent.some(({ command }) => command.id === stop.id))
  const { title, orders, ...text } = words.stop

  const caller = isMine
    ? text.calledByYou
    : block === null
      ? text.calledBy(calledBy)
      : text.calledInBlock(calledBy, block)
  const answered = Object.keys(stop.answers).length

  return (
    <StopDialog tone="stop" title={title}>
      <p className="by">
        <Icon name="warn" size={34} />
        <span>
          {caller} {text.since(format.clock(new Date(stop.calledAt)))}
        </span>
      </p>
      <ol className="orders">
        {isMine && <Order number={1} title={text.signals[signal]} note={orders.shout} />}
        <Order number={isMine ? 2 : 1} title={orders.tools} note={orders.toolsNote} />
        <Order number={isMine ? 3 : 2} title={orders.out} note={orders.outNote} />
        <Order number={isMine ? 4 : 3} title={orders.walk} note={meetingPoint ?? orders.walkNote} />
      </ol>
      <p className="answered" role="status">
        <Icon name="people" />
        <span>{isUnsent ? text.keptNotSent : text.answered(answered, all)}</span>
      </p>
      <WhyNot sent={sent} />
      <button
        type="button"
        className="btn acknowledge"
        onClick={async () =>
          setSent(await send('answer_stop', { stop: stop.id, answer: 'stopped' }))
        }
      >
        {text.iStopped}
      </button>
      <CardOverScreen />
    </StopDialog>
  )
}
