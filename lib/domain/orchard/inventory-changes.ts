/** Trees that the orchard has and a file tells differently. */

import type { PlacedRow } from './inventory-placed'
import type { Cultivar, Tree } from './types'

const changeFields = [
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

export type ToldCultivar = { cultivar: Cultivar; to: Pick<Cultivar, 'habit' | 'buds'> }

/** Cultivars of the orchard of which the file says another habit or other buds; what it does not say stays. */
export function toldCultivars(
  rows: readonly PlacedRow[],
  cultivars: readonly Cultivar[]
): ToldCultivar[] {
  const keyOf = (species: string | null, name: string | null) => `${species}|${name}`
  const told = rows.filter(({ habit, buds }) => isSaid(habit) || isSaid(buds))
  const first = new Map(
    told.toReversed().map((row) => [keyOf(row.species, row.cultivar), row] as const)
  )
  return cultivars.flatMap((cultivar) => {
    const row = first.get(keyOf(cultivar.species, cultivar.name))
    if (!row) return []
    const to = {
      habit: isSaid(row.habit) ? row.habit : cultivar.habit,
      buds: isSaid(row.buds) ? row.buds : cultivar.buds,
    }
    return to.habit === cultivar.habit && to.buds === cultivar.buds ? [] : [{ cultivar, to }]
  })
}

function isSaid<Value extends string>(value: Value | null): value is Exclude<Value, 'unknown'> {
  return value !== null && value !== 'unknown'
}
