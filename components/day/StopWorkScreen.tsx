'use client'

import { useState } from 'react'

import { openShiftOf, type Sent, stopInForce, useSelect, useSend } from '@/lib/hooks'
import { CrewScreen } from '../layout/CrewScreen'
import { useStartWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'
import { Why } from '../ui/Why'
import { StopInForce } from './StopInForce'
import './stop.css'

/** Calls a stop: the site's signal first, in the largest type; the phone counts, it is not the alarm. */
export function StopWorkScreen() {
  const inForce = useSelect(stopInForce)
  return inForce === null ? <CallStop /> : <StopInForce stop={inForce} />
}

function CallStop() {
  const { stop } = useStartWords()
  const send = useSend()
  const [sent, setSent] = useState<Sent | null>(null)
  const signal = useSelect((view) => openShiftOf(view)?.signal ?? null)

  return (
    <CrewScreen
      why={signal === null ? <Why>{stop.noShift}</Why> : <WhyNot sent={sent} />}
      step={
        signal !== null && (
          <Button
            kind="stop"
            wide
            icon="stop"
            sub={stop.sendNote}
            onPress={async () => setSent(await send('stop_work', {}))}
          >
            {stop.send}
          </Button>
        )
      }
    >
      <h1>{stop.title}</h1>
      <div className="signal">
        {stop.first}
        <b>{stop.signals[signal ?? 'voice']}</b>
      </div>
      <p className="label">{stop.shoutToo}</p>
      <Note icon="warn">{stop.phoneNote}</Note>
    </CrewScreen>
  )
}
