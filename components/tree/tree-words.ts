/** What a tree is called, and how old it is. */

import type { Block, Cultivar, Tree } from '@/lib/domain/orchard/types'
import type { Messages } from '@/lib/text/messages'
import { capitalised, speciesWords } from '@/lib/text/species'

/** "Apricot ‘Bergeron’" */
export function kindWords(words: Messages, tree: Tree, cultivar: Cultivar | null): string {
  const species = capitalised(speciesWords(words, tree.species).name)
  return cultivar ? words.common.speciesAndCultivar(species, cultivar.name) : species
}

/** "9 years"; null when nobody wrote down when it was planted. */
export function ageWords(words: Messages, tree: Tree, thisYear: number): string | null {
  return tree.plantedYear === null
    ? null
    : words.common.years(Math.max(0, thisYear - tree.plantedYear))
}

/** The three cells of its plate. */
export function plateCells({ common: { plate } }: Messages, tree: Tree, block: Block) {
  return [
    { word: plate.block, sign: block.code },
    { word: plate.row, sign: String(tree.row) },
    { word: plate.tree, sign: String(tree.place) },
  ]
}
