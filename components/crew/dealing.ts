/** What a lead has picked on the map, and for whom. */

import type { Corner } from '@/lib/domain/orchard/drawn-shape'
import type { Tree } from '@/lib/domain/orchard/types'
import type { Refusal } from '@/lib/events/answer'

/** A line or a corner that was drawn, and the trees inside all that was drawn until then. */
export type Stroke = { corners: readonly Corner[]; inside: readonly number[] }

export type Dealing = {
  /** Tapped one by one or by row, and drawn around before. */
  trees: readonly number[]
  /** One person, or a pair. */
  to: readonly string[]
  /** What is being drawn around just now. */
  strokes: readonly Stroke[]
}

export const noDealing: Dealing = { trees: [], to: [], strokes: [] }

/** All that is picked. */
export function pickedIn({ trees, strokes }: Dealing): readonly number[] {
  return [...new Set([...trees, ...(strokes.at(-1)?.inside ?? [])])]
}

/** What was drawn around is picked like everything else. */
export function settled(dealing: Dealing): Dealing {
  return dealing.strokes.length === 0
    ? dealing
    : { ...dealing, trees: pickedIn(dealing), strokes: [] }
}

export function togglePicked(before: Dealing, tree: number): Dealing {
  const dealing = settled(before)
  const isPicked = dealing.trees.includes(tree)
  const trees = isPicked ? dealing.trees.filter((one) => one !== tree) : [...dealing.trees, tree]
  return { ...dealing, trees }
}

/** A row that is picked whole is dropped whole; else the rest of it is added. */
export function toggleRow(before: Dealing, row: readonly number[]): Dealing {
  const dealing = settled(before)
  const isWhole = row.length > 0 && row.every((tree) => dealing.trees.includes(tree))
  const others = dealing.trees.filter((tree) => !row.includes(tree))
  return { ...dealing, trees: isWhole ? others : [...others, ...row] }
}

/** A third person takes the place of the one chosen first. */
export function togglePerson(dealing: Dealing, personId: string): Dealing {
  const isChosen = dealing.to.includes(personId)
  const to = isChosen
    ? dealing.to.filter((one) => one !== personId)
    : [...dealing.to, personId].slice(-2)
  return { ...dealing, to }
}

/** Of these trees the ones in that row. */
export function treesInRow(trees: readonly Tree[], at: { block: number; row: number }): number[] {
  return trees.filter((tree) => tree.block === at.block && tree.row === at.row).map(({ no }) => no)
}

export type NotDealt = { code: string; trees: readonly number[] }

/** Each reason with its trees, and what can be dealt without them. */
export function splitRefused(
  dealing: Dealing,
  refused: readonly Refusal[]
): { reasons: NotDealt[]; rest: number[] } {
  const reasons = refused.map(({ code, detail }) => ({ code, trees: numbersIn(detail?.trees) }))
  const named = new Set(reasons.flatMap(({ trees }) => trees))
  // A reason that names no tree stands against all of them.
  const isAboutAll = reasons.some(({ trees }) => trees.length === 0)
  return { reasons, rest: isAboutAll ? [] : pickedIn(dealing).filter((tree) => !named.has(tree)) }
}

function numbersIn(value: unknown): number[] {
  return [value].flat().filter((one) => typeof one === 'number')
}
