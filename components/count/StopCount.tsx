'use client'

import { useState } from 'react'

import type { Stop } from '@/lib/events/state'
import { openShiftOf, type PrivatePeople, type Sent, useSelect, useSend } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useStartWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { Why } from '../ui/Why'
import { CountBoard } from './CountBoard'
import { headCountOf, seenInStop } from './counted'

type StopCountProps = { stop: Stop & { id: string }; contacts: PrivatePeople }

/** The count of a stop: a lead marks whom they see; each answer says who gave it. */
export function StopCount({ stop, contacts }: StopCountProps) {
  const send = useSend()
  const [sent, setSent] = useState<Sent | null>(null)
  const count = useSelect((view) => headCountOf(view, seenInStop(stop), contacts))
  const see = async (personId: string) =>
    setSent(await send('answer_stop', { stop: stop.id, answer: 'stopped' }, { personId }))
  return (
    <>
      <StopHead stop={stop} />
      <WhyNot sent={sent} />
      <CountBoard
        count={count}
        contacts={contacts}
        onSeen={see}
        foot={<Resume stop={stop} missing={count.missing.length} />}
      />
    </>
  )
}

function StopHead({ stop }: { stop: StopCountProps['stop'] }) {
  const { stop: words } = useStartWords()
  const { count: text } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const block = useSelect((view) => view.ground.blocks.get(stop.block ?? 0)?.name ?? null)
  const signal = useSelect((view) => openShiftOf(view)?.signal ?? 'voice')
  return (
    <div className="stop-head">
      <h1>{block === null ? text.stopped : text.stoppedIn(block)}</h1>
      <p>{text.by(nameOf(stop.calledBy), format.clock(new Date(stop.calledAt)))}</p>
      <p className="signal-words">{words.signals[signal]}</p>
    </div>
  )
}

/** Never the call of the screen while somebody may still be up in a tree. */
function Resume({ stop, missing }: { stop: StopCountProps['stop']; missing: number }) {
  const { common } = useStartWords()
  const { count: text } = useLeadWords()
  const send = useSend()
  const [sent, setSent] = useState<Sent | null>(null)
  const isAsking = useSelect((view) => view.asking.includes('resume_work'))
  return (
    <div className="stack">
      <Why icon={missing === 0 ? 'info' : 'warn'}>
        {missing === 0 ? text.resumeWhy : text.resumeWaits(missing)}
      </Why>
      <WhyNot sent={sent} />
      <Button
        kind={missing === 0 ? 'call' : 'plain'}
        wide
        state={isAsking ? 'waiting' : 'ready'}
        onPress={async () => setSent(await send('resume_work', { stop: stop.id }))}
      >
        {isAsking ? common.asking : text.resume}
      </Button>
      {stop.block !== null && (
        <Button
          kind="stop"
          wide
          icon="stop"
          onPress={async () => setSent(await send('stop_work', {}))}
        >
          {text.stopAll}
        </Button>
      )}
    </div>
  )
}
