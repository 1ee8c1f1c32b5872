/** Which tree a person takes next. */

import type { Tree } from '../orchard/types'

export type NextTreeQuestion<Code extends string> = {
  /** Trees of this round with work left. */
  candidates: readonly Tree[]
  /** The tree one stands at, if that is known. */
  from: Tree | null
  dealtToMe: ReadonlySet<number>
  /** Trees with an open disease flag. */
  diseased: ReadonlySet<number>
  /** Everything that forbids me this tree; empty means that I may have it. */
  refusalsOf: (tree: Tree) => readonly Code[]
  /** Metres on foot from where I am to the tree with this `no`. */
  walkM: (no: number) => number
}

export type NextTree<Code extends string> =
  | { state: 'found'; tree: Tree; why: 'dealt' | 'same_row' | 'nearest'; walkM: number | null }
  /** For each reason, how many trees it keeps from me. A tree counts under all its reasons. */
  | { state: 'nothing_left'; refusedTrees: ReadonlyMap<Code, number> }

/**
 * Dealt to me first, else in the row where I am, else the nearest; within each, healthy trees
 * before flagged ones, so that a tool carries nothing from a sick tree to a healthy one. From
 * nowhere in particular the trees are taken in the order of their numbers on the plates.
 */
export function nextTree<Code extends string>(question: NextTreeQuestion<Code>): NextTree<Code> {
  const { candidates, from, dealtToMe, diseased, refusalsOf, walkM } = question
  const refusedTrees = new Map<Code, number>()
  let best: Ranked | null = null
  for (const tree of candidates) {
    const refusals = new Set(refusalsOf(tree))
    for (const code of refusals) refusedTrees.set(code, (refusedTrees.get(code) ?? 0) + 1)
    if (refusals.size > 0) continue

    const why = dealtToMe.has(tree.no) ? 'dealt' : inRowOf(tree, from) ? 'same_row' : 'nearest'
    const ranked = {
      tree,
      why,
      diseased: diseased.has(tree.no),
      walkM: from ? walkM(tree.no) : null,
    } as const
    if (best === null || comesBefore(ranked, best)) best = ranked
  }
  if (best === null) return { state: 'nothing_left', refusedTrees }
  return { state: 'found', tree: best.tree, why: best.why, walkM: best.walkM }
}

type Ranked = {
  tree: Tree
  why: 'dealt' | 'same_row' | 'nearest'
  diseased: boolean
  walkM: number | null
}

const turn = { dealt: 0, same_row: 1, nearest: 2 }

function comesBefore(a: Ranked, b: Ranked): boolean {
  const difference =
    turn[a.why] - turn[b.why] ||
    Number(a.diseased) - Number(b.diseased) ||
    (a.walkM ?? 0) - (b.walkM ?? 0) ||
    a.tree.block - b.tree.block ||
    a.tree.row - b.tree.row ||
    a.tree.place - b.tree.place
  return difference < 0
}

function inRowOf(tree: Tree, from: Tree | null): boolean {
  return from !== null && tree.block === from.block && tree.row === from.row
}
