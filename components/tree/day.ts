/**
 * What one device remembers of one person's day: where they are, which trees they finished, and what
 * can still be undone. Nobody else needs it, so it is no event.
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

export const newDay: MyDay = { shift: null, at: null, atIsChosen: false, done: [], last: null }

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
