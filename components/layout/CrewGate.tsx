'use client'

import dynamic from 'next/dynamic'
import type { ReactNode } from 'react'

import { usePhase, useSelect, type View } from '@/lib/hooks'
import { StopWatch } from '../day/StopWatch'
import { Fetching } from './Fetching'

/** Few people see it, so it is fetched only for them. */
const Outside = dynamic(async () => (await import('../join/Outside')).Outside, {
  loading: () => <Fetching />,
})

/** Comes after the screen: nothing of it is seen. */
const Alarm = dynamic(async () => (await import('../alarm/Alarm')).Alarm)

/** Lets in who is in the crew; everybody else is told what stands in the way, and the way on. */
export function CrewGate({ children }: { children: ReactNode }) {
  const phase = usePhase()
  const knowsOrchard = useSelect(isKnown)

  switch (phase) {
    case 'in':
      return knowsOrchard ? (
        <>
          {children}
          <StopWatch />
          <Alarm />
        </>
      ) : (
        <Fetching />
      )
    case 'starting':
      return <Fetching />
    case 'nobody':
    case 'choose':
    case 'not_admitted':
    case 'out':
    case 'signed_out':
      return <Outside phase={phase} />
  }
}

/** An orchard without a single tree has no sheet yet. */
function isKnown({ state, sheet }: View): boolean {
  return state !== null && (sheet !== null || state.sheetVersion === 0)
}
