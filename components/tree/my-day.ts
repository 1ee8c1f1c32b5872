'use client'

import { openShiftOf, useDraft, useSelect } from '@/lib/hooks'

/**
 * What this device remembers of my day: where I am, which trees I finished, and what can still be
 * undone. Nobody else needs it, so it is no event.
 */
export type MyDay = {
  shift: string | null
  /** The tree I worked on last, or the row's end where I said that I am. */
  at: number | null
  atIsChosen: boolean
  done: readonly number[]
  last: LastWork | null
}

export type LastWork = { tree: number; how: 'done' | 'half' | 'not_begun'; at: string }

const newDay: MyDay = { shift: null, at: null, atIsChosen: false, done: [], last: null }

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

export function afterWork(day: MyDay, last: LastWork): MyDay {
  const others = day.done.filter((tree) => tree !== last.tree)
  return {
    ...day,
    at: last.tree,
    atIsChosen: false,
    done: last.how === 'done' ? [...others, last.tree] : others,
    last,
  }
}

export function afterUndo(day: MyDay): MyDay {
  return { ...day, done: day.done.filter((tree) => tree !== day.last?.tree), last: null }
}
