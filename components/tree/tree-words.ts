/** What a tree is called, and how old it is. */

import type { Block, Cultivar, Tree } from '@/lib/domain/orchard/types'
import type { Way } from '@/lib/domain/planning/way'
import type { Format } from '@/lib/text/format'
import type { Messages } from '@/lib/text/messages'
import { wayLength, waySentence } from '@/lib/text/place-in-words'
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

/** "fruits on spurs and shoots, buds in the middle of the shoot" */
export function bearingWords({ whatToCut: text }: Messages, cultivar: Cultivar | null): string {
  const habit = text.fruitsOn[cultivar?.habit ?? 'unknown']
  const buds = cultivar?.buds ?? 'unknown'
  return buds === 'unknown' ? habit : `${habit}, ${text.budsAt[buds]}`
}

/** The three cells of its plate. */
export function plateCells({ common: { plate } }: Messages, tree: Tree, block: Block) {
  return [
    { word: plate.block, sign: block.code },
    { word: plate.row, sign: String(tree.row) },
    { word: plate.tree, sign: String(tree.place) },
  ]
}

/**
 * "Along row 7, 6 trees on, on your left". Where the way begins stands elsewhere; from an end of the
 * row there is only one direction, so it is not said.
 */
export function wayTitle(words: Messages, way: Way): string {
  if (way.start !== 'tagged_end' && way.start !== 'far_end')
    return waySentence(words, { ...way, start: 'here' })
  const { findTree, nextTree } = words
  return [
    findTree.alongRow(way.alongRow),
    ...(way.trees > 0 ? [nextTree.treesOn(way.trees)] : []),
    nextTree.side[way.side],
  ].join(', ')
}

/** "Go to the end with the row’s tag. 46 m, 61 paces" */
export function wayNote(words: Messages, format: Format, way: Way): string {
  const length = wayLength(words, format, way)
  return way.start === 'here' ? length : `${words.nextTree.start[way.start]} ${length}`
}
