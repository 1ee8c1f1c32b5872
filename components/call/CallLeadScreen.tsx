'use client'

import { useState } from 'react'

import type { CallKind } from '@/lib/events/state'
import { myCalls, useSelect } from '@/lib/hooks'
import { ChooseCall } from './ChooseCall'
import { MakeCall } from './MakeCall'
import { MyCalls } from './MyCalls'

type CallLeadScreenProps = {
  /** Opened from the emergency card: somebody is hurt. */
  asked: CallKind | null
}

/** Calls a lead: what it is, then sending it; afterwards who comes, and the other ways while nobody does. */
export function CallLeadScreen({ asked }: CallLeadScreenProps) {
  const [kind, setKind] = useState(asked)
  const [isAnother, setAnother] = useState(false)
  const hasCalled = useSelect((view) => myCalls(view).length > 0)

  if (kind !== null)
    return (
      <MakeCall
        kind={kind}
        onBack={() => setKind(null)}
        onSent={() => {
          setKind(null)
          setAnother(false)
        }}
      />
    )
  return hasCalled && !isAnother ? (
    <MyCalls onAnother={() => setAnother(true)} />
  ) : (
    <ChooseCall onKind={setKind} />
  )
}
