'use client'

import type { Phase } from '@/lib/hooks'
import { ChoosePerson } from './ChoosePerson'
import { NotAdmitted } from './NotAdmitted'
import { PutOut } from './PutOut'
import { SignedOut } from './SignedOut'
import { Welcome } from './Welcome'

/** What stands between this device and the crew. */
export function Outside({ phase }: { phase: Exclude<Phase, 'in' | 'starting'> }) {
  switch (phase) {
    case 'nobody':
      return <Welcome />
    case 'choose':
      return <ChoosePerson />
    case 'not_admitted':
      return <NotAdmitted />
    case 'out':
      return <PutOut />
    case 'signed_out':
      return <SignedOut />
  }
}
