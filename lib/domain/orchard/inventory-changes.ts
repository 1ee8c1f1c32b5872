/** Trees that the orchard has and a file tells differently. */

import type { PlacedRow } from './inventory-placed'
import type { Tree } from './types'

export const changeFields = [
  'species',
  'cultivar',
  'plantedYear',
  'trunkCm',
  'heightCm',
  'sizeClass',
  'asksSaw',
  'life',
  'position',
] as const
export type ChangeField = (typeof changeFields)[number]

export type ChangedTree = { tree: Tree; to: PlacedRow; fields: ChangeField[] }

export function changedTrees(
  rows: readonly PlacedRow[],
  cultivarNames: ReadonlyMap<number, string>
): ChangedTree[] {
  return rows.flatMap((to) => {
    const tree = to.existing
    if (!tree) return []
    const fields = changeFields.filter((field) => differs(field, tree, to, cultivarNames))
    return fields.length === 0 ? [] : [{ tree, to, fields }]
  })
}

function differs(
  field: ChangeField,
  tree: Tree,
  to: PlacedRow,
  cultivarNames: ReadonlyMap<number, string>
): boolean {
  switch (field) {
    case 'cultivar':
      return (cultivarNames.get(tree.cultivar ?? 0) ?? null) !== to.cultivar
    case 'position':
      return tree.position?.lat !== to.position?.lat || tree.position?.lon !== to.position?.lon
    default:
      return tree[field] !== to[field]
  }
}
