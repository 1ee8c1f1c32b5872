'use client'

import { useMemo, useState } from 'react'

import type { Corner } from '@/lib/domain/orchard/drawn-shape'
import type { Tree } from '@/lib/domain/orchard/types'
import { type Range, toggled, treesInRange } from './picking'

type Stroke = { corners: readonly Corner[]; inside: readonly number[] }

/** Trees picked one by one, by row, by numbers, or by a line round them. */
export function usePicking(trees: readonly Tree[]) {
  const [picked, setPicked] = useState<readonly number[]>([])
  const [strokes, setStrokes] = useState<readonly Stroke[]>([])
  const [isDrawing, setIsDrawing] = useState(false)
  const drawn = strokes.at(-1)?.inside
  const all = useMemo(() => {
    const known = new Set(trees.map(({ no }) => no))
    return [...new Set([...picked, ...(drawn ?? [])])].filter((tree) => known.has(tree))
  }, [trees, picked, drawn])
  return {
    all,
    asSet: useMemo(() => new Set(all), [all]),
    isDrawing,
    corners: useMemo(() => strokes.flatMap(({ corners }) => corners), [strokes]),
    tree: (no: number) => setPicked(toggled(all, [no])),
    row: (row: number) =>
      setPicked(
        toggled(
          all,
          trees.filter((tree) => tree.row === row).map(({ no }) => no)
        )
      ),
    range: (range: Range) => setPicked([...new Set([...all, ...treesInRange(trees, range)])]),
    everything: () => setPicked(trees.map(({ no }) => no)),
    nothing: () => setPicked([]),
    draw: () => setIsDrawing(true),
    stroke: (corners: readonly Corner[], inside: readonly number[]) =>
      setStrokes([...strokes, { corners, inside }]),
    undoStroke: () => setStrokes(strokes.slice(0, -1)),
    endDrawing: () => {
      setPicked(all)
      setStrokes([])
      setIsDrawing(false)
    },
  }
}

export type PickingNow = ReturnType<typeof usePicking>
