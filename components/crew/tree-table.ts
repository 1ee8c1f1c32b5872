/** The trees as lines of a table: sorted, walked with keys, picked from one to another. */

import { type Mark, markOf, marks, type TreeLooks } from '@/lib/domain/orchard/status'
import type { Tree } from '@/lib/domain/orchard/types'

export const sorts = ['tree', 'status', 'who'] as const
export type Sort = (typeof sorts)[number]

export type TreeLine = {
  tree: Tree
  mark: Mark
  /** Names of who is at it, else of whom it is kept for; empty for nobody. */
  who: string
  isDimmed: boolean
}

type Facts = {
  looks: Pick<TreeLooks, 'get'>
  dimmed: ReadonlySet<number>
  /** The order in which blocks are listed. */
  blocks: readonly { no: number }[]
  whoOf: (tree: number) => string
  sort: Sort
  language: string
}

/** Those that are filtered out come last. Trees that are alike are in the order of their plates. */
export function linesOf(trees: readonly Tree[], facts: Facts): TreeLine[] {
  const { looks, dimmed, whoOf, sort, language } = facts
  const blockAt = new Map(facts.blocks.map(({ no }, at) => [no, at]))
  const byName = new Intl.Collator(language)
  const inOrder = (a: TreeLine, b: TreeLine) =>
    (blockAt.get(a.tree.block) ?? 0) - (blockAt.get(b.tree.block) ?? 0) ||
    a.tree.row - b.tree.row ||
    a.tree.place - b.tree.place
  const compare: Record<Sort, (a: TreeLine, b: TreeLine) => number> = {
    tree: inOrder,
    status: (a, b) => marks.indexOf(a.mark) - marks.indexOf(b.mark) || inOrder(a, b),
    // Who has nobody comes after everybody.
    who: (a, b) =>
      Number(a.who === '') - Number(b.who === '') || byName.compare(a.who, b.who) || inOrder(a, b),
  }
  return trees
    .map((tree) => {
      const look = looks.get(tree.no)
      const mark = look ? markOf(look) : 'unpruned'
      return { tree, mark, who: whoOf(tree.no), isDimmed: dimmed.has(tree.no) }
    })
    .toSorted((a, b) => Number(a.isDimmed) - Number(b.isDimmed) || compare[sort](a, b))
}

/** Where a key leads from a line; null for keys that are not for walking. */
export function lineAfter(
  key: string,
  { at, count, page }: { at: number; count: number; page: number }
): number | null {
  const steps: Record<string, number> = {
    ArrowDown: at + 1,
    ArrowUp: at - 1,
    PageDown: at + page,
    PageUp: at - page,
    Home: 0,
    End: count - 1,
  }
  const to = Object.hasOwn(steps, key) ? steps[key] : undefined
  return to === undefined || count === 0 ? null : Math.min(count - 1, Math.max(0, to))
}

/** From one line to another, whichever comes first, added to what was picked before. */
export function pickedBetween(
  lines: readonly TreeLine[],
  from: number,
  to: number,
  before: readonly number[]
): number[] {
  const range = lines.slice(Math.min(from, to), Math.max(from, to) + 1)
  return [...new Set([...before, ...range.map(({ tree }) => tree.no)])]
}

/** Which lines are drawn: what is seen and a little around it. */
export function windowOf(
  { top, height }: { top: number; height: number },
  { count, linePx }: { count: number; linePx: number }
): { first: number; last: number } {
  const beyond = 8
  const first = Math.max(0, Math.floor(top / linePx) - beyond)
  const last = Math.min(count, Math.ceil((top + height) / linePx) + beyond)
  return {
    first: Math.min(first, Math.max(0, count - 1)),
    last: Math.max(last, Math.min(count, 1)),
  }
}
