'use client'

import { useState } from 'react'

import { type RoundRead, useNow, useRounds, useSelect } from '@/lib/hooks'
import { dayIn } from '@/lib/util/day-in'
import { useLeadWords } from '../layout/Words'
import { RoundForm } from '../shift/RoundForm'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'
import { Panel } from '../ui/Panel'
import { ReadingOf } from './ReadingOf'
import { Room } from './Room'
import { RoundRow } from './RoundRow'

/** The rounds that are open and those of the past, with what was done in each; a new season starts here. */
export function RoundsScreen() {
  const { rounds: text } = useLeadWords()
  const reading = useRounds()
  return (
    <Room title={text.title} lead={text.lead} forLeads>
      <ReadingOf reading={reading}>{(rounds) => <Rounds rounds={rounds} />}</ReadingOf>
    </Room>
  )
}

function Rounds({ rounds }: { rounds: readonly RoundRead[] }) {
  const { rounds: text } = useLeadWords()
  const isManager = useSelect((view) => view.state?.me.role === 'manager')
  const open = rounds.filter(({ closedAt }) => closedAt === null)
  const past = rounds.filter(({ closedAt }) => closedAt !== null)
  return (
    <>
      <Panel title={text.open}>
        {open.length === 0 && <p>{text.noneOpen}</p>}
        <ul className="list">
          {open.map((round) => (
            <RoundRow key={round.round} round={round} />
          ))}
        </ul>
      </Panel>
      {isManager && <NewRound hasOpen={open.length > 0} />}
      {past.length > 0 && (
        <Panel title={text.past}>
          <ul className="list">
            {past.map((round) => (
              <RoundRow key={round.round} round={round} />
            ))}
          </ul>
        </Panel>
      )}
    </>
  )
}

/** A second round beside an open one is seldom what is meant, so it is asked for first. */
function NewRound({ hasOpen }: { hasOpen: boolean }) {
  const { rounds: text, shift } = useLeadWords()
  const zone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const now = useNow(60_000)
  const [isAsked, setIsAsked] = useState(false)
  if (!now) return null
  return (
    <Panel title={hasOpen ? text.anotherTitle : shift.openRound}>
      {hasOpen && !isAsked ? (
        <Button onPress={() => setIsAsked(true)}>{text.another}</Button>
      ) : (
        <div className="stack">
          {hasOpen && (
            <Note tone="call" icon="warn">
              {text.anotherNote}
            </Note>
          )}
          <RoundForm today={dayIn(zone, now)} onOpened={() => setIsAsked(false)} />
        </div>
      )}
    </Panel>
  )
}
