'use client'

import { openShiftOf, useSelect } from '@/lib/hooks'
import { BackToWork } from '../layout/BackToWork'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { CountedHere } from './CountedHere'
import { CountedOut } from './CountedOut'
import { OnBreak } from './OnBreak'

/** Breaks and going home: everybody who is here is counted, and everybody who goes is counted out. */
export function BreakScreen() {
  const { breakLeave } = useWords()
  const isOpen = useSelect((view) => openShiftOf(view) !== null)
  const here = useSelect((view) => view.state?.attendance[view.me?.personId ?? ''] ?? null)

  if (!isOpen) {
    return (
      <CrewScreen step={<BackToWork />}>
        <h1>{breakLeave.title}</h1>
        <p>{breakLeave.shiftNotOpen}</p>
      </CrewScreen>
    )
  }
  if (here === null) return <CountedOut />
  return here.state === 'break' ? (
    <OnBreak since={new Date(here.since)} />
  ) : (
    <CountedHere since={new Date(here.since)} />
  )
}
