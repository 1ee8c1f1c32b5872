'use client'

import { useFormat } from '../layout/use-format'
import { useLeadWords } from './use-lead-words'
import type { MapFilterNow } from './use-map-filter'

/** How many trees the filter leaves. */
export function FilterCount({ now: { shown, all, choices } }: { now: MapFilterNow }) {
  const { mapTools } = useLeadWords()
  const format = useFormat()
  return (
    <p className="filter-count" role="status">
      {choices > 0
        ? mapTools.shows(format.number(shown), format.number(all))
        : mapTools.showsAll(format.number(all))}
    </p>
  )
}
