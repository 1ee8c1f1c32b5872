'use client'

import './look-over.css'

import { useState } from 'react'

import { faultSentence } from '@/lib/text/fault'
import { LeadScreen } from '../crew/LeadScreen'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Note } from '../ui/Note'
import { LookOverCard } from './LookOverCard'
import { LookOverList } from './LookOverList'
import { useLookOver } from './use-look-over'

/** One finished tree after the other, the nearest next; beside it everything that waits, by person. */
export function LookOverScreen() {
  const words = useWords()
  const { lookOver } = useLeadWords()
  /** The tree on the screen, and once it is looked over where the lead stands. */
  const [chosen, setChosen] = useState<number | null>(null)
  const { reading, open, proposals, next } = useLookOver(chosen)
  const shown = open.find(({ tree }) => tree === chosen) ?? null
  // What is proposed is chosen then: neither a tree that is finished meanwhile nor a late answer about the last one
  // may take this one off the screen.
  if (!shown && next && chosen !== next.tree) setChosen(next.tree)
  const proposed = proposals.find(({ tree }) => tree === shown?.tree)

  return (
    <LeadScreen
      here="lookOver"
      reads
      sideLabel={lookOver.listOf}
      side={<LookOverList trees={open} proposals={proposals} onTree={setChosen} />}
    >
      {reading.state === 'reading' && open.length === 0 ? (
        <h1>{words.common.asking}</h1>
      ) : (
        <>
          <h1>{open.length === 0 ? lookOver.none : lookOver.title(open.length)}</h1>
          <p className="muted">{open.length === 0 ? lookOver.noneNote : lookOver.whichNote}</p>
        </>
      )}
      {reading.state === 'failed' && (
        <Note tone="call" icon="nobars" role="alert">
          {faultSentence(words, { fault: reading.fault })}
        </Note>
      )}
      {shown && (
        <LookOverCard key={shown.tree} waiting={shown} because={proposed?.because ?? 'chosen'} />
      )}
      {!shown && open.length > 0 && (
        <Note icon="check" lead={lookOver.allSeen}>
          {lookOver.allSeenNote}
        </Note>
      )}
    </LeadScreen>
  )
}
