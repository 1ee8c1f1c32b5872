/** The trees of a file that somebody knows a hazard of. Nobody works at a tree that is gone. */

import type { PlacedRow } from '@/lib/domain/orchard/inventory-placed'
import { stands } from '@/lib/domain/orchard/types'

import type { KnownHazard } from './bring-in-draft'

export function hazardsIn(rows: readonly PlacedRow[]): KnownHazard[] {
  return rows.flatMap(({ block, row, place, hazard, life }) =>
    hazard && stands({ life }) ? [{ block, row, place, ...hazard }] : []
  )
}
