'use client'

import { useMemo, useState } from 'react'

import type { Corner } from '@/lib/domain/orchard/drawn-shape'
import type { Tree } from '@/lib/domain/orchard/types'
import { isInRound, useDraft, useSelect, useSend } from '@/lib/hooks'
import { checkDeal } from './check-deal'
import {
  type Dealing,
  noDealing,
  pickedIn,
  settled,
  splitRefused,
  togglePerson,
  togglePicked,
  toggleRow,
  treesInRow,
} from './dealing'
import { useAsk } from './use-ask'

/** What came of the last step, until the next pick. */
export type Dealt =
  | { kind: 'dealt'; count: number; to: readonly string[] }
  | { kind: 'taken_back' | 'left_out' | 'brought_back'; count: number }

/**
 * Picking trees and dealing them. What is picked outlives a stop, a rotation and a reload. `dimmed`: what the
 * filter leaves out is not picked by row or line.
 */
export function useDealing(dimmed: ReadonlySet<number>) {
  const send = useSend()
  const draft = useDraft<Dealing>('dealing', noDealing)
  const [mode, setMode] = useState<'none' | 'tapping' | 'drawing'>('none')
  const [dealt, setDealt] = useState<Dealt | null>(null)
  const { asked, isAsking, ask, forget } = useAsk()
  const leftToDo = useLeftToDo()
  const dealing = draft.value
  const trees = useMemo(() => pickedIn(dealing), [dealing])
  const picked = useMemo(() => new Set(trees), [trees])
  const state = useSelect((view) => view.state)
  const ground = useSelect((view) => view.ground)
  const check = useMemo(
    () => checkDeal({ state, ground }, trees, dealing.to),
    [state, ground, trees, dealing.to]
  )
  const isDrawing = mode === 'drawing' || dealing.strokes.length > 0

  const change = (next: Dealing) => {
    setDealt(null)
    forget()
    draft.write(next)
  }
  const clear = () => {
    setMode('none')
    forget()
    void draft.writeNow(noDealing)
  }
  const done = (what: Dealt) => {
    setDealt(what)
    clear()
  }
  const shown = (all: readonly number[]) => all.filter((tree) => !dimmed.has(tree))

  return {
    to: dealing.to,
    trees,
    picked,
    check,
    isPicking: mode !== 'none' || trees.length > 0 || isDrawing,
    isDrawing,
    isAsking,
    asked,
    dealt,
    split: asked.state === 'refused' ? splitRefused(dealing, asked.refused) : null,
    start: () => {
      setDealt(null)
      setMode('tapping')
    },
    drop: clear,
    pickTree: (tree: number) => change(togglePicked(dealing, tree)),
    pickTrees: (some: readonly number[]) => change({ ...settled(dealing), trees: some }),
    pickRow: (block: number, row: number) => {
      change(toggleRow(dealing, shown(treesInRow(leftToDo, { block, row }))))
    },
    draw: () => {
      setDealt(null)
      setMode('drawing')
    },
    corners: dealing.strokes.flatMap(({ corners }) => corners),
    stroke: (corners: readonly Corner[], inside: readonly number[]) => {
      change({ ...dealing, strokes: [...dealing.strokes, { corners, inside: shown(inside) }] })
    },
    undoStroke: () => change({ ...dealing, strokes: dealing.strokes.slice(0, -1) }),
    endDrawing: () => {
      setMode('tapping')
      change(settled(dealing))
    },
    choose: (personId: string) => change(togglePerson(dealing, personId)),
    deal: (some: readonly number[] = check.can) =>
      ask(send('deal_trees', { trees: [...some], to: [...dealing.to] }), () =>
        done({ kind: 'dealt', count: some.length, to: dealing.to })
      ),
    takeBack: () =>
      ask(send('take_back', { trees: [...check.dealt] }), () =>
        done({ kind: 'taken_back', count: check.dealt.length })
      ),
    /** Something else was done with what is picked. */
    done,
    /** Of a tree that is not picked: what is stays picked. */
    say: setDealt,
  }
}

export type DealingNow = ReturnType<typeof useDealing>

/** What a row is picked for; whatever else forbids a deal is said before it is asked for. */
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
