'use client'

import { useSelect } from '@/lib/hooks'
import { ReferralSheet } from './ReferralSheet'

/** A sheet for every tree that waits for a licensed arborist. */
export function ReferralsPart() {
  const open = useSelect((view) =>
    Object.entries(view.state?.flags ?? {})
      .filter(([, flag]) => flag.kind === 'arborist')
      .map(([id]) => id)
  )
  return open.map((id) => <ReferralSheet key={id} flag={id} />)
}
