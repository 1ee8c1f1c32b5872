'use client'

import { useNow, useSelect } from '@/lib/hooks'
import './printed.css'
import { useFormat } from './use-format'

/** On paper only: of which orchard it is, and from when. */
export function PrintedHead() {
  const format = useFormat()
  const now = useNow(60_000)
  const orchard = useSelect((view) => view.state?.orchard.name ?? '')
  return (
    <p className="printed-head" aria-hidden="true">
      {now ? `${orchard}, ${format.fullDate(now)}, ${format.clock(now)}` : orchard}
    </p>
  )
}
