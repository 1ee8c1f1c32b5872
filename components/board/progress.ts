/** How far the round is: counted by work alone, so that a flag hides nothing that was done. */

import type { Tree } from '@/lib/domain/orchard/types'
import { isInRound, type View } from '@/lib/hooks'

export type Progress = {
  trees: number
  done: number
  /** Somebody is at it. */
  inProgress: number
  /** Left half done. */
  begun: number
}

export type BlockProgress = Progress & { block: number; people: number }

/** Of every block; in the orchard's order. */
export function progressOf(view: View): { total: Progress; blocks: BlockProgress[] } {
  const { state, sheet } = view
  const claims = Object.values(state?.claims ?? {})
  const held = new Map(claims.map((claim) => [claim.tree, Object.keys(claim.people).length]))
  const blocks = (sheet?.blocks ?? []).map(({ no }) => ({ block: no, people: 0, ...nothing }))
  const byNo = new Map(blocks.map((block) => [block.block, block]))
  for (const tree of sheet?.trees ?? []) {
    const block = byNo.get(tree.block)
    if (block) count(block, tree, { view, peopleAt: held.get(tree.no) ?? 0 })
  }
  for (const { row, people } of claims) {
    const block = row && byNo.get(row.block)
    if (block) block.people += Object.keys(people).length
  }
  return { total: blocks.reduce(add, nothing), blocks }
}

const nothing: Progress = { trees: 0, done: 0, inProgress: 0, begun: 0 }

function count(
  block: BlockProgress,
  tree: Tree,
  { view, peopleAt }: { view: View; peopleAt: number }
): void {
  block.people += peopleAt
  if (!isInRound(view, tree)) return
  const work = view.state?.work[tree.no]?.state
  block.trees++
  if (peopleAt > 0) block.inProgress++
  else if (work === 'done') block.done++
  else if (work === 'begun') block.begun++
}

function add(sum: Progress, block: Progress): Progress {
  return {
    trees: sum.trees + block.trees,
    done: sum.done + block.done,
    inProgress: sum.inProgress + block.inProgress,
    begun: sum.begun + block.begun,
  }
}
