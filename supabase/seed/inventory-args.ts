/** An inventory as the command that brings it in takes it: blocks by their code, SI integers. */

import type { Inventory } from '@/lib/domain/orchard/inventory-contents'
import type { Position, Tree } from '@/lib/domain/orchard/types'

export type InventoryArgs = { p_blocks: object[]; p_cultivars: object[]; p_trees: object[] }

/** What is not known is left out, which keeps ten thousand trees within one request. */
export function inventoryArgs({ blocks, cultivars, trees }: Inventory): InventoryArgs {
  const codes = new Map(blocks.map(({ no, code }) => [no, code]))
  const cultivarNames = new Map(cultivars.map(({ no, name }) => [no, name]))
  return {
    p_blocks: blocks.map(({ no: _, firstTree, ...block }) =>
      known({ ...block, ...at(firstTree, 'firstLatE7', 'firstLonE7') })
    ),
    p_cultivars: cultivars.map(({ no: _, ...cultivar }) => cultivar),
    p_trees: trees.map((tree) =>
      known({
        block: codes.get(tree.block),
        row: tree.row,
        place: tree.place,
        species: tree.species,
        cultivar: tree.cultivar === null ? null : cultivarNames.get(tree.cultivar),
        size: tree.sizeClass,
        planted: tree.plantedYear,
        heightCm: tree.heightCm,
        trunkMm: tree.trunkCm === null ? null : Math.round(tree.trunkCm * 10),
        asksSaw: tree.asksSaw || null,
        life: lifeIfNotUsual(tree),
        ...at(tree.position, 'latE7', 'lonE7'),
      })
    ),
  }
}

function lifeIfNotUsual({ life }: Tree) {
  return life === 'standing' ? null : life
}

/** Ten millionths of a degree: a centimetre. */
function at(position: Position | null, lat: string, lon: string): Record<string, number> {
  if (!position) return {}
  return { [lat]: Math.round(position.lat * 1e7), [lon]: Math.round(position.lon * 1e7) }
}

function known(facts: Record<string, unknown>): object {
  return Object.fromEntries(
    Object.entries(facts).filter(([, fact]) => fact !== null && fact !== undefined)
  )
}
