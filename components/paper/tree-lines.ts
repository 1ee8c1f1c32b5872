/** The trees of a block as the printed page lists them: by row and place, each once. */

import { type Mark, markOf } from '@/lib/domain/orchard/status'
import { stands, type Tree } from '@/lib/domain/orchard/types'
import { asksLadder, treeRules } from '@/lib/events/missing'
import type { Flag } from '@/lib/events/state'
import { isInRound, statusOfTree, type View } from '@/lib/hooks'

export type Closed = 'inside_keep_out' | 'species_off' | 'left_out'

export type TreeLine = {
  tree: Tree
  /** The shape and the word: as the map has it, for nobody in particular. */
  mark: Mark
  share: number | null
  dealtTo: readonly string[]
  heldBy: readonly string[]
  flags: readonly Flag[]
  closed: Closed | null
  ladder: boolean
  marked: boolean
  /** Whether anything is to be written. A species that is off may be on again when the wood is dry. */
  isOpen: boolean
}

export type RowOfTrees = { row: number; lines: readonly TreeLine[] }

export function rowsOnPaper(
  view: View,
  block: number,
  { onlyLeft }: { onlyLeft: boolean }
): RowOfTrees[] {
  const { state, sheet } = view
  if (!state || !sheet) return []
  const lineOf = linesFor(view)
  const lines = sheet.trees
    .filter((tree) => tree.block === block && stands(tree))
    .toSorted((a, b) => a.row - b.row || a.place - b.place)
    .map(lineOf)
    .filter((line) => !onlyLeft || (line.mark !== 'done' && isInRound(view, line.tree)))
  return [...new Set(lines.map(({ tree }) => tree.row))].map((row) => ({
    row,
    lines: lines.filter(({ tree }) => tree.row === row),
  }))
}

function linesFor(view: View): (tree: Tree) => TreeLine {
  const { state, ground, me } = view
  const flags = Object.values(state?.flags ?? {})
  const held = new Map(
    Object.values(state?.claims ?? {}).map(({ tree, people }) => [tree, Object.keys(people)])
  )
  const rules = state && me ? treeRules(state, ground, me.personId) : () => []
  const closedBy = (tree: Tree): Closed | null => {
    if (state?.work[tree.no]?.state === 'left_out') return 'left_out'
    const codes = rules(tree.no).map(({ code }) => code)
    return (
      (['inside_keep_out', 'species_off'] as const).find((code) => codes.includes(code)) ?? null
    )
  }
  return (tree) => {
    const closed = closedBy(tree)
    const status = statusOfTree(view, tree.no)
    const look = {
      status,
      badge: null,
      dealtToMe: false,
      dealtTo: [],
      heldByMe: false,
      closed: closed !== null && status !== 'done',
      initials: [],
    }
    const mark = markOf(look)
    return {
      tree,
      mark,
      share: state?.work[tree.no]?.share ?? null,
      dealtTo: state?.deals[tree.no] ?? [],
      heldBy: held.get(tree.no) ?? [],
      flags: flags.filter((flag) => flag.tree === tree.no),
      closed,
      ladder: state ? asksLadder(state, tree) : false,
      marked: state?.marked[tree.no] !== undefined,
      isOpen:
        isInRound(view, tree) &&
        !['arborist', 'done'].includes(mark) &&
        closed !== 'inside_keep_out',
    }
  }
}
