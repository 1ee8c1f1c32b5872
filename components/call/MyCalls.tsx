'use client'

import { useState } from 'react'

import { myCalls, type OpenCall, type Sent, useSelect, useSend } from '@/lib/hooks'
import { EmergencyCard } from '../day/EmergencyCard'
import { BackToWork } from '../layout/BackToWork'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { Panel } from '../ui/Panel'
import { useMyCallWords } from './my-call-words'
import { Leads, OtherWays } from './OtherWays'
import './call.css'

/** What became of my calls: sent or not, who comes, and the other ways while nobody does. */
export function MyCalls({ onAnother }: { onAnother: () => void }) {
  const { call } = useWords()
  const calls = useSelect(myCalls)
  const [first, ...others] = calls
  const say = useMyCallWords()
  if (first === undefined) return null

  const state = say(first)
  return (
    <CrewScreen isAboutCall step={<BackToWork />}>
      <h1>{state.title}</h1>
      <OneCall call={first} />
      {others.map((other) => (
        <Panel key={other.id} title={say(other).title}>
          <OneCall call={other} />
        </Panel>
      ))}
      {calls.some(({ kind }) => kind === 'injury') && <EmergencyCard />}
      {!state.isAnswered && <OtherWays title={call.otherWays} />}
      {!state.isAnswered && <Leads />}
      <Button onPress={onAnother}>{call.another}</Button>
    </CrewScreen>
  )
}

function OneCall({ call }: { call: OpenCall }) {
  const { call: text } = useWords()
  const send = useSend()
  const [sent, setSent] = useState<Sent | null>(null)
  const { isAnswered, facts, note } = useMyCallWords()(call)
  return (
    <div className="stack">
      <p className="call-facts">{facts}</p>
      {/* What to do now is spoken when it changes; the seconds are not. */}
      <p role="status">{note}</p>
      <WhyNot sent={sent} />
      <Button onPress={async () => setSent(await send('end_call', { call: call.id }))}>
        {isAnswered ? text.settled : text.noLonger}
      </Button>
    </div>
  )
}
