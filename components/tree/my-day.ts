'use client'

import { openShiftOf, useDraft, useSelect } from '@/lib/hooks'
import { afterUndo, afterWork, type LastWork, type MyDay, newDay } from './day'

/** My day on this device; another shift begins a new one. */
export type DayInHand = ReturnType<typeof useMyDay>

export function useMyDay() {
  const shift = useSelect((view) => openShiftOf(view)?.id ?? null)
  const draft = useDraft<MyDay>('my-day', newDay)
  // Yesterday's trees are not today's.
  const day = draft.value.shift === shift ? draft.value : { ...newDay, shift }

  return {
    ...day,
    ready: draft.ready,
    standAt: (tree: number) => draft.write({ ...day, at: tree, atIsChosen: true }),
    worked: (last: LastWork) => draft.writeNow(afterWork(day, last)),
    undone: () => draft.writeNow(afterUndo(day)),
  }
}
