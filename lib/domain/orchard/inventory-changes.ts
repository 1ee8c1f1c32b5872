/** Trees that the orchard has and a file tells differently. */

import type { PlacedRow } from './inventory-placed'
import type { Cultivar, Tree } from './types'

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

/** Cultivars of the orchard of which the file says another habit: it is not for a list of trees to change that. */
export function keptHabits(rows: readonly PlacedRow[], cultivars: readonly Cultivar[]): Cultivar[] {
  const said = new Map(
    rows.map(({ species, cultivar, habit }) => [`${species}|${cultivar}`, habit] as const)
  )
  return cultivars.filter(({ species, name, habit }) => {
    const other = said.get(`${species}|${name}`) ?? 'unknown'
    return other !== 'unknown' && other !== habit
  })
}
