'use client'

import { useNow, useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'

/** "Three Wells, as it was at 9:12": without signal, when the referee was last heard. */
export function useAsOf(): string {
  const { paper: text } = useLeadWords()
  const format = useFormat()
  const now = useNow(60_000)
  const orchard = useSelect((view) => view.state?.orchard.name ?? '')
  const silentSince = useSelect((view) => view.outOfTouchSince)
  const at = silentSince === null ? now : new Date(silentSince)
  return at ? text.asOf(orchard, `${format.date(at)}, ${format.clock(at)}`) : orchard
}
