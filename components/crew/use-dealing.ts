'use client'

import { useMemo, useState } from 'react'

import type { Tree } from '@/lib/domain/orchard/types'
import { isInRound, useDraft, useSelect, useSend } from '@/lib/hooks'
import {
  type Dealing,
  noDealing,
  splitRefused,
  togglePerson,
  togglePicked,
  toggleRow,
  treesInRow,
} from './dealing'
import { useAsk } from './use-ask'

/** Picking trees and dealing them. What is picked outlives a stop, a rotation and a reload. */
export function useDealing() {
  const send = useSend()
  const draft = useDraft<Dealing>('dealing', noDealing)
  const [isPicking, setIsPicking] = useState(false)
  const [dealt, setDealt] = useState<Dealing | null>(null)
  const { asked, isAsking, ask, forget } = useAsk()
  const leftToDo = useLeftToDo()
  const dealing = draft.value
  const picked = useMemo(() => new Set(dealing.trees), [dealing.trees])

  const change = (next: Dealing) => {
    setDealt(null)
    forget()
    draft.write(next)
  }
  const clear = () => {
    setIsPicking(false)
    forget()
    void draft.writeNow(noDealing)
  }

  return {
    ...dealing,
    picked,
    isPicking: isPicking || dealing.trees.length > 0,
    isAsking,
    asked,
    /** What the last deal was, until the next pick. */
    dealt,
    split: asked.state === 'refused' ? splitRefused(dealing, asked.refused) : null,
    start: () => {
      setDealt(null)
      setIsPicking(true)
    },
    drop: clear,
    pickTree: (tree: number) => change(togglePicked(dealing, tree)),
    pickRow: (block: number, row: number) => {
      change(toggleRow(dealing, treesInRow(leftToDo, { block, row })))
    },
    choose: (personId: string) => change(togglePerson(dealing, personId)),
    deal: (trees: readonly number[] = dealing.trees) =>
      ask(send('deal_trees', { trees: [...trees], to: [...dealing.to] }), () => {
        setDealt({ ...dealing, trees })
        clear()
      }),
  }
}

export type DealingNow = ReturnType<typeof useDealing>

/** What a row is picked for; whatever else forbids a deal is said when it is asked for. */
function useLeftToDo(): readonly Tree[] {
  const state = useSelect((view) => view.state)
  const trees = useSelect((view) => view.sheet?.trees)
  return useMemo(
    () =>
      (trees ?? []).filter(
        (tree) => isInRound({ state }, tree) && state?.work[tree.no]?.state !== 'done'
      ),
    [state, trees]
  )
}
