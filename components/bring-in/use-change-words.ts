'use client'

import type { ChangedTree, ChangeField } from '@/lib/domain/orchard/inventory-changes'
import type { Inventory, PlacedRow } from '@/lib/domain/orchard/inventory-placed'
import { speciesWords } from '@/lib/text/species'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'

type Told = Pick<PlacedRow, ChangeField>

/** "height: 3.2 m → 4.1 m" for everything that differs. */
export function useChangeWords(existing: Inventory): (change: ChangedTree) => string[] {
  const words = useWords()
  const { bringIn: text } = useLeadWords()
  const format = useFormat()
  const cultivars = new Map(existing.cultivars.map(({ no, name }) => [no, name]))

  const sayValue = (field: ChangeField, tree: Told): string => {
    switch (field) {
      case 'species':
        return tree.species ? speciesWords(words, tree.species).name : text.nothing
      case 'cultivar':
        return tree.cultivar ?? text.nothing
      case 'plantedYear':
        return String(tree.plantedYear ?? text.nothing)
      case 'trunkCm':
        return tree.trunkCm === null ? text.nothing : format.diameter(tree.trunkCm)
      case 'heightCm':
        return tree.heightCm === null ? text.nothing : format.height(tree.heightCm / 100)
      case 'sizeClass':
        return tree.sizeClass ? text.sizes[tree.sizeClass] : text.nothing
      case 'asksSaw':
        return tree.asksSaw ? words.common.yes : words.common.no
      case 'life':
        return text.lives[tree.life]
      case 'position':
        return tree.position ? `${tree.position.lat}, ${tree.position.lon}` : text.nothing
    }
  }
  return ({ tree, to, fields }) => {
    const before: Told = { ...tree, cultivar: cultivars.get(tree.cultivar ?? 0) ?? null }
    return fields.map(
      (field) => `${text.fields[field]}: ${sayValue(field, before)} → ${sayValue(field, to)}`
    )
  }
}
