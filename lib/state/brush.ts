/** Questions about cut wood: in which rows it lies, who hauls it, what is to be known before one goes there. */

import type { Tree } from '@/lib/domain/orchard/types'
import { walksFrom } from '@/lib/domain/planning/walk'
import { areNeighbours, type Ground } from '@/lib/events/ground'
import { holderOf } from '@/lib/events/look-ups'
import { missingOfPerson } from '@/lib/events/missing'
import { claimOnRow, type RowOfTrees, type Wood, woodIn } from '@/lib/events/missing-row'
import { rowKey } from '@/lib/events/row-key'
import type { BrushGoes, Claim, State } from '@/lib/events/state'

import { nowIn } from './readiness'
import { groundOnFoot } from './trees'
import type { View } from './view'
import { fromParts } from './view-memo'

/** Somebody with ladder or saw at or next to a tree of the row. */
export type Overhead = { tree: number; personId: string | null }

export type BrushRow = RowOfTrees &
  Wood & {
    hauled: number[]
    /** Flagged for disease: their wood goes apart. */
    sick: number[]
    goes: BrushGoes | null
    claim: (Claim & { id: string }) | null
    overhead: Overhead[]
  }

const rowsOf = fromParts(['ground'] as const, ({ ground }): ReadonlyMap<string, RowOfTrees> => {
  const rows = new Map<string, RowOfTrees & { trees: Tree[] }>()
  for (const tree of ground.trees.values()) {
    const key = rowKey(tree.block, tree.row)
    const row = rows.get(key) ?? { block: tree.block, row: tree.row, trees: [] }
    row.trees.push(tree)
    rows.set(key, row)
  }
  return rows
})

/** Rows where wood lies or lay, or that somebody hauls, along the blocks. */
export const brushRows = fromParts(['state', 'ground'] as const, (view): readonly BrushRow[] => {
  const { state, ground } = view
  if (!state) return []
  return [...rowsOf(view).values()]
    .map((row) => brushOf(state, ground, row))
    .filter(
      ({ open, closed, hauled, claim }) =>
        claim !== null || open.length + closed.length + hauled.length > 0
    )
    .toSorted((a, b) => a.block - b.block || a.row - b.row)
})

/** One row, also where nothing lies; null where there is no such row. */
export function brushOfRow(view: View, block: number, row: number): BrushRow | null {
  const known = rowsOf(view).get(rowKey(block, row))
  return known && view.state ? brushOf(view.state, view.ground, known) : null
}

/** Rows I can go to, the nearest first: those nobody hauls before those one joins. */
export function rowsToHaul(view: View, from: number | null): BrushRow[] {
  const walkM = from === null ? () => 0 : walksFrom(groundOnFoot(view), from)
  const farM = (row: BrushRow) => Math.min(...row.open.map(walkM))
  return brushRows(view)
    .filter(({ block, open }) => open.length > 0 && !isStopped(view.state, block))
    .toSorted((a, b) => Number(a.claim !== null) - Number(b.claim !== null) || farM(a) - farM(b))
}

/** What I lack to haul; no cutting tool is asked. */
export function brushReadiness({ state, ground, me, skewMs }: View) {
  const asked = { kind: 'brush', ground, now: nowIn({ skewMs }) } as const
  return state && me ? missingOfPerson(state, me.personId, asked) : []
}

function isStopped(state: State | null, block: number): boolean {
  return Object.values(state?.stops ?? {}).some((stop) => stop.block === block && !stop.resumed)
}

function brushOf(state: State, ground: Ground, row: RowOfTrees): BrushRow {
  const numbers = row.trees.map(({ no }) => no)
  const sick = Object.values(state.flags).flatMap(({ kind, tree }) =>
    kind === 'disease' && numbers.includes(tree) ? [tree] : []
  )
  return {
    ...row,
    ...woodIn(state, ground, row.trees),
    hauled: numbers.filter((no) => Object.hasOwn(state.hauled, no)),
    sick: [...new Set(sick)],
    goes: state.brushGoes[rowKey(row.block, row.row)] ?? null,
    claim: claimOnRow(state, row.block, row.row),
    overhead: overheadNear(state, ground, row),
  }
}

function overheadNear(state: State, ground: Ground, { trees }: RowOfTrees): Overhead[] {
  const apartM = state.orchard.houseRules.overhead_apart_m ?? 0
  return Object.values(state.claims).flatMap((claim) => {
    const at = claim.tree === null ? undefined : ground.trees.get(claim.tree)
    if (!at || claim.kind !== 'prune' || !(claim.ladder || at.asksSaw)) return []
    const reaches = trees.some(
      (tree) => tree.no === at.no || areNeighbours(ground, tree, at, apartM)
    )
    return reaches ? [{ tree: at.no, personId: holderOf(claim) }] : []
  })
}
