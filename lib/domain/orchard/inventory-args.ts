/** An inventory as the command that brings it in takes it: blocks by their code, SI integers. */

import type { ChangedTree } from './inventory-changes'
import type { Inventory } from './inventory-placed'
import type { Position, Tree } from './types'

export type InventoryArgs = {
  blocks: object[]
  cultivars: object[]
  trees: object[]
  changes: object[]
}

type Facts = Pick<
  Tree,
  'species' | 'sizeClass' | 'plantedYear' | 'heightCm' | 'trunkCm' | 'asksSaw' | 'life' | 'position'
> & { cultivar: string | null }

/** What is not known is left out, which halves what is sent. */
export function inventoryArgs(
  { blocks, cultivars, trees }: Inventory,
  existing: Pick<Inventory, 'blocks' | 'cultivars'> = { blocks: [], cultivars: [] },
  changed: readonly ChangedTree[] = []
): InventoryArgs {
  const codes = new Map([...existing.blocks, ...blocks].map(({ no, code }) => [no, code]))
  const names = new Map([...existing.cultivars, ...cultivars].map(({ no, name }) => [no, name]))
  return {
    blocks: blocks.map(({ no: _, firstTree, ...block }) =>
      known({ ...block, ...at(firstTree, 'firstLatE7', 'firstLonE7') })
    ),
    cultivars: cultivars.map(({ no: _, ...cultivar }) => cultivar),
    trees: trees.map((tree) => ({
      block: codes.get(tree.block),
      row: tree.row,
      place: tree.place,
      ...factsOf({ ...tree, cultivar: names.get(tree.cultivar ?? 0) ?? null }),
    })),
    changes: changed.map(({ tree, to }) => ({
      tree: tree.no,
      ...factsOf({ ...to, species: to.species ?? tree.species }),
    })),
  }
}

function factsOf(facts: Facts): object {
  return known({
    species: facts.species,
    cultivar: facts.cultivar,
    size: facts.sizeClass,
    planted: facts.plantedYear,
    heightCm: facts.heightCm,
    trunkMm: facts.trunkCm === null ? null : Math.round(facts.trunkCm * 10),
    asksSaw: facts.asksSaw || null,
    life: facts.life === 'standing' ? null : facts.life,
    ...at(facts.position, 'latE7', 'lonE7'),
  })
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
