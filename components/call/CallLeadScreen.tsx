'use client'

import { useState } from 'react'

import type { CallKind } from '@/lib/events/state'
import { myCalls, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useGo } from '../layout/use-go'
import { ChooseCall } from './ChooseCall'
import { MakeCall } from './MakeCall'
import { MyCalls } from './MyCalls'

type CallLeadScreenProps = {
  /** Opened from the emergency card: somebody is hurt. */
  asked: CallKind | null
  /** A lead calls for somebody without a phone; that call is then among all others. */
  forPerson: string | null
}

/** Calls a lead: what it is, then sending it; afterwards who comes, and the other ways while nobody does. */
export function CallLeadScreen({ asked, forPerson }: CallLeadScreenProps) {
  const [shown, setShown] = useState({ kind: asked, isAnother: false })
  const go = useGo()
  const hasCalled = useSelect((view) => myCalls(view).length > 0)

  const show = (part: Partial<typeof shown>) => {
    setShown({ ...shown, ...part })
    // Each is a screen of its own, read from its top.
    scrollTo(0, 0)
  }

  const { kind, isAnother } = shown
  if (kind !== null)
    return (
      <MakeCall
        kind={kind}
        forPerson={forPerson}
        onBack={() => show({ kind: null })}
        onSent={() => {
          if (forPerson !== null) return go.replace(routes.calls())
          show({ kind: null, isAnother: false })
        }}
      />
    )
  return hasCalled && !isAnother && forPerson === null ? (
    <MyCalls onAnother={() => show({ isAnother: true })} />
  ) : (
    <ChooseCall forPerson={forPerson} onKind={(next) => show({ kind: next })} />
  )
}
