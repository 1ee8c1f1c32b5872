/**
 * Where cut wood lies in a row, and why somebody cannot take it to haul. The referee decides
 * (private.missing_of_row); this is never stricter.
 */

import type { Tree } from '@/lib/domain/orchard/types'

import type { Refusal } from './answer'
import { type Ground, isWithin, metresApart } from './ground'
import { holderOf, openShift, pruned } from './look-ups'
import { missingOfPerson } from './missing-person'
import type { Claim, State } from './state'

export type RowOfTrees = { block: number; row: number; trees: readonly Tree[] }

export type Wood = {
  /** Trees under which wood lies that may be hauled. */
  open: number[]
  /** The same, but a hazard is too close: it stays where it is. */
  closed: number[]
}

export function woodIn(state: State, ground: Ground, trees: readonly Tree[]): Wood {
  const numbers = pruned(
    state,
    trees.map(({ no }) => no)
  ).filter((no) => !Object.hasOwn(state.hauled, no))
  const wood: Wood = { open: [], closed: [] }
  for (const no of numbers) {
    wood[hazardAt(state, ground, no) === null ? 'open' : 'closed'].push(no)
  }
  return wood
}

/** The flagged tree that this one is, or is too close to. */
export function hazardAt(state: State, ground: Ground, no: number): number | null {
  const tree = ground.trees.get(no)
  for (const flag of Object.values(state.flags)) {
    if (flag.kind !== 'arborist') continue
    if (flag.tree === no) return no
    const flagged = ground.trees.get(flag.tree)
    if (!tree || !flagged || flag.keepOutM === null) continue
    if (isWithin(metresApart(ground, tree, flagged), flag.keepOutM)) return flag.tree
  }
  return null
}

export function claimOnRow(
  state: State,
  block: number,
  row: number
): (Claim & { id: string }) | null {
  for (const [id, claim] of Object.entries(state.claims)) {
    if (claim.row?.block === block && claim.row.row === row) return { ...claim, id }
  }
  return null
}

export function missingForRow(
  state: State,
  ground: Ground,
  { block, row, trees }: RowOfTrees,
  personId: string
): Refusal[] {
  const missing = missingOfPerson(state, personId, { kind: 'brush' })
  if (!openShift(state)) return missing
  const claim = claimOnRow(state, block, row)
  const stop = Object.entries(state.stops).find(([, one]) => one.block === block && !one.resumed)
  const { open, closed } = woodIn(state, ground, trees)
  const [near] = closed.map((no) => hazardAt(state, ground, no))
  return [
    ...missing,
    ...(stop ? [{ code: 'stopped', detail: { stop: stop[0] } }] : []),
    ...(claim ? [{ code: 'row_held', detail: { row: claim.row, person: holderOf(claim) } }] : []),
    ...(open.length + closed.length === 0 ? [{ code: 'nothing_to_haul' }] : []),
    ...(open.length === 0 && closed.length > 0
      ? [{ code: 'inside_keep_out', detail: { tree: near } }]
      : []),
  ]
}
