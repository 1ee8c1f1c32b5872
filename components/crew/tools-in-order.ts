/** The tools of the orchard as one reads them off their hooks. */

import type { Tool } from '@/lib/events/state'
import type { View } from '@/lib/hooks'

export type NumberedTool = Tool & { no: number }

/** Out of use first, since somebody must see to it; then by label, P2 before P10. */
export function toolsInOrder({ state }: Pick<View, 'state'>): NumberedTool[] {
  return Object.entries(state?.tools ?? {})
    .map(([no, tool]) => ({ ...tool, no: Number(no) }))
    .toSorted(
      (a, b) =>
        Number(a.fit) - Number(b.fit) ||
        a.label.localeCompare(b.label, undefined, { numeric: true })
    )
}

export function freeTools(view: Pick<View, 'state'>): NumberedTool[] {
  return toolsInOrder(view).filter(({ fit, heldBy }) => fit && heldBy === null)
}
