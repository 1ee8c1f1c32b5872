'use client'

import type { ReactNode } from 'react'

import { usePhase, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { ButtonLink } from '../ui/ButtonLink'
import { Bench } from './Bench'
import { PhoneFrame } from './PhoneFrame'
import { useStartWords } from './Words'

/** Lets in who is in the crew; everybody else is told what stands in the way, and the way on. */
export function CrewGate({ children }: { children: ReactNode }) {
  const phase = usePhase()
  const knowsOrchard = useSelect((view) => view.state !== null && view.sheet !== null)

  switch (phase) {
    case 'in':
      return knowsOrchard ? children : <Fetching />
    case 'starting':
      return <Fetching />
    case 'nobody':
    case 'choose':
    case 'not_admitted':
    case 'out':
    case 'signed_out':
      return <ToJoin />
  }
}

function Fetching() {
  const { common } = useStartWords()
  return (
    <PhoneFrame who={common.appName}>
      <p role="status">{common.loading}</p>
    </PhoneFrame>
  )
}

function ToJoin() {
  const { common, join } = useStartWords()
  return (
    <PhoneFrame
      who={common.appName}
      bench={
        <Bench
          step={
            <ButtonLink kind="call" href={routes.join()}>
              {join.title}
            </ButtonLink>
          }
        />
      }
    >
      <p>{join.noCode}</p>
    </PhoneFrame>
  )
}
